package org.amberyard.core.plan;

import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.yard.YardYear;

/**
 * A fleet over the years of a plan.
 *
 * @param years one record for each place and year in which a bus stood there, by year, then by place
 * @param events what happened, in order
 * @param fleetAtEnd the bus in each place at the end of the study
 * @param decisions what was decided where packs were due, in order
 */
public record FleetHistory(List<VehicleYear> years, List<FleetEvent> events, List<Optional<Vehicle>> fleetAtEnd,
        List<PackDecision> decisions) {

    public FleetHistory {
        years = List.copyOf(years);
        events = List.copyOf(events);
        fleetAtEnd = List.copyOf(fleetAtEnd);
        decisions = List.copyOf(decisions);
    }

    /** The same with the energy at the meter of each bus in each year. */
    FleetHistory withMeterKwh(List<YardYear> yards) {
        return new FleetHistory(years.stream().map(v -> v.withMeterKwh(yards.get(v.year()).neededKwh(v.place()))).toList(), events,
                fleetAtEnd, decisions);
    }

    /** The same with what was decided at other prices, which came out alike. */
    FleetHistory priced(RenewOrRetire packs) {
        Iterator<PackDecision> asked = decisions.iterator();
        return new FleetHistory(years, events.stream().map(e -> e instanceof FleetEvent.RetiredForPack
                || e instanceof FleetEvent.PackReplaced ? packs.event(asked.next()) : e).toList(), fleetAtEnd, decisions);
    }

    /** The same with some buses scrapped instead of sold. */
    FleetHistory withScrapped(Set<String> units) {
        return new FleetHistory(years, events.stream().map(e -> e instanceof FleetEvent.Sold sold
                && units.contains(sold.vehicle().unit()) ? new FleetEvent.Sold(sold.year(), sold.place(), sold.vehicle(), true) : e).toList(), fleetAtEnd,
                decisions);
    }

    /** Numbers of the buses that are scrapped. */
    Set<String> scrapped() {
        return events.stream().filter(e -> e instanceof FleetEvent.Sold sold && sold.scrapped()).map(e -> e.vehicle().unit())
                .collect(Collectors.toSet());
    }

    /** The records of one year. */
    public List<VehicleYear> inYear(int year) {
        return years.stream().filter(v -> v.year() == year).toList();
    }
}
