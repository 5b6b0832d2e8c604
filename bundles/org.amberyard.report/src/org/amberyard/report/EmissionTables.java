package org.amberyard.report;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.HealthCosts;
import org.amberyard.core.plan.AirHarm;
import org.amberyard.core.plan.AirWhy;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.report.AirRows.OfPollutant;
import org.amberyard.report.ResultRows.OfYear;

/** Tables of what goes into the air, year by year. */
final class EmissionTables {
    private static final String UNKNOWN = " No figure where a factor is not known.";

    private EmissionTables() {
    }

    static TableDefinition<OfPollutant> byYear() {
        return new TableDefinition<>("emissions_by_year", "Emissions by year", OfPollutant::all)
                .notForSubmissionWhen(PlaceholderUse::inEmissions)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Year.", r -> r.at().calendarYear())
                .text("pollutant", "Pollutant", "Pollutant; CO2e sums up the greenhouse gases by their warming.",
                        r -> r.pollutant().label())
                .heads()
                .number("driving", "Driving", ColumnUnit.KG, "From engines on the road, idling on routes included." + UNKNOWN,
                        r -> r.kg(EmissionSource.DRIVING))
                .why(r -> r.why(EmissionSource.DRIVING))
                .number("idling", "Yard idling", ColumnUnit.KG, "From engines that idle in the yard.",
                        r -> r.kg(EmissionSource.IDLING))
                .why(r -> r.why(EmissionSource.IDLING))
                .number("heaters", "Heaters", ColumnUnit.KG, "From fuel-fired heaters of all buses.",
                        r -> r.kg(EmissionSource.HEATER))
                .why(r -> r.why(EmissionSource.HEATER))
                .number("brakes", "Brakes", ColumnUnit.KG, "Dust of brake linings; it follows the heat in the friction brakes, so "
                        + "buses that recover their braking make less (assumed).", r -> r.kg(EmissionSource.BRAKES))
                .why(r -> r.why(EmissionSource.BRAKES))
                .number("tyres", "Tyres", ColumnUnit.KG, "Dust of tyres; it follows their wear.", r -> r.kg(EmissionSource.TYRES))
                .why(r -> r.why(EmissionSource.TYRES))
                .number("power_plants", "Power plants", ColumnUnit.KG, "At the power plants for the energy at the meter, port standby "
                        + "and line losses included, on the basis chosen.", r -> r.kg(EmissionSource.GRID))
                .why(r -> r.why(EmissionSource.GRID))
                .number("total", "Total", ColumnUnit.KG, "All of the columns before.", OfPollutant::total)
                .why(OfPollutant::whyTotal)
                .number("total_short_tons", "Total", ColumnUnit.SHORT_TON_OF_KG, "The same in short tons of 2,000 pounds.",
                        OfPollutant::total)
                .optional("power_plants_other_basis", "Power plants, other basis", ColumnUnit.KG,
                        "Power plants on the basis that was not chosen, average or marginal; in no total. No figure where it has no "
                                + "factors.",
                        r -> r.at().plan().air().get(r.at().year()).otherGrid()
                                .map(m -> OptionalDouble.of(m.kg(r.pollutant()))).orElse(OptionalDouble.empty()))
                .optional("upstream", "Fuel upstream", ColumnUnit.KG, "From well to tank for the fuel burnt; in no total. No figure "
                        + "where the study leaves it out.",
                        r -> r.at().result().input().air().factors().upstream()
                                ? OptionalDouble.of(r.kg(EmissionSource.UPSTREAM)) : OptionalDouble.empty());
    }

    /** Harm of a year of a plan. */
    record OfHarm(OfYear at, AirHarm harm) {
        static List<OfHarm> all(StudyResult result) {
            return OfYear.all(result).stream().map(y -> new OfHarm(y, new AirHarm(result.input(), y.plan()))).toList();
        }

        OptionalDouble ifHealth(double cost) {
            return at.result().input().air().health().equals(HealthCosts.NONE) ? OptionalDouble.empty() : OptionalDouble.of(cost);
        }
    }

    static TableDefinition<OfHarm> harmByYear() {
        return new TableDefinition<>("air_harm_by_year", "What emissions cost others, by year", OfHarm::all)
                .notForSubmissionWhen(PlaceholderUse::inSocialCost)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .year("year", "Year", "Year.", r -> r.at().calendarYear())
                .number("rate", "Rate", Unit.SHARE, "Discount rate of the social cost of greenhouse gas.",
                        r -> r.at().result().input().air().social().rate())
                .heads()
                .optionalMoney("social_cost", "Social cost of greenhouse gas", "Harm of the greenhouse gas emitted in the year, in "
                        + "money of the table times its price factor; no cost of the plan. No figure without a table.",
                        r -> OptionalDouble.of(r.harm().social(r.at().year())))
                .why(r -> r.harm().why(new AirWhy(r.at().result()), r.at().year()))
                .optionalMoney("social_cost_present", "Social cost, present value",
                        "The same at the base date, discounted at the rate of the table.",
                        r -> OptionalDouble.of(r.harm().socialPresent(r.at().year())))
                .optionalMoney("health_low", "Health cost, low", "Low end of the harm to health; no figure where none is entered.",
                        r -> r.ifHealth(r.harm().healthLow(r.at().year())))
                .optionalMoney("health_high", "Health cost, high", "High end of the harm to health; no figure where none is entered.",
                        r -> r.ifHealth(r.harm().healthHigh(r.at().year())));
    }
}
