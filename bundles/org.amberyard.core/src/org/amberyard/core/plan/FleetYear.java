package org.amberyard.core.plan;

import java.time.LocalDate;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * The fleet of a plan in one year in single figures.
 *
 * @param year year, counted from the base year
 * @param electric electric buses
 * @param engine engine buses
 * @param route buses on routes
 * @param spare spares
 * @param activity buses for trips
 * @param meanAgeYears mean age at the start of the year; 0 without a bus
 * @param oldestAgeYears age of the oldest; 0 without a bus
 * @param bought buses bought at the start of the year
 * @param left buses that leave the fleet then
 */
public record FleetYear(int year, int electric, int engine, int route, int spare, int activity, double meanAgeYears,
        double oldestAgeYears, int bought, int left) {
    private static final int DAYS_A_MONTH = 30;

    /** The years of a plan. */
    public static List<FleetYear> of(StudyInput study, FleetHistory fleet) {
        return IntStream.range(0, study.years()).mapToObj(year -> of(study, fleet, year)).toList();
    }

    private static FleetYear of(StudyInput study, FleetHistory fleet, int year) {
        List<VehicleYear> buses = fleet.inYear(year);
        int electric = (int) buses.stream().filter(b -> study.types().get(b.vehicle().type()).electric().isPresent()).count();
        return new FleetYear(year, electric, buses.size() - electric, count(study, buses, Role.ROUTE),
                count(study, buses, Role.SPARE), count(study, buses, Role.ACTIVITY),
                buses.stream().mapToDouble(b -> b.vehicle().ageYears(year)).average().orElse(0),
                buses.stream().mapToDouble(b -> b.vehicle().ageYears(year)).max().orElse(0),
                (int) fleet.events().stream().filter(e -> e.year() == year && e instanceof FleetEvent.Bought).count(),
                (int) fleet.events().stream().filter(e -> e.year() == year && e instanceof FleetEvent.Sold).count());
    }

    private static int count(StudyInput study, List<VehicleYear> buses, Role role) {
        return (int) buses.stream().filter(b -> study.buses().get(b.place()).role() == role).count();
    }

    /** Spares over the buses in service on routes; empty without one. */
    public OptionalDouble spareRatio() {
        return route > 0 ? OptionalDouble.of((double) spare / route) : OptionalDouble.empty();
    }

    /** Day by which a bus must be ordered that is delivered at the start of its year; a used one waits for no maker. */
    public static LocalDate orderBy(StudyInput study, FleetEvent.Bought bought) {
        double months = bought.vehicle().used().isPresent() ? 0
                : study.types().get(bought.vehicle().type()).deliveryMonths();
        int whole = (int) months;
        return study.money().fiscal().start(study.baseYear() + bought.year()).minusMonths(whole)
                .minusDays(Math.round((months - whole) * DAYS_A_MONTH));
    }
}
