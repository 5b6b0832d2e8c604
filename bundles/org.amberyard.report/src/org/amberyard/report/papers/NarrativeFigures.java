package org.amberyard.report.papers;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.progress.Progress;
import org.amberyard.study.FigureName;

/**
 * The figures that narratives name: each is read off the cell of the grant set that prints it, so that texts and tables agree to
 * the printed digit. Tables are made once, when a figure of theirs is asked for.
 */
public final class NarrativeFigures {
    private static final String T10 = "T10";
    private static final String T5C = "T5c";
    private static final String REDUCED = "Reduced";
    private static final Map<FigureName, Place> PLACES = places();

    private final GrantCells cells;
    private final Map<FigureName, Optional<PrintedFigure>> found = new EnumMap<>(FigureName.class);

    /** Finds a figure in the grant set; empty where it has none. */
    private interface Place {
        Optional<PrintedFigure> in(GrantCells cells);
    }

    /** Figures of a plan. */
    public NarrativeFigures(PaperInput in) {
        this.cells = new GrantCells(in);
    }

    /** A figure; empty where the grant set has nothing in its place. */
    public Optional<PrintedFigure> of(FigureName name) {
        return found.computeIfAbsent(name, n -> PLACES.get(n).in(cells));
    }

    /**
     * Finds all figures, so that asking for one takes no time later.
     *
     * @param progress hears after each; may end it
     */
    public void readAll(Progress progress) {
        read(List.of(FigureName.values()), progress);
    }

    /** The same of some figures. */
    void read(List<FigureName> names, Progress progress) {
        for (int i = 0; i < names.size(); i++) {
            progress.at((double) i / names.size());
            of(names.get(i));
        }
        progress.at(1);
    }

    private static Map<FigureName, Place> places() {
        Map<FigureName, Place> places = new EnumMap<>(FigureName.class);
        addNeed(places);
        addBuses(places);
        addMoney(places);
        addMatch(places);
        addAir(places);
        addYard(places);
        return Collections.unmodifiableMap(places);
    }

    private static void addNeed(Map<FigureName, Place> places) {
        places.put(FigureName.FLEET_BUSES, c -> c.valued(T10, "Buses, "));
        places.put(FigureName.PAST_AGE, c -> c.valued(T10, "of these at or past the retirement age"));
        places.put(FigureName.MEAN_AGE, c -> c.valued(T10, "Mean age"));
        places.put(FigureName.OLDEST_BUS, c -> c.valued(T10, "Oldest bus"));
        places.put(FigureName.FLEET_DISTANCE, c -> c.valued(T10, "Distance of the fleet"));
        places.put(FigureName.FLEET_FUEL, c -> c.valued(T10, "Fuel of the fleet"));
        places.put(FigureName.REPAIR_COST, c -> c.valued(T10, "Repair cost by distance"));
        places.put(FigureName.FUEL_SAVED, c -> c.valued(T10, "Fuel not burnt over the study"));
        places.put(FigureName.ELECTRICITY, c -> c.valued(T10, "Electricity at the meter over the study"));
        places.put(FigureName.COLDEST_DAY, c -> c.valued(T10, "Mean temperature of the coldest operated day"));
    }

    private static void addBuses(Map<FigureName, Place> places) {
        places.put(FigureName.BUSES_REPLACED, c -> c.count("T1a", "Bus no.", bus -> true));
        places.put(FigureName.OLD_DISTANCE, c -> c.total("T1b", "Distance a year"));
        places.put(FigureName.OLD_FUEL, c -> c.total("T1b", "Fuel a year"));
        places.put(FigureName.OLD_IDLING, c -> c.total("T1b", "Yard idling a year"));
        places.put(FigureName.ELECTRIC_BUSES, c -> c.count("T2a", "Fuel", "electric"::equals));
        places.put(FigureName.LEAST_LEFT, c -> c.least("T2a", "Left on the worst day, aged"));
        places.put(FigureName.ROUTES, c -> c.count("T16", "Route", route -> true));
        places.put(FigureName.ELECTRIC_ROUTES, c -> c.count("T16", "Served by", "electric"::equals));
    }

    private static void addMoney(Map<FigureName, Place> places) {
        places.put(FigureName.PROJECT_COST, c -> c.total("T4a", "Total"));
        places.put(FigureName.BUS_COST, c -> c.cell("T4a", "Activity", "New buses", "Total"));
        places.put(FigureName.PORT_COST, c -> c.cell("T4a", "Activity", "Charging ports", "Total"));
        places.put(FigureName.WORKS_COST, c -> c.cell("T4a", "Activity", "Site works", "Total"));
        places.put(FigureName.TRAINING_COST, c -> c.cell("T4a", "Activity", "Training and tools", "Total"));
        places.put(FigureName.REQUESTED, c -> c.total("T4a", "Requested"));
        places.put(FigureName.REQUESTED_SHARE, c -> c.programme().flatMap(p -> c.cell("T5a", "Source", p, "Share of the cost")));
        places.put(FigureName.ALL_PROGRAMMES, c -> c.total("T5b", "Programmes"));
        places.put(FigureName.OWN_MONEY, c -> c.total("T5b", "Own money"));
        places.put(FigureName.OWN_SHARE, c -> c.cell("T5a", "Source", "Own money", "Share of the cost"));
    }

    private static void addMatch(Map<FigureName, Place> places) {
        addMatch(places, FigureName.MATCH_BASE, "Comes to");
        addMatch(places, FigureName.MATCH_REQUIRED, "Match asked for");
        addMatch(places, FigureName.MATCH_REQUIRED_SHARE, "Match asked for, share");
        addMatch(places, FigureName.MATCH, "Match provided");
        addMatch(places, FigureName.MATCH_SHARE, "Match provided, share");
        places.put(FigureName.AWARD_DATE, c -> c.programme().flatMap(p -> c.cell("T9", "Milestone", "Award: “" + p + "”", "Date in the study")));
        places.put(FigureName.COMPLETION, c -> c.cell("T9", "Milestone", "Close-out of the whole plan", "Date in the study"));
    }

    private static void addMatch(Map<FigureName, Place> places, FigureName name, String column) {
        places.put(name, c -> c.programme().flatMap(p -> c.cell(T5C, "Programme", p, column)));
    }

    private static void addAir(Map<FigureName, Place> places) {
        addAir(places, Pollutant.NOX, FigureName.NOX_YEAR, FigureName.NOX_LIFE);
        addAir(places, Pollutant.PM25, FigureName.PM25_YEAR, FigureName.PM25_LIFE);
        addAir(places, Pollutant.HC, FigureName.HC_YEAR, FigureName.HC_LIFE);
        addAir(places, Pollutant.CO, FigureName.CO_YEAR, FigureName.CO_LIFE);
        addAir(places, Pollutant.CO2, FigureName.CO2_YEAR, FigureName.CO2_LIFE);
        addAir(places, Pollutant.CO2E, FigureName.CO2E_YEAR, FigureName.CO2E_LIFE);
        addTon(places, Pollutant.NOX, FigureName.NOX_TON, FigureName.NOX_GRANT_TON);
        addTon(places, Pollutant.PM25, FigureName.PM25_TON, FigureName.PM25_GRANT_TON);
        addTon(places, Pollutant.CO2, FigureName.CO2_TON, FigureName.CO2_GRANT_TON);
    }

    private static void addAir(Map<FigureName, Place> places, Pollutant pollutant, FigureName year, FigureName life) {
        places.put(year, c -> c.cell("T6b", pollutant.label(), "Pollutant", pollutant.label(), REDUCED));
        places.put(life, c -> c.total("T7", pollutant.label()));
    }

    private static void addTon(Map<FigureName, Place> places, Pollutant pollutant, FigureName project, FigureName grant) {
        String measure = pollutant.label() + ", remaining life";
        places.put(project, c -> c.cell("T8a", measure, "Money", "capital", "Cost of a short ton"));
        places.put(grant, c -> c.cell("T8a", measure, "Money", "grant only", "Cost of a short ton"));
    }

    private static void addYard(Map<FigureName, Place> places) {
        places.put(FigureName.PORTS, c -> c.last("T17a", "Ports"));
        places.put(FigureName.CONNECTED, c -> c.last("T17a", "Connected power"));
        places.put(FigureName.MANAGED_DEMAND, c -> c.last("T17a", "Demand of charging as planned"));
        places.put(FigureName.TRANSFORMER, c -> c.last("T17a", "Transformer"));
        places.put(FigureName.ELECTRIC_BILL, c -> c.cell("T17b", "Used by the study", "yes", "Bill"));
        places.put(FigureName.HIGH_VOLTAGE_PEOPLE, c -> c.last("T14a", "People trained for high voltage"));
    }
}
