package org.amberyard.report.papers;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.amberyard.report.document.DataTable;

/** Tables that a grant writer chooses from. */
public enum GrantTable {
    /** Vehicles replaced. */
    T1("Vehicles replaced", FleetPapers::replaced, true),
    /** New vehicles. */
    T2("New vehicles", FleetPapers::bought, true),
    /** Infrastructure budget. */
    T3("Ports, works, training and tools", BudgetPapers::infrastructure, true),
    /** Budget summary. */
    T4("Budget", BudgetPapers::summary, true),
    /** Sources of funds. */
    T5("Cost share and sources", BudgetPapers::sources, true),
    /** Emissions in a year. */
    T6("Emissions a year", AirPapers::annual, true),
    /** Emissions over remaining lives. */
    T7("Emissions over remaining life", AirPapers::lifetime, false),
    /** Cost-effectiveness. */
    T8("Cost-effectiveness", AirPapers::perTon, true),
    /** Timeline. */
    T9("Timeline", SchedulePapers::timeline, false),
    /** Need and benefit. */
    T10("Need and benefit", NeedPapers::need, false),
    /** Budget in words. */
    T11("Budget in words", BudgetPapers::narrative, false),
    /** Assumptions and sources. */
    T12("Assumptions and sources", RegisterPapers::sources, true),
    /** Risks. */
    T13("Risks", RiskPapers::table, false),
    /** Workforce. */
    T14("Workforce", NeedPapers::workforce, false),
    /** Reporting. */
    T15("Reporting", SchedulePapers::reporting, true),
    /** Energy and range evidence. */
    T16("Energy and range of each route", EvidencePapers::routes, true),
    /** Charging and load. */
    T17("Charging and load", EvidencePapers::charging, true),
    /** Sensitivity. */
    T18("What would change the answer", EvidencePapers::sensitivity, false);

    private final String title;
    private final Function<PaperInput, List<DataTable>> tables;
    private final boolean wide;

    GrantTable(String title, Function<PaperInput, List<DataTable>> tables, boolean wide) {
        this.title = title;
        this.tables = tables;
        this.wide = wide;
    }

    /** Title for people. */
    public String title() {
        return title;
    }

    /** True when it is printed in landscape. */
    boolean wide() {
        return wide;
    }

    List<DataTable> of(PaperInput in) {
        return tables.apply(in);
    }

    /** A table by its number, as T1. */
    public static Optional<GrantTable> of(String name) {
        return Arrays.stream(values()).filter(t -> t.name().equalsIgnoreCase(name)).findFirst();
    }

    /** All numbers as words. */
    public static String names() {
        return Arrays.stream(values()).map(GrantTable::name).collect(Collectors.joining(", "));
    }
}
