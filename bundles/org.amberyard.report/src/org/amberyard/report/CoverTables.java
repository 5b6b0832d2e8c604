package org.amberyard.report;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.amberyard.core.plan.SpareCover;
import org.amberyard.core.plan.TripCover;
import org.amberyard.core.plan.TripVerdict;
import org.amberyard.core.units.Unit;
import org.amberyard.report.CoverRows.OfGap;
import org.amberyard.report.CoverRows.OfSpare;
import org.amberyard.report.CoverRows.OfTrip;

/** Tables of who covers trips, and which routes the spares can stand in for, in the last year of the plans. */
final class CoverTables {
    private CoverTables() {
    }

    static TableDefinition<OfGap> coverByYear() {
        return new TableDefinition<>("cover_by_year", "Trips and spares by year", OfGap::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .optionalYear("year", "Year", "Year; empty in the first row of a plan, which counts what is uncovered in any year.", OfGap::year)
                .heads()
                .text("answer", "Answer", "What is left uncovered, counted.", OfGap::answer)
                .count("uncovered_trips", "Trips not covered", "Trips that no bus of the plan can cover.", r -> r.trips().size())
                .text("uncovered_trip_names", "Which trips", "Those trips.", r -> String.join(", ", r.tripNames()))
                .count("routes_without_spare", "Routes without a spare", "Routes that no spare of the plan can stand in for; none where the "
                        + "yard keeps no spares.", r -> r.routes().size())
                .text("routes_without_spare_names", "Which routes", "Those routes.", r -> String.join(", ", r.routeNames()))
                .count("routes_without_bus", "Routes without a bus", "Routes that no bus of the plan drives, so that the plan costs less than "
                        + "what is to be driven.", r -> r.undriven().size())
                .text("routes_without_bus_names", "Which have none", "Those routes.", r -> String.join(", ", r.undrivenNames()));
    }

    static TableDefinition<OfTrip> tripCover() {
        return new TableDefinition<>("trip_cover", "Who can cover the trips", OfTrip::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Last year of the study, in which the trips are looked at.",
                        r -> r.result().input().baseYear() + r.result().input().years() - 1)
                .text("trip", "Trip", "Name of the trip.", r -> r.trip().name()).heads()
                .text("kind", "Kind", "What the trip is for.", r -> r.trip().kind())
                .text("date", "Date", "Day of the trip as year, month and day, in the year that the list of trips stands for.",
                        r -> r.trip().date().toString())
                .text("day", "Day", "What the routes do on that day: school day, extended-year day or day without routes.",
                        r -> r.trip().day().label())
                .number("distance", "Distance", Unit.KILOMETRE, "Distance there and back.", r -> r.trip().km())
                .number("time_away", "Time away", Unit.HOUR, "Time from leaving the yard to being back.", r -> r.trip().hours())
                .count("seats", "Seats", "Seats that the riders need; not compared with the seats of buses, which are not known.",
                        r -> r.trip().seats())
                .text("assigned", "Assigned place", "Place in the fleet that drives the trip today; empty where none is fixed.",
                        r -> r.assigned().map(p -> placeName(r, p)).orElse(null))
                .text("assigned_answer", "Assigned bus",
                        "Whether the bus in that place can cover the trip: can, or what keeps it from it.",
                        r -> r.assigned().map(p -> p.verdict().label()).orElse(null))
                .count("covering", "Buses that can", "Number of places whose bus can cover the trip.",
                        r -> r.answer().able().size())
                .count("covering_electric", "Electric buses that can", "Number of those with an electric bus.",
                        r -> (int) r.answer().able().stream().filter(TripCover.Place::electric).count())
                .text("covering_places", "Who can",
                        "Those places: spare and activity buses first, then route buses, the largest margin first.",
                        r -> r.answer().able().stream().map(p -> placeName(r, p)).collect(Collectors.joining(", ")))
                .text("why_not", "Why not the others", "What keeps the other buses from it, with the number of places.",
                        r -> reasons(r.answer().places()));
    }

    private static String placeName(OfTrip row, TripCover.Place place) {
        return row.result().input().buses().get(place.place()).name();
    }

    private static String reasons(List<TripCover.Place> places) {
        TreeMap<TripVerdict, Long> counts = places.stream().filter(p -> !p.can())
                .collect(Collectors.groupingBy(TripCover.Place::verdict, TreeMap::new, Collectors.counting()));
        return counts.entrySet().stream().map(e -> e.getValue() + " " + e.getKey().label()).collect(Collectors.joining(", "));
    }

    static TableDefinition<OfSpare> spareCover() {
        return new TableDefinition<>("spare_cover", "What the spares can stand in for", OfSpare::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Last year of the study, in which the spares are looked at.",
                        r -> r.result().input().baseYear() + r.cover().year())
                .text("place", "Place", "Place in the fleet by its bus number.",
                        r -> r.result().input().buses().get(r.spare().place()).name())
                .heads()
                .text("unit", "Bus", "The bus that stands there.", r -> r.spare().vehicle().unit())
                .text("type", "Type", "Vehicle type.",
                        r -> r.result().input().types().get(r.spare().vehicle().type()).name())
                .count("covered", "Routes covered", "Number of routes of its body type that it can stand in for.",
                        r -> r.spare().covered().size())
                .count("not_covered", "Routes not covered", "Number of routes of its body type that it cannot.",
                        r -> r.spare().notCovered().size())
                .text("longest_covered", "Longest covered", "Route with the longest day that it can stand in for.",
                        r -> longest(r.spare().covered()).map(i -> routeName(r, i)).orElse(null))
                .optional("longest_covered_distance", "Longest covered", Unit.KILOMETRE, "Distance of that day.",
                        r -> distance(r, r.spare().covered()))
                .text("longest_not_covered", "Longest not covered", "Route of its body type with the longest day that it cannot.",
                        r -> longest(r.spare().notCovered()).map(i -> routeName(r, i)).orElse(null))
                .optional("longest_not_covered_distance", "Longest not covered", Unit.KILOMETRE, "Distance of that day.",
                        r -> distance(r, r.spare().notCovered()))
                .count("routes_without_spare", "Routes without a spare", "Number of routes that no spare of the plan can do.",
                        r -> r.cover().uncovered().size())
                .text("routes_without_spare_names", "Which", "Those routes, longest first.",
                        r -> r.cover().uncovered().stream().map(i -> routeName(r, i)).collect(Collectors.joining(", ")));
    }

    private static Optional<Integer> longest(List<Integer> routes) {
        return routes.stream().findFirst();
    }

    private static String routeName(OfSpare row, int route) {
        return row.result().input().duty().routes().get(route).name();
    }

    private static OptionalDouble distance(OfSpare row, List<Integer> routes) {
        return routes.stream().limit(1).mapToDouble(r -> SpareCover.blockKm(row.result().input().duty().routes().get(r)))
                .findFirst();
    }
}
