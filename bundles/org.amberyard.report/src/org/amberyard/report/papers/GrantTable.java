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
    T1("Vehicles replaced", FleetPapers::replaced),
    /** New vehicles. */
    T2("New vehicles", FleetPapers::bought),
    /** Infrastructure budget. */
    T3("Ports, works, training and tools", BudgetPapers::infrastructure),
    /** Budget summary. */
    T4("Budget", BudgetPapers::summary),
    /** Sources of funds. */
    T5("Cost share and sources", SourcePapers::of),
    /** Emissions in a year. */
    T6("Emissions a year", AirPapers::annual),
    /** Emissions over remaining lives. */
    T7("Emissions over remaining life", AirPapers::lifetime),
    /** Cost-effectiveness. */
    T8("Cost-effectiveness", AirPapers::perTon),
    /** Timeline. */
    T9("Timeline", SchedulePapers::timeline),
    /** Need and benefit. */
    T10("Need and benefit", NeedPapers::need),
    /** Budget in words. */
    T11("Budget in words", BudgetPapers::narrative),
    /** Assumptions and sources. */
    T12("Assumptions and sources", RegisterPapers::sources),
    /** Risks. */
    T13("Risks", RiskPapers::table),
    /** Workforce. */
    T14("Workforce", NeedPapers::workforce),
    /** Reporting. */
    T15("Reporting", SchedulePapers::reporting),
    /** Energy and range evidence. */
    T16("Energy and range of each route", EvidencePapers::routes),
    /** Charging and load. */
    T17("Charging and load", EvidencePapers::charging),
    /** Sensitivity. */
    T18("What would change the answer", EvidencePapers::sensitivity);

    private final String title;
    private final Function<PaperInput, List<DataTable>> tables;

    GrantTable(String title, Function<PaperInput, List<DataTable>> tables) {
        this.title = title;
        this.tables = tables;
    }

    /** Title for people. */
    public String title() {
        return title;
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
