package org.amberyard.core.duty;

import java.util.List;
import java.util.stream.IntStream;

/**
 * What measurements on a route say about the model: one multiplier for electric buses and one for buses with an engine.
 *
 * @param electric multiplier of the energy of electric buses, 1 where nothing was measured
 * @param engine multiplier of the fuel of buses with an engine, 1 where nothing was measured
 */
public record RouteCalibration(double electric, double engine) {

    static RouteCalibration of(DutyInput duty, int route, List<RunDrive> drives) {
        return new RouteCalibration(factor(duty, route, drives, true), factor(duty, route, drives, false));
    }

    private static double factor(DutyInput duty, int route, List<RunDrive> drives, boolean electric) {
        double measured = 0;
        double modelled = 0;
        for (MeasuredUse use : duty.measured()) {
            VehicleSpec vehicle = duty.vehicles().get(use.vehicle());
            if (use.route() == route && vehicle instanceof ElectricSpec == electric) {
                measured += use.amount();
                modelled += modelled(duty, drives, use);
            }
        }
        return modelled > 0 ? measured / modelled : 1;
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

    /** The multiplier for a vehicle. */
    public double factor(VehicleSpec vehicle) {
        return vehicle instanceof ElectricSpec ? electric : engine;
    }
}
