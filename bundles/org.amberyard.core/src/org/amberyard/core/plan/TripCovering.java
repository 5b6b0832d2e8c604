package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DayBlock;

/** Judges every trip with every bus of a plan in a year. */
final class TripCovering {
    private static final double TOLERANCE = 1e-9;

    private final StudyInput study;
    private final int year;
    private final TripDrives drives;
    private final PortFleet ports;
    private final Map<Integer, Vehicle> buses = new HashMap<>();

    TripCovering(StudyInput study, PlanResult plan, int year, TripDrives drives) {
        this.study = study;
        this.year = year;
        this.drives = drives;
        this.ports = new PortFleet(study.depot(), plan.plan().ports());
        plan.fleet().inYear(year).forEach(v -> buses.put(v.place(), v.vehicle()));
    }

    TripCover cover() {
        List<TripCover.Answer> answers = new ArrayList<>();
        for (int trip = 0; trip < study.trips().size(); trip++) {
            answers.add(answer(trip));
        }
        return new TripCover(year, answers);
    }

    /** Trips that no bus can cover; buses with an engine are asked first, which is soon done. */
    List<Integer> uncovered() {
        List<Integer> places = IntStream.range(0, study.buses().size()).boxed().sorted(Comparator.comparing(this::isElectric)).toList();
        return IntStream.range(0, study.trips().size())
                .filter(trip -> places.stream().noneMatch(place -> judged(study.trips().get(trip), place).can())).boxed().toList();
    }

    private boolean isElectric(int place) {
        return Optional.ofNullable(buses.get(place)).filter(bus -> study.types().get(bus.type()).electric().isPresent()).isPresent();
    }

    private TripCover.Answer answer(int trip) {
        List<TripCover.Place> places = new ArrayList<>();
        for (int place = 0; place < study.buses().size(); place++) {
            places.add(judged(study.trips().get(trip), place));
        }
        Comparator<TripCover.Place> order = Comparator.comparing(
                (TripCover.Place p) -> study.buses().get(p.place()).role() == Role.ROUTE)
                .thenComparing(p -> -p.marginKwh().orElse(Double.POSITIVE_INFINITY));
        return new TripCover.Answer(trip, places, places.stream().filter(TripCover.Place::can).sorted(order).toList());
    }

    private TripCover.Place judged(TripInput trip, int place) {
        Vehicle bus = buses.get(place);
        if (bus == null) {
            return new TripCover.Place(place, TripVerdict.NO_BUS, false, OptionalDouble.empty());
        }
        VehicleTypeInput type = study.types().get(bus.type());
        boolean electric = type.electric().isPresent();
        OptionalInt route = study.buses().get(place).route();
        OwnRuns own = drives.own(route, trip);
        Optional<TripVerdict> kept = type.spec().body().bodyType().equals(trip.bodyType()) ? own.conflict(trip)
                : Optional.of(TripVerdict.BODY);
        if (electric && kept.isEmpty()) {
            return charged(trip, place, bus, own);
        }
        return new TripCover.Place(place, kept.orElse(TripVerdict.CAN), electric, OptionalDouble.empty());
    }

    private TripCover.Place charged(TripInput trip, int place, Vehicle bus, OwnRuns own) {
        OptionalInt route = study.buses().get(place).route();
        TripCharge charge = TripCharge.of(study, bus, ports.batteryKw(study.types().get(bus.type()), year));
        TripCharge.Day day = charge.day(drives.day(route, bus.type(), trip),
                own.nextMin().orElse(trip.returnMin() + DayBlock.DAY_MIN));
        double needed = drives.nextDay(route, bus.type(), trip.month(), own.nextDay()).map(charge::startShare).orElse(0.0);
        TripVerdict verdict = day.lowestShare() < 0 ? TripVerdict.CHARGE
                : day.morningShare() < needed - TOLERANCE ? TripVerdict.NOT_READY : TripVerdict.CAN;
        return new TripCover.Place(place, verdict, true, OptionalDouble.of(day.lowestShare() * charge.usableKwh()));
    }
}
