package org.amberyard.core.duty;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * What every route takes of every vehicle type whose body fits it: the first stage of a study.
 *
 * <p>A year is the sum over months of the days of service times an average day of the month; feasibility is judged on the
 * coldest and hottest operated days.
 */
public final class DutyTable {
    private final DutyInput input;
    private final List<List<Optional<RouteUse>>> uses;
    private final List<EnergyUse> perKm;

    private DutyTable(DutyInput input, List<List<Optional<RouteUse>>> uses) {
        this.input = input;
        this.uses = List.copyOf(uses);
        this.perKm = IntStream.range(0, input.vehicles().size()).mapToObj(v -> perKm(uses, v)).toList();
    }

    /** Drives every route with every vehicle type that fits it. */
    public static DutyTable of(DutyInput input) {
        List<List<Optional<RouteUse>>> uses = new ArrayList<>();
        for (RouteInput route : input.routes()) {
            List<RunEnergy> runs = route.runs().stream().map(r -> new RunEnergy(r, input)).toList();
            uses.add(input.vehicles().stream().map(v -> use(input, route, runs, v)).toList());
        }
        return new DutyTable(input, uses);
    }

    /** The input that this table was computed from. */
    public DutyInput input() {
        return input;
    }

    /** Use of a vehicle type on a route, both by their place in the input; empty when the body type does not fit. */
    public Optional<RouteUse> use(int route, int vehicle) {
        return uses.get(route).get(vehicle);
    }

    /** Average use per distance of a vehicle type over the routes that it fits, weighted by their distance per year. */
    public EnergyUse perKm(int vehicle) {
        return perKm.get(vehicle);
    }

    private static EnergyUse perKm(List<List<Optional<RouteUse>>> uses, int vehicle) {
        EnergyUse sum = EnergyUse.ZERO;
        for (List<Optional<RouteUse>> ofRoute : uses) {
            sum = sum.plus(ofRoute.get(vehicle).map(RouteUse::year).orElse(EnergyUse.ZERO));
        }
        return sum.km() > 0 ? sum.times(1 / sum.km()) : EnergyUse.ZERO;
    }

    private static Optional<RouteUse> use(DutyInput input, RouteInput route, List<RunEnergy> runs, VehicleSpec vehicle) {
        if (!vehicle.body().bodyType().equals(route.bodyType())) {
            return Optional.empty();
        }
        EnergyUse year = EnergyUse.ZERO;
        List<RouteUse.DesignDay> days = new ArrayList<>();
        for (int month = 0; month < Climate.MONTHS; month++) {
            Climate.MonthWeather weather = input.climate().months().get(month);
            year = year.plus(monthUse(runs, vehicle, month, weather.normal()));
            for (boolean extendedYear : new boolean[] {false, true}) {
                List<RunEnergy> driven = drivenTogether(runs, month, extendedYear);
                if (!driven.isEmpty()) {
                    days.add(new RouteUse.DesignDay(month, true, block(driven, vehicle, weather.coldest())));
                    days.add(new RouteUse.DesignDay(month, false, block(driven, vehicle, weather.hottest())));
                }
            }
        }
        return Optional.of(new RouteUse(year, days));
    }

    /** Runs that one day of a month can ask of the bus: a school day's, or an extended-year day's. */
    private static List<RunEnergy> drivenTogether(List<RunEnergy> runs, int month, boolean extendedYear) {
        return runs.stream().filter(r -> r.run().extendedYear() == extendedYear && r.run().daysByMonth().get(month) > 0)
                .toList();
    }

    private static EnergyUse monthUse(List<RunEnergy> runs, VehicleSpec vehicle, int month, DayTemperatures day) {
        EnergyUse sum = EnergyUse.ZERO;
        for (RunEnergy run : runs) {
            int days = run.run().daysByMonth().get(month);
            if (days > 0) {
                sum = sum.plus(run.use(vehicle, day.atHour(run.run().middleHour())).times(days));
            }
        }
        return sum;
    }

    private static DayBlock block(List<RunEnergy> runs, VehicleSpec vehicle, DayTemperatures day) {
        List<DayBlock.Leg> legs = new ArrayList<>();
        for (RunEnergy run : runs) {
            RunInput plan = run.run();
            double outsideC = day.atHour(plan.middleHour());
            EnergyUse use = run.use(vehicle, outsideC);
            legs.add(new DayBlock.Leg(plan.name(), plan.departureMin(), plan.departureMin() + use.hours() * 60,
                    plan.yardAfter(), outsideC, use));
        }
        return new DayBlock(legs);
    }
}
