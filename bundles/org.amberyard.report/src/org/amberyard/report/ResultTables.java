package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;

/** All tables of a result, in the user's units. A figure that does not exist is missing, never zero. */
public final class ResultTables {
    private ResultTables() {
    }

    /** The tables of a result, in a fixed order. */
    public static List<ResultTable> of(StudyResult result, UnitSystem system) {
        return of(result, system, Progress.NONE);
    }

    /** The same; the progress counts tables. */
    static List<ResultTable> of(StudyResult result, UnitSystem system, Progress progress) {
        return of(result, system, name -> true, progress);
    }

    /** The tables whose names are chosen, in the same order; the others are not made. */
    static List<ResultTable> of(StudyResult result, UnitSystem system, Predicate<String> chosen, Progress progress) {
        CurrentPart current = new CurrentPart();
        List<TableDefinition<?>> wanted = definitions(current).stream().filter(d -> chosen.test(d.name())).toList();
        List<ResultTable> made = new ArrayList<>();
        for (TableDefinition<?> definition : wanted) {
            current.is(progress.part(made.size(), wanted.size()));
            made.add(definition.table(result, system));
        }
        progress.at(1);
        return made;
    }

    /** Tells the progress of the table that is being made. */
    private static final class CurrentPart implements Progress {
        private volatile Progress part = Progress.NONE;

        void is(Progress now) {
            part = now;
            now.at(0);
        }

        @Override
        public void at(double share) {
            part.at(share);
        }
    }

    /** Titles of the tables, in the same order. */
    public static List<String> titles() {
        return definitions(Progress.NONE).stream().map(d -> d.title()).toList();
    }

    /**
     * One of the tables, by its place in that order; the others are not made.
     *
     * @param progress hears of work that a table may need beyond the results, which can take seconds
     */
    public static ResultTable of(int place, StudyResult result, UnitSystem system, Progress progress) {
        return definitions(progress).get(place).table(result, system);
    }

    /**
     * How a cell of a table comes about, down to inputs where it is money, else in words.
     *
     * @param place place of the table in the order of the tables
     * @param row row of the table
     * @param column column of the table
     */
    public static Derivation why(int place, StudyResult result, int row, int column) {
        return definitions(Progress.NONE).get(place).why(result, row, column);
    }

    /** Plans in single figures. */
    public static ResultTable headline(StudyResult result, UnitSystem system) {
        return PlanTables.headline().table(result, system);
    }

    /**
     * Tables that belong together.
     *
     * @param title what they are about
     * @param names their names
     * @param tables their titles
     */
    public record Group(String title, List<String> names, List<String> tables) {
        public Group {
            names = List.copyOf(names);
            tables = List.copyOf(tables);
        }
    }

    /** The titles by what the tables are about; all of them together are {@link #titles()}. */
    public static List<Group> groups() {
        return grouped(Progress.NONE).stream().map(g -> new Group(g.title(), g.tables().stream().map(d -> d.name()).toList(),
                g.tables().stream().map(d -> d.title()).toList())).toList();
    }

    /**
     * Place of a table by its name.
     *
     * @throws IllegalArgumentException when there is none
     */
    public static int place(String name) {
        List<String> names = definitions(Progress.NONE).stream().map(d -> d.name()).toList();
        if (!names.contains(name)) {
            throw new IllegalArgumentException("There is no table “" + name + "”");
        }
        return names.indexOf(name);
    }

    /** The columns of a table by its place, without its rows, which may take long to make. */
    public static ResultTable headings(int place, StudyResult result, UnitSystem system) {
        return definitions(Progress.NONE).get(place).headings(result, system);
    }

    private record Grouped(String title, List<TableDefinition<?>> tables) {

        Grouped restingOn(Behind... parts) {
            tables.forEach(t -> t.restingOn(List.of(parts)));
            return this;
        }
    }

    static List<TableDefinition<?>> definitions(Progress progress) {
        List<TableDefinition<?>> all = new ArrayList<>();
        grouped(progress).forEach(g -> all.addAll(g.tables()));
        return all;
    }

    private static List<Grouped> grouped(Progress progress) {
        LastYears last = new LastYears();
        return List.of(
                new Grouped("Costs and finance", List.of(PlanTables.headline(), PlanTables.costByYear(), PlanTables.costByBus(),
                        PlanTables.cashByYear(), MeasureTable.measures(), BudgetTables.budgetByYear(), BudgetTables.financing(),
                        DebtTables.debts(), DebtTables.payments(), ActualTable.planAgainstActual())),
                new Grouped("Funding, differences and break-evens", List.of(FundingTables.byLine(), FundingTables.byYear(),
                        WhyTables.planDifference(), WhyTables.priceBreakEven(progress))),
                new Grouped("Fleet and packs", List.of(FleetTables.vehicleYears(), FleetTables.fleetEvents(),
                        FleetTables.fleetByYear(), PackTables.packHistory(), RotationTable.rotation())).restingOn(Behind.SETTINGS),
                new Grouped("Routes and trips", List.of(RouteTables.routeFit(), RouteTables.routeEnergy(),
                        OutlookTables.routeOutlook(), OutlookTables.remedies(), OutlookTables.routeWeather(),
                        OutlookTables.routeCalibration(), CoverTables.coverByYear(), CoverTables.tripCover(), CoverTables.spareCover()))
                        .restingOn(Behind.SITE, Behind.CALENDAR, Behind.SETTINGS),
                new Grouped("Shop", List.of(UpkeepTables.upkeepByCause(), UpkeepTables.calibration(), UpkeepTables.shopCalendar(),
                        UpkeepTables.shopByYear(), UpkeepTables.shopByMonth())).restingOn(Behind.SETTINGS),
                new Grouped("Air and grants", List.of(EmissionTables.byYear(), BenefitTables.byBus(), BenefitTables.inLife(),
                        CostPerTon.table(), EligibilityTable.table(), EmissionTables.harmByYear(), FactorTable.factors())),
                new Grouped("Bills and policies", List.of(BillTables.billByYear(), BillTables.billByMonth(last),
                        BillTables.billLines(last), BillTables.billedQuantities(), ComparisonTables.policies(),
                        ComparisonTables.policiesByYear(progress), ComparisonTables.tariffs(), PartTables.policies(), PartTables.tariffs(),
                        AuditTables.bills(), AuditTables.lines())).restingOn(Behind.DEPOT, Behind.SETTINGS),
                new Grouped("Charging, ports and service", List.of(YardTables.serviceByYear(), YardLoadTables.yardByMonth(),
                        PortCurveTable.of(progress), ServiceTables.serviceRemedies(progress), OutageTable.of(progress),
                        YardLoadTables.loadShape(last), YardLoadTables.chargePlan(last), LoadLetter.table(last))).restingOn(Behind.DEPOT, Behind.SETTINGS));
    }
}
