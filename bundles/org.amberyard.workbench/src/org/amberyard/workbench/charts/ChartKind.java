package org.amberyard.workbench.charts;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.charts.AnnualCostChart;
import org.amberyard.charts.BillWaterfallChart;
import org.amberyard.charts.BudgetChart;
import org.amberyard.charts.Chart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.ChargeThroughDayChart;
import org.amberyard.charts.ConsumptionTemperatureChart;
import org.amberyard.charts.CumulativeCostChart;
import org.amberyard.charts.DayLoadChart;
import org.amberyard.charts.EmissionsChart;
import org.amberyard.charts.EnergyWaterfallChart;
import org.amberyard.charts.FleetMixChart;
import org.amberyard.charts.PackCapacityChart;
import org.amberyard.charts.PlanWaterfallChart;
import org.amberyard.charts.PolicyCostChart;
import org.amberyard.charts.PortCountChart;
import org.amberyard.charts.PortOccupancyChart;
import org.amberyard.charts.RangeHeatMap;
import org.amberyard.charts.RangeMarginChart;
import org.amberyard.charts.ServiceLoadChart;
import org.amberyard.charts.ShopHoursChart;
import org.amberyard.charts.Subject;
import org.amberyard.charts.UpkeepCauseChart;
import org.amberyard.charts.YardLoads;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.workbench.session.Choices.Kind;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The charts of views, what is to be chosen for each, and the part of the study whose inputs stand behind the choice. */
enum ChartKind {
    /** Cost of each year. */
    ANNUAL((r, p, l, u, t) -> AnnualCostChart.of(r, u, t), null),
    /** Cumulative cost. */
    CUMULATIVE((r, p, l, u, t) -> CumulativeCostChart.of(r, u, t), null),
    /** From one plan to another. */
    DIFFERENCE((r, p, l, u, t) -> PlanWaterfallChart.of(r, p.place(Kind.COMPARED), p.place(Kind.PLAN), u, t),
            Subject.Kind.PLAN, Kind.PLAN, Kind.COMPARED),
    /** What each fiscal year must appropriate. */
    BUDGET((r, p, l, u, t) -> BudgetChart.of(r, p.place(Kind.PLAN), u, t), Subject.Kind.PLAN, Kind.PLAN),
    /** Kinds and ages of the buses. */
    FLEET((r, p, l, u, t) -> FleetMixChart.of(r, p.place(Kind.PLAN), u, t), Subject.Kind.PLAN, Kind.PLAN),
    /** Range margin on the worst day. */
    RANGE((r, p, l, u, t) -> RangeMarginChart.of(r, p.place(Kind.PLAN), u, t), Subject.Kind.PLAN, Kind.PLAN),
    /** Range margin by month. */
    MONTHS((r, p, l, u, t) -> RangeHeatMap.of(r, p.place(Kind.PLAN), u, t), Subject.Kind.PLAN, Kind.PLAN),
    /** State of charge through a day. */
    DAY((r, p, l, u, t) -> ChargeThroughDayChart.of(r, p.place(Kind.PLAN), p.asked(), u, t), Subject.Kind.BUS, Kind.PLAN,
            Kind.BUS, Kind.YEAR, Kind.MONTH, Kind.DAY),
    /** Energy by cause. */
    CAUSES((r, p, l, u, t) -> EnergyWaterfallChart.of(r, p.place(Kind.ROUTE), p.place(Kind.TYPE), u, t), Subject.Kind.ROUTE,
            Kind.ROUTE, Kind.TYPE),
    /** Upkeep by cause. */
    UPKEEP((r, p, l, u, t) -> UpkeepCauseChart.of(r, p.place(Kind.PLAN), u, t), Subject.Kind.PLAN, Kind.PLAN),
    /** Hours of the shop. */
    SHOP((r, p, l, u, t) -> ShopHoursChart.of(r, p.place(Kind.PLAN), u, t), Subject.Kind.PLAN, Kind.PLAN),
    /** Consumption by temperature. */
    TEMPERATURE((r, p, l, u, t) -> ConsumptionTemperatureChart.of(r, p.place(Kind.ROUTE), u, t), Subject.Kind.ROUTE, Kind.ROUTE),
    /** Capacity of packs over the years. */
    CAPACITY((r, p, l, u, t) -> PackCapacityChart.of(r, p.place(Kind.PLAN), OptionalInt.of(p.place(Kind.BUS)), t),
            Subject.Kind.BUS, Kind.PLAN, Kind.BUS),
    /** Load of the yard through a day. */
    LOAD((r, p, l, u, t) -> DayLoadChart.of(r, p.yardDay(), l, u, t), Subject.Kind.PLAN, Kind.PLAN, Kind.YEAR, Kind.MONTH,
            Kind.STRETCH),
    /** Ports through a day. */
    PORTS((r, p, l, u, t) -> PortOccupancyChart.of(r, p.yardDay(), l, u, t), Subject.Kind.PLAN, Kind.PLAN, Kind.YEAR,
            Kind.MONTH, Kind.STRETCH),
    /** Electric bill of a month. */
    BILL((r, p, l, u, t) -> BillWaterfallChart.of(r, p.place(Kind.PLAN), p.place(Kind.YEAR), p.place(Kind.MONTH), l, u, t),
            Subject.Kind.PLAN, Kind.PLAN, Kind.YEAR, Kind.MONTH),
    /** Load on the electric service. */
    SERVICE((r, p, l, u, t) -> ServiceLoadChart.of(r, p.place(Kind.PLAN), u, t), Subject.Kind.PLAN, Kind.PLAN),
    /** Charging policies compared. */
    POLICIES((r, p, l, u, t) -> PolicyCostChart.of(r, p.place(Kind.PLAN), p.place(Kind.YEAR), u, t), Subject.Kind.PLAN,
            Kind.PLAN, Kind.YEAR),
    /** Emissions by year. */
    EMISSIONS((r, p, l, u, t) -> EmissionsChart.of(r, p.pollutant(), u, t), Subject.Kind.FACTORS, Kind.POLLUTANT),
    /** Cost by number of ports. */
    PORT_COUNT((r, p, l, u, t, g) -> PortCountChart.of(r, p.place(Kind.PLAN), g, u, t), Subject.Kind.PLAN, Kind.PLAN);

    /** Makes a chart of what is picked. */
    @FunctionalInterface
    private interface Maker {
        Chart of(StudyResult result, Picks picks, YardLoads loads, UnitSystem units, ChartTheme theme);
    }

    /** Makes a chart that may take long. */
    @FunctionalInterface
    private interface LongMaker {
        Chart of(StudyResult result, Picks picks, YardLoads loads, UnitSystem units, ChartTheme theme, Progress progress);
    }

    private final LongMaker maker;
    private final Subject.Kind inputs;
    private final List<Kind> choices;

    ChartKind(Maker maker, Subject.Kind inputs, Kind... choices) {
        this((r, p, l, u, t, g) -> maker.of(r, p, l, u, t), inputs, choices);
    }

    ChartKind(LongMaker maker, Subject.Kind inputs, Kind... choices) {
        this.maker = maker;
        this.inputs = inputs;
        this.choices = List.of(choices);
    }

    /** True for a chart of the shop's work, from which the way leads to its task sheets. */
    boolean ofTheShop() {
        return this == UPKEEP || this == SHOP;
    }

    /** Name of the table of results that says what happens when what the chart shows is out of order; empty for most charts. */
    Optional<String> outage() {
        return this == PORTS ? Optional.of("port_outage") : Optional.empty();
    }

    List<Kind> choices() {
        return choices;
    }

    Chart chart(StudyResult result, Picks picks, YardLoads loads, UnitSystem units, ChartTheme theme, Progress progress) {
        return maker.of(result, picks, loads, units, theme, progress);
    }

    /** The part of the study behind what is picked; empty for a chart of sums or when nothing is picked. */
    Optional<Subject> inputs(Picks picks) {
        return Optional.ofNullable(inputs).map(i -> new Subject(i, place(i, picks))).filter(s -> s.place() >= 0);
    }

    /** The field of the inputs on which the chart hangs most; empty when it is the whole of them. */
    Optional<EStructuralFeature> field() {
        return this == BUDGET ? Optional.of(PlansPackage.Literals.PLAN__YEARLY_CAP) : Optional.empty();
    }

    private static int place(Subject.Kind kind, Picks picks) {
        return kind == Subject.Kind.FACTORS ? 0 : picks.place(Kind.valueOf(kind.name()));
    }
}
