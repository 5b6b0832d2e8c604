package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What stands in the places of a fleet at the start of a year of a plan, before anything of that year is done: what a year that
 * is over hands to the next.
 *
 * @param fleet the fleet over the years
 * @param year year, counted from the base year; within the study
 */
public record StandingFleet(FleetHistory fleet, int year) {

    /** The bus in each place; empty where none stands. */
    public List<Optional<Vehicle>> buses() {
        return IntStream.range(0, fleet.fleetAtEnd().size()).mapToObj(this::bus).toList();
    }

    private Optional<Vehicle> bus(int place) {
        Optional<Vehicle> leaving = fleet.events().stream().filter(e -> e.year() == year && leaves(e, place)).findFirst()
                .map(FleetEvent::vehicle);
        boolean arrives = fleet.events().stream().anyMatch(e -> e.year() == year && e.place() == place
                && (e instanceof FleetEvent.Bought || e instanceof FleetEvent.Moved));
        return leaving.isPresent() || arrives ? leaving : fleet.inYear(year).stream().filter(v -> v.place() == place).findFirst()
                .map(VehicleYear::vehicle);
    }

    private static boolean leaves(FleetEvent event, int place) {
        return event instanceof FleetEvent.Sold ? event.place() == place
                : event instanceof FleetEvent.Moved moved && moved.from() == place;
    }

    /** Places where another bus stands than at the base date, or none any more. */
    public Set<Integer> changedPlaces() {
        return fleet.events().stream().filter(e -> e.year() < year)
                .filter(e -> e instanceof FleetEvent.Bought || e instanceof FleetEvent.Sold || e instanceof FleetEvent.Moved)
                .flatMap(e -> e instanceof FleetEvent.Moved moved ? List.of(moved.place(), moved.from()).stream()
                        : List.of(e.place()).stream())
                .collect(Collectors.toSet());
    }

    /** Places whose bus retires at the start of the year because its pack is due and not worth it. */
    public Set<Integer> retiringForPack() {
        return fleet.events().stream().filter(e -> e.year() == year - 1 && e instanceof FleetEvent.RetiredForPack)
                .map(FleetEvent::place).collect(Collectors.toSet());
    }
}
