package org.amberyard.workbench.layout;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** What the window can be laid out for: the views that answer one kind of question, in two folders below the study. */
public enum Purpose {
    /** What plans cost, year by year. The window begins with it. */
    MONEY("district", List.of("cash_by_year"), List.of("annualCost", "planDifference", "budgetByYear", "results"),
            List.of("cumulativeCost", "fleetByYear", "upkeepByCause", "shopHours", "why", "findings")),
    /** Which routes electric buses can do. */
    ROUTES("routes", List.of("route_fit"), List.of("rangeMargin", "rangeByMonth", "consumptionByTemperature", "results"),
            List.of("chargeThroughDay", "energyByCause", "packCapacity", "why", "findings")),
    /** Ports, load, service and electric bill. */
    DEPOT("depot", List.of("service_by_year"), List.of("dayLoad", "electricBill", "serviceLoad", "results"),
            List.of("portOccupancy", "portCount", "chargingPolicies", "why", "findings")),
    /** Emissions, and what grants ask for. */
    AIR("air", List.of("emissions_by_year"), List.of("emissions", "budgetByYear", "results"), List.of("fleetByYear", "why", "findings")),
    /** What if inputs are otherwise. */
    WHAT_IF("whatIfLayout", List.of("what_if_summary", "tornado", "price_break_even"), List.of("whatIf", "planDifference", "results"),
            List.of("whatIfDraws", "whatIfBudget", "whatIfPrices", "why", "findings"));

    private static final String PREFIX = "org.amberyard.workbench.";
    /** What may be opened beside the views of any purpose. */
    private static final List<String> ANYWHERE = List.of("history", "compare", "notes");

    private final String name;
    private final List<String> tables;
    private final List<String> left;
    private final List<String> right;

    Purpose(String name, List<String> tables, List<String> left, List<String> right) {
        this.name = name;
        this.tables = tables;
        this.left = left;
        this.right = right;
    }

    /** Id of the perspective. */
    public String id() {
        return PREFIX + name;
    }

    /** The purpose of a perspective. */
    static Optional<Purpose> ofId(String id) {
        return Arrays.stream(values()).filter(p -> p.id().equals(id)).findFirst();
    }

    /** Names of the tables of results that fit it, the best first; those of a what-if are there only when one was run. */
    List<String> tables() {
        return tables;
    }

    /** Ids of the views in the left folder; the first is in front. */
    List<String> left() {
        return ids(left.stream());
    }

    /** Ids of the views in the right folder; the first is in front. */
    List<String> right() {
        return ids(right.stream());
    }

    /** Ids of the views of other purposes, which may be opened here as well. */
    List<String> elsewhere() {
        Stream<String> all = Arrays.stream(values()).flatMap(p -> Stream.concat(p.left.stream(), p.right.stream()));
        return ids(Stream.concat(all, ANYWHERE.stream()).distinct().filter(v -> !left.contains(v) && !right.contains(v)));
    }

    private static List<String> ids(Stream<String> views) {
        return views.map(PREFIX::concat).toList();
    }
}
