package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.battery.PackReplacement;

/** Which bus stands in which place, and what has happened to the buses so far. */
final class FleetPlaces {
    private final StudyInput study;
    private final PackSoFar packs;
    private final Vehicle[] places;
    private final int[] arrived;
    private final Set<String> numbers = new HashSet<>();
    private final List<FleetEvent> events = new ArrayList<>();

    FleetPlaces(StudyInput study, PackSoFar packs, List<Optional<Vehicle>> today) {
        this.study = study;
        this.packs = packs;
        this.places = today.stream().map(bus -> bus.orElse(null)).toArray(Vehicle[]::new);
        this.arrived = new int[places.length];
        Arrays.fill(arrived, Integer.MIN_VALUE);
        study.buses().stream().filter(bus -> bus.inServiceYear() <= 0).forEach(bus -> numbers.add(bus.name()));
    }

    int count() {
        return places.length;
    }

    /** The bus in a place; empty when none stands there. */
    Optional<Vehicle> in(int place) {
        return Optional.ofNullable(places[place]);
    }

    List<Optional<Vehicle>> all() {
        return Arrays.stream(places).map(Optional::ofNullable).toList();
    }

    List<FleetEvent> events() {
        return events;
    }

    void happened(FleetEvent event) {
        events.add(event);
    }

    /** The bus in a place goes on in another state. */
    void becomes(int place, Vehicle state) {
        places[place] = state;
    }

    void empty(int place) {
        places[place] = null;
    }

    /** Year in which the last bus that came from another place arrived in a place; before all years when none has. */
    int arrived(int place) {
        return arrived[place];
    }

    /** True when a bus has moved into a place in a year or later. */
    boolean arrivedSince(int place, int year) {
        return arrived[place] >= year;
    }

    void sell(int year, int place) {
        in(place).ifPresent(bus -> events.add(new FleetEvent.Sold(year, place, bus, false)));
        empty(place);
    }

    void buy(int year, int place, int type, int outgoingType, Optional<PlanInput.Replacement> step) {
        String unit = freeNumber(study.buses().get(place).name());
        places[place] = step.flatMap(PlanInput.Replacement::used).map(used -> used(unit, new PackSoFar.Coming(year, place, type,
                used.ageYears(), used.odometerKm()), used)).orElse(new Vehicle(unit, type, year, 0, Vehicle.Pack.FIRST, 1));
        events.add(new FleetEvent.Bought(year, place, places[place], outgoingType, step));
    }

    private Vehicle used(String unit, PackSoFar.Coming bus, SecondHand as) {
        Vehicle.Pack pack = packs.of(bus, Optional.of(new MeasuredPack(bus.year(), as.packHealth())));
        double packLifeLeft = study.types().get(bus.type()).electric()
                .map(e -> PackReplacement.lifeLeft(e.battery(), pack.wear())).orElse(1.0);
        return new Vehicle(unit, bus.type(), bus.year() - as.ageYears(), as.odometerKm(), pack, 1,
                Optional.of(new Vehicle.Used(as, packLifeLeft)));
    }

    /** A number that no bus has had: that of the place, else that with the next generation behind it. */
    private String freeNumber(String name) {
        String number = name;
        for (int generation = 2; !numbers.add(number); generation++) {
            number = name + "-" + generation;
        }
        return number;
    }

    /** A bus that has left its place takes another, whose bus is sold. */
    void move(int year, Vehicle bus, int from, int to) {
        sell(year, to);
        places[to] = bus;
        arrived[to] = year;
        events.add(new FleetEvent.Moved(year, to, bus, from));
    }
}
