package org.amberyard.core.duty;

import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackHeat;

/**
 * One vehicle type on one run, as far as neither weather nor charge decides: what its motor takes of braking at most in each step, and
 * how much of a difference of temperature is gone after each piece. Worked out once and driven in many weathers.
 */
final class VehicleRun {
    /** Limits of braking are of mass and speed; the air does not matter. */
    private static final double ANY_AIR_C = 0;

    private final RunDrive drive;
    private final List<double[]> mostN;
    private final HeatBalance cabin;
    private final double[] cabinGone;
    private final double[] packGone;

    VehicleRun(RunDrive drive, VehicleSpec vehicle, DutyInput duty) {
        this.drive = drive;
        VehicleBody body = vehicle.body();
        double ridersKg = drive.run().meanRiders() * duty.riderMassKg();
        RoadLoad load = body.roadLoad(ridersKg, ANY_AIR_C, duty.climate().elevationM());
        this.mostN = drive.pieces().stream().map(p -> mostN(p.steps(), load, body.driveline(), recovery(vehicle))).toList();
        this.cabin = body.cabin().driving(drive.stopsPerHour());
        this.cabinGone = vehicle instanceof ElectricSpec ? gone(cabin) : new double[0];
        this.packGone = vehicle instanceof ElectricSpec electric ? gone(pack(electric.battery())) : new double[0];
    }

    static BrakeRecovery recovery(VehicleSpec vehicle) {
        return vehicle instanceof ElectricSpec electric ? electric.recovery() : BrakeRecovery.NONE;
    }

    /** A pack as a body that loses heat. */
    static HeatBalance pack(BatterySpec battery) {
        PackHeat heat = battery.heat();
        return new HeatBalance(heat.capacityKwhPerK(battery.nominalKwh()), heat.conductanceKwPerK(battery.nominalKwh()));
    }

    private double[] gone(HeatBalance balance) {
        return drive.pieces().stream().mapToDouble(p -> balance.goneShare(p.steps().totalHours)).toArray();
    }

    /** What a motor takes of braking at most in the steps of a trace, whatever the battery takes in, N. */
    static double[] mostN(TraceSteps steps, RoadLoad load, DrivelineLoss driveline, BrakeRecovery recovery) {
        MotorBraking braking = new MotorBraking(recovery, driveline, load.inertiaN(recovery.decelerationMps2()), Double.MAX_VALUE);
        double[] mostN = new double[steps.count];
        for (int step = 0; step < mostN.length; step++) {
            mostN[step] = braking.mostN(steps.speedMps[step]);
        }
        return mostN;
    }

    RunDrive drive() {
        return drive;
    }

    /** The same of a piece of the run, N. */
    double[] mostN(int place) {
        return mostN.get(place);
    }

    /** The cabin while driving. */
    HeatBalance cabin() {
        return cabin;
    }

    /** Share of the cabin's difference of temperature that is gone after a part of a piece, up to all of it. */
    double cabinGone(int place, double part) {
        return part == 1 ? cabinGone[place] : cabin.goneShare(part * drive.pieces().get(place).steps().totalHours);
    }

    /** The same of a pack. */
    double packGone(int place, double part, HeatBalance pack) {
        return part == 1 ? packGone[place] : pack.goneShare(part * drive.pieces().get(place).steps().totalHours);
    }
}
