package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.consumption.Calibration;

/**
 * What measurements on a route say about the model: one multiplier for electric buses and one for buses with an engine.
 *
 * @param electric calibration of the energy of electric buses, where it was measured
 * @param engine calibration of the fuel of buses with an engine, where it was measured
 */
public record RouteCalibration(Optional<Calibration> electric, Optional<Calibration> engine) {

    static RouteCalibration of(DutyInput duty, int route, List<RunDrive> drives) {
        return new RouteCalibration(calibration(duty, route, drives, true), calibration(duty, route, drives, false));
    }

    private static Optional<Calibration> calibration(DutyInput duty, int route, List<RunDrive> drives, boolean electric) {
        List<Calibration.Pair> pairs = new ArrayList<>();
        for (MeasuredUse use : duty.measured()) {
            if (use.route() == route && duty.vehicles().get(use.vehicle()) instanceof ElectricSpec == electric) {
                double modelled = modelled(duty, drives, use);
                if (modelled > 0) {
                    pairs.add(new Calibration.Pair(use.amount(), modelled));
                }
            }
        }
        return pairs.isEmpty() ? Optional.empty() : Optional.of(Calibration.of(pairs));
    }

    /** What the model says, uncalibrated, for the distance and the weather of a measurement. */
    private static double modelled(DutyInput duty, List<RunDrive> drives, MeasuredUse use) {
        VehicleSpec vehicle = duty.vehicles().get(use.vehicle());
        RouteDuty raw = new RouteDuty(duty, duty.routes().get(use.route()), drives, vehicle, 1);
        EnergyUse modelled = inWeather(duty, raw, use);
        double amount = vehicle instanceof ElectricSpec ? modelled.batteryKwh() : modelled.fuelL();
        return modelled.km() > 0 ? amount / modelled.km() * use.km() : 0;
    }

    private static EnergyUse inWeather(DutyInput duty, RouteDuty raw, MeasuredUse use) {
        if (use.outsideC().isEmpty() && use.month().isEmpty()) {
            return raw.use().year();
        }
        int month = use.month().orElseGet(() -> firstDriven(raw));
        boolean extendedYear = !raw.drivenOn(month, false);
        WeatherDay weather = use.outsideC().isPresent() ? WeatherDay.steady(use.outsideC().getAsDouble())
                : duty.climate().months().get(month).normal();
        return raw.dayUse(month, extendedYear, weather);
    }

    private static int firstDriven(RouteDuty raw) {
        return IntStream.range(0, Climate.MONTHS).filter(m -> raw.drivenOn(m, false)).findFirst().orElse(0);
    }

    /** The multiplier for a vehicle; 1 where nothing was measured. */
    public double factor(VehicleSpec vehicle) {
        return (vehicle instanceof ElectricSpec ? electric : engine).map(Calibration::factor).orElse(1.0);
    }
}
