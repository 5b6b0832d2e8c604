package org.amberyard.report;

import java.util.OptionalDouble;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostGroups;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.units.Unit;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.ResultRows.OfCategory;
import org.amberyard.report.ResultRows.OfPlaceGroup;
import org.amberyard.report.ResultRows.OfPlan;
import org.amberyard.report.ResultRows.OfYear;

/** Tables of what plans cost. */
final class PlanTables {
    private PlanTables() {
    }

    static TableDefinition<OfPlan> headline() {
        TableDefinition<OfPlan> table = new TableDefinition<>("headline", "Plans in single figures", OfPlan::all);
        table.notForSubmissionWhen(r -> PlaceholderUse.in(r, Pollutant.CO2E))
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name()).heads()
                .text("is_baseline", "Baseline", "Whether the other plans are compared with this one: yes or no.",
                        r -> r.index() == r.result().input().baseline() ? "yes" : "no")
                .money("present_cost", "Present cost", "Present value of all costs at the start of the base year; the buses of today are taken as paid for.",
                        r -> r.plan().measures().presentCost())
                .why(r -> new HeadlineWhy(r).presentCost())
                .money("annual_equivalent", "Annual equivalent cost",
                        "Level yearly cost in constant money with the same present value.",
                        r -> r.plan().measures().annualEquivalent())
                .why(r -> new HeadlineWhy(r).annualEquivalent())
                .optional("cost_per_distance", "Cost per distance", Unit.MONEY_PER_KM,
                        "Present cost over the distance, both discounted. No figure where nothing is driven.", r -> r.plan().measures().costPerKm())
                .why(r -> new HeadlineWhy(r).costPerDistance())
                .optionalMoney("cost_per_rider_day", "Cost per rider and day",
                        "Present cost over the days on which riders are carried, both discounted; each rider counts once a day. No figure where the riders of a route are not known.",
                        r -> r.plan().measures().costPerRiderDay())
                .why(r -> new HeadlineWhy(r).costPerRiderDay())
                .optionalMoney("present_saving", "Saving against the baseline",
                        "Present cost of the baseline less that of the plan; no figure for the baseline.",
                        r -> r.comparison().map(c -> OptionalDouble.of(c.presentSaving())).orElse(OptionalDouble.empty()))
                .why(r -> new HeadlineWhy(r).presentSaving());
        return PaybackColumns.added(table, OfPlan::comparison)
                .number("greenhouse_gas", "Greenhouse gas", ColumnUnit.TONNE_OF_KG,
                        "Tailpipes and heaters, and power plants with line losses, over the study; making and delivering fuel is left out.",
                        r -> r.plan().measures().co2eKg())
                .why(r -> new HeadlineWhy(r).greenhouseGas())
                .optional("greenhouse_gas_saving", "Greenhouse gas saved", ColumnUnit.TONNE_OF_KG,
                        "That of the baseline less that of the plan; no figure for the baseline.",
                        r -> r.comparison().map(c -> OptionalDouble.of(c.co2eSavingKg())).orElse(OptionalDouble.empty()))
                .why(r -> new HeadlineWhy(r).greenhouseGasSaving())
                .number("distance", "Distance", Unit.KILOMETRE, "Distance driven over the study.",
                        r -> r.plan().measures().km())
                .why(r -> new HeadlineWhy(r).distance())
                .number("fuel", "Fuel", Unit.LITRE, "Fuel of engines and heaters over the study.",
                        r -> r.plan().measures().fuelL())
                .why(r -> new HeadlineWhy(r).fuel())
                .number("electricity", "Electricity", Unit.KILOWATT_HOUR,
                        "Energy at the meter over the study, what ports draw at rest included.", r -> r.plan().measures().meterKwh())
                .why(r -> new HeadlineWhy(r).electricity());
    }

    static TableDefinition<OfCategory> costByYear() {
        return new TableDefinition<>("cost_by_year", "Cost by year and category", OfCategory::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Year in which the cost falls.", r -> r.at().calendarYear())
                .text("group", "Group", "Group of the category.", r -> r.category().group().label())
                .text("category", "Category", "Cost category.", r -> r.category().label()).heads()
                .money("amount", "Amount", "Cost in the money that the study states; a credit is negative.",
                        r -> r.at().plan().ledger().amount(r.at().year(), r.category()))
                .why(r -> new LedgerWhy(r.at().result(), r.at().plan()).ofYear(r.at().year(), r.category()));
    }

    static TableDefinition<OfPlaceGroup> costByBus() {
        return new TableDefinition<>("cost_by_bus", "Cost by bus and year", OfPlaceGroup::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .text("place", "Bus or yard", "Place in the fleet by its bus number, or the yard for what all share.",
                        r -> r.at().plan().ledger().rows().get(r.row()))
                .year("year", "Year", "Year in which the cost falls.", r -> r.at().calendarYear())
                .text("group", "Group", "Group of cost categories.", r -> r.group().label()).heads()
                .money("amount", "Amount", "Cost in the money that the study states; a credit is negative.",
                        r -> CostGroups.amount(r.at().plan().ledger(), r.row(), r.at().year(), r.group()))
                .why(r -> new LedgerWhy(r.at().result(), r.at().plan()).ofRow(r.row(), r.at().year(), r.group()));
    }

    static TableDefinition<OfYear> cashByYear() {
        TableDefinition<OfYear> table = new TableDefinition<>("cash_by_year", "Cash by year", OfYear::all);
        table.text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year in which the money moves.", OfYear::calendarYear).heads()
                .money("capital", "Capital", "Buses, replacement packs, ports, works, training.",
                        r -> group(r, CostCategory.Group.CAPITAL))
                .why(r -> why(r, CostCategory.Group.CAPITAL))
                .money("funding", "Funding", "Awards, low-carbon credits and operating aid, negative; awards paid back.",
                        r -> group(r, CostCategory.Group.FUNDING))
                .why(r -> why(r, CostCategory.Group.FUNDING))
                .money("energy", "Energy", "Fuel and electricity.", r -> group(r, CostCategory.Group.ENERGY))
                .why(r -> why(r, CostCategory.Group.ENERGY))
                .money("upkeep", "Upkeep and fees", "Upkeep, port fees, insurance, registration.",
                        r -> group(r, CostCategory.Group.UPKEEP))
                .why(r -> why(r, CostCategory.Group.UPKEEP))
                .money("bus_sales", "Bus sales", "Buses sold, negative.",
                        r -> r.plan().ledger().amount(r.year(), CostCategory.BUS_SALE))
                .money("cash", "Cash", "Sum of the columns before: what the year takes out of the funds.",
                        r -> r.plan().ledger().yearTotal(r.year()) - left(r))
                .money("value_left", "Value left", "What is left at the end of the study, negative; no money moves.",
                        PlanTables::left)
                .money("cost", "Cost", "Cash and value left together: the year's total in the ledger.",
                        r -> r.plan().ledger().yearTotal(r.year()));
        return table;
    }

    private static Derivation why(OfYear at, CostCategory.Group group) {
        return new LedgerWhy(at.result(), at.plan()).ofYear(at.year(), group);
    }

    private static double group(OfYear row, CostCategory.Group group) {
        return CostGroups.amount(row.plan().ledger(), row.year(), group);
    }

    private static double left(OfYear row) {
        return row.plan().ledger().amount(row.year(), FlowTime.END);
    }
}
