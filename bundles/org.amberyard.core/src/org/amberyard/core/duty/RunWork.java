package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Work of one vehicle type on one run in one weather. Each piece is summed once for every braking limit that matters: a limit
 * that no braking reaches is none, and lower ones count in whole kilowatts, rounded down, as a controller would have it.
 */
final class RunWork {
    private final VehicleRun driven;
    private final RunDrive drive;
    private final VehicleBody body;
    private final BrakeRecovery recovery;
    private final double airC;
    private final double sunWPerM2;
    private final RoadLoad load;
    private final Map<Limited, TractiveWork> limited = new HashMap<>();
    private final List<TractiveWork> free;

    RunWork(VehicleRun driven, VehicleSpec vehicle, WeatherDay weather, DutyInput duty) {
        this.driven = driven;
        this.drive = driven.drive();
        this.body = vehicle.body();
        this.recovery = VehicleRun.recovery(vehicle);
        this.airC = weather.airC(drive.middleMin());
        this.sunWPerM2 = weather.sunWPerM2(drive.middleMin());
        double ridersKg = drive.run().meanRiders() * duty.riderMassKg();
        this.load = body.roadLoad(ridersKg, airC, duty.climate().elevationM());
        this.free = new ArrayList<>(drive.pieces().size());
        for (int place = 0; place < drive.pieces().size(); place++) {
            free.add(work(place, Double.MAX_VALUE));
        }
    }

    /** A piece under a limit in whole kilowatts. */
    private record Limited(int place, int kw) {
    }

    private TractiveWork work(int place, double limitKw) {
        return TractiveWork.of(drive.pieces().get(place).steps(), driven.mostN(place), load, body.driveline(), recovery, limitKw);
    }

    /** Work of one drive of a piece where the battery takes in a power, kW, beside what the auxiliaries take. */
    TractiveWork piece(int place, double acceptanceKw) {
        TractiveWork unlimited = free.get(place);
        double limitKw = acceptanceKw + body.auxiliaryKw();
        if (limitKw >= unlimited.peakRecoveredKw()) {
            return unlimited;
        }
        return limited.computeIfAbsent(new Limited(place, (int) limitKw), l -> work(place, l.kw()));
    }

    /** Integral of the square of the traction power over the run where nothing but the motor limits braking, kW²h. */
    double squareKw2h() {
        double sum = 0;
        for (int place = 0; place < free.size(); place++) {
            sum += drive.pieces().get(place).times() * free.get(place).squareKw2h();
        }
        return sum;
    }

    /** The vehicle on the run, whatever the weather. */
    VehicleRun driven() {
        return driven;
    }

    RunDrive drive() {
        return drive;
    }

    RunInput run() {
        return drive.run();
    }

    /** Outside air at the middle of the run, °C. */
    double airC() {
        return airC;
    }

    /** Heat from riders and sun in the cabin, kW. */
    double gainsKw() {
        return body.cabin().gainsKw(run().meanRiders(), sunWPerM2);
    }
}
