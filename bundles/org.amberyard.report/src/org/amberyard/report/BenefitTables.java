package org.amberyard.report;

import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.plan.EngineModelYear;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.units.Unit;
import org.amberyard.report.AirRows.OfBenefit;

/** Tables of a grant: what buses that are replaced emitted, what their successors do, and what a ton less costs. */
final class BenefitTables {
    private static final String ALL = "All";

    private BenefitTables() {
    }

    static TableDefinition<OfBenefit> byBus() {
        TableDefinition<OfBenefit> table = opening("emissions_by_bus", "Emissions of replaced buses in a year");
        table.text("compared", "Compared with", "The bus whose emissions stand under Before: the old one, or where that would have left "
                + "in the year anyway, the one that the baseline has in the place then.",
                r -> r.single() ? r.bus().compared().vehicle().unit() : ALL);
        tons(table, "before", "Before", "That bus on the duty of the place in the year of the change, engine and heater; nothing "
                + "where it stands still.", OfBenefit::before);
        tons(table, "after", "After", "New bus on the same duty.", OfBenefit::after);
        tons(table, "reduced", "Reduced", "Before less after.", OfBenefit::reduced);
        table.why(OfBenefit::whyReduced);
        return table.text("reduced_printed", "Reduced, as printed", "Reduction in short tons, rounded once as grant tables are; sums "
                + "may not add up due to rounding.", r -> r.measure().printed(r.reduced()))
                .optional("power_plants", "Power plants of the new bus", ColumnUnit.SHORT_TON_OF_KG, "At the power plants for the "
                        + "energy of the new bus; in none of the columns before; CO2e in the row of CO2. No figure for dust, HC and CO.",
                        r -> told(r, EmissionCause.GENERATION, r.afterOf(EmissionSource.GRID)))
                .optional("upstream_reduced", "Fuel upstream, reduced", ColumnUnit.SHORT_TON_OF_KG, "What fuel emits less from well "
                        + "to tank; in none of the columns before; CO2e in the row of CO2. No figure where the study leaves it out.",
                        r -> r.project().result().input().air().factors().upstream()
                                ? told(r, EmissionCause.FUEL_UPSTREAM, r.upstreamReduced()) : OptionalDouble.empty());
    }

    private static OptionalDouble told(OfBenefit row, EmissionCause cause, double kg) {
        return row.measure().toldOf(cause) ? OptionalDouble.of(kg) : OptionalDouble.empty();
    }

    static TableDefinition<OfBenefit> inLife() {
        TableDefinition<OfBenefit> table = opening("emissions_lifetime", "Emissions of replaced buses in their remaining life")
                .optionalYear("retires", "Would have retired", "Year in which the old bus leaves its place in the baseline, or by the "
                        + "rule of its type after the study.", r -> ifSingle(r, calendar(r, r.bus().retires())))
                .optional("remaining_years", "Remaining life", ColumnUnit.of(Unit.YEAR), "That year less the year of the change; zero "
                        + "for a bus that would have left in that year anyway.",
                        r -> r.single() ? OptionalDouble.of(r.bus().remainingYears()) : OptionalDouble.empty());
        tons(table, "reduced", "Reduced in a year", "Before less after in the year of the change.", OfBenefit::reduced);
        table.why(OfBenefit::whyReduced);
        tons(table, "lifetime", "Reduced in the remaining life", "The same times the years of remaining life, from unrounded "
                + "figures.", OfBenefit::inLife);
        table.why(OfBenefit::whyInLife);
        return table.text("lifetime_printed", "Reduced in the remaining life, as printed", "In short tons, rounded once as grant "
                + "tables are; sums may not add up due to rounding.", r -> r.measure().printed(r.inLife()));
    }

    private static TableDefinition<OfBenefit> opening(String name, String title) {
        return new TableDefinition<>(name, title, OfBenefit::all)
                .notForSubmissionWhen(OfBenefit::restsOnPlaceholders)
                .text("plan", "Plan", "Name of the plan.", r -> r.project().plan().name())
                .optionalYear("year", "Year", "Year of the change; none for all buses together.",
                        r -> ifSingle(r, calendar(r, r.bus().year())))
                .text("place", "Place", "Place in the fleet by its bus number, or all buses together.",
                        r -> r.single() ? r.project().result().input().buses().get(r.bus().place()).name() : ALL)
                .text("pollutant", "Pollutant", "Pollutant at the exhaust pipes of engine and heater, or dust.",
                        r -> r.measure().label())
                .heads()
                .text("old_bus", "Old bus", "The bus that leaves the place.", r -> r.single() ? r.bus().old().vehicle().unit() : ALL)
                .optionalYear("engine_model_year", "Engine model year", "Model year of its engine.",
                        r -> ifSingle(r, engineModelYear(r, r.bus())))
                .text("new_bus", "New bus", "The bus that stands there then.",
                        r -> r.single() ? r.bus().now().vehicle().unit() : ALL)
                .number("distance", "Distance", Unit.KILOMETRE, "Distance in the year of the change.", OfBenefit::km)
                .optional("idling", "Yard idling", Unit.HOUR, "Yard idling of an engine in the place.", r -> r.single()
                        ? OptionalDouble.of(r.project().result().input().buses().get(r.bus().place()).idleHoursPerYear())
                        : OptionalDouble.empty());
    }

    private static OptionalInt ifSingle(OfBenefit row, int year) {
        return row.single() ? OptionalInt.of(year) : OptionalInt.empty();
    }

    private static int calendar(OfBenefit row, int year) {
        return row.project().result().input().baseYear() + year;
    }

    private static int engineModelYear(OfBenefit row, ReplacedBus bus) {
        return EngineModelYear.of(row.project().result().input(), bus.old().vehicle());
    }

    private static void tons(TableDefinition<OfBenefit> table, String column, String label, String meaning,
            ToDoubleFunction<OfBenefit> kg) {
        table.number(column + "_kg", label, ColumnUnit.KG, "In kilograms. " + meaning, kg)
                .number(column, label, ColumnUnit.SHORT_TON_OF_KG, "The same in short tons of 2,000 pounds.", kg);
    }
}
