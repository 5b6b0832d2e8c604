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

    /**
     * What the model says, uncalibrated, for the distance and the weather of a measurement; zero when its month is not driven
     * and no temperature tells the weather. A diesel log holds the fuel of the heater too.
     */
    private static double modelled(DutyInput duty, List<RunDrive> drives, MeasuredUse use) {
        VehicleSpec vehicle = duty.vehicles().get(use.vehicle());
        RouteDuty raw = new RouteDuty(duty, duty.routes().get(use.route()), drives, vehicle, 1);
        EnergyUse modelled = inWeather(duty, raw, use);
        double amount = vehicle instanceof EngineSpec engine
                ? modelled.fuelL() + (engine.fuel() == FuelKind.DIESEL ? modelled.heaterFuelL() : 0) : modelled.batteryKwh();
        return modelled.km() > 0 ? amount / modelled.km() * use.km() : 0;
    }

    private static EnergyUse inWeather(DutyInput duty, RouteDuty raw, MeasuredUse use) {
        if (use.outsideC().isPresent()) {
            WeatherDay weather = WeatherDay.steady(use.outsideC().getAsDouble());
            return IntStream.concat(use.month().stream(), IntStream.range(0, Climate.MONTHS))
                    .mapToObj(month -> raw.monthUse(month, weather)).filter(u -> u.km() > 0).findFirst().orElse(EnergyUse.ZERO);
        }
        return use.month().isPresent()
                ? raw.monthUse(use.month().getAsInt(), duty.climate().months().get(use.month().getAsInt()).normal())
                : raw.use().year();
    }

    /** The multiplier for a vehicle; 1 where nothing was measured. */
    public double factor(VehicleSpec vehicle) {
        return (vehicle instanceof ElectricSpec ? electric : engine).map(Calibration::factor).orElse(1.0);
    }
}
