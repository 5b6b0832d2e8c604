package org.amberyard.report;

import java.util.OptionalDouble;
import java.util.function.Function;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.VehicleSpec;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.report.ResultRows.OfFit;
import org.amberyard.report.ResultRows.OfUse;

/** Tables of what routes take and whether electric types can do them. */
final class RouteTables {
    static final String FAILING_DAYS = "Operated days of a year that fail under the study's charging habit; each month's days stand "
            + "in order between its coldest, normal and hottest day.";

    private RouteTables() {
    }

    static TableDefinition<OfFit> routeFit() {
        TableDefinition<OfFit> table = new TableDefinition<>("route_fit", "Routes and electric types", OfFit::all);
        table.text("route", "Route", "Name of the route.",
                r -> r.result().input().duty().routes().get(r.fit().route()).name())
                .text("type", "Type", "Electric vehicle type.", r -> r.result().input().types().get(r.fit().type()).name())
                .heads()
                .text("verdict", "Verdict", "The answer in a few words.", r -> r.fit().verdict().label())
                .words("why", "Why", "The answer in a sentence: on which day, from which age of the pack on, by how much, and what "
                        + "would do.", r -> system -> RouteReason.of(r.result(), r.fit(), system).ofType())
                .number("failing_days_new", "Failing days a year, new pack", Unit.DAY, FAILING_DAYS,
                        r -> r.outlook().failingWhenNew().total())
                .number("failing_days_aged", "Failing days a year, aged pack", Unit.DAY, "The same for an aged pack.",
                        r -> r.outlook().failingWhenAged().total())
                .optional("midday_charge", "Charge between runs that would do", Unit.MINUTE, "Least time of charging between runs on "
                        + "a day with which an aged pack holds all year; no figure where it holds without, and where none is enough.",
                        r -> r.outlook().leastMiddayMin().stream().mapToObj(m -> OptionalDouble.of(m)).findFirst()
                                .orElse(OptionalDouble.empty()))
                .text("worst_month", "Worst month", "Month of the worst operated day for a new pack charged overnight only.",
                        r -> MonthNames.full(r.fit().worstMonth()))
                .number("need", "Energy needed", Unit.KILOWATT_HOUR, "Net battery energy of that day's runs.",
                        r -> r.fit().newOvernight().needKwh())
                .number("usable_new", "Usable when new", Unit.KILOWATT_HOUR,
                        "Energy that can be drawn from a full new pack on that day.",
                        r -> r.fit().newOvernight().usableKwh())
                .number("usable_aged", "Usable when aged", Unit.KILOWATT_HOUR,
                        "The same for a pack at the end of its service: just before it is replaced or the bus retires.",
                        r -> r.fit().agedOvernight().usableKwh())
                .number("aged_years", "Age of aged pack", Unit.YEAR, "Age of the pack at the end of its service.",
                        r -> r.fit().agedYears())
                .number("aged_health", "Health of aged pack", Unit.SHARE,
                        "Present over nominal capacity of the pack at the end of its service.", r -> r.fit().agedHealth());
        margin(table, "new_overnight", "new pack, charged overnight only", RouteFit::newOvernight);
        margin(table, "new_midday", "new pack, charged between runs too", RouteFit::newMidday);
        margin(table, "aged_overnight", "aged pack, charged overnight only", RouteFit::agedOvernight);
        margin(table, "aged_midday", "aged pack, charged between runs too", RouteFit::agedMidday);
        return table.optional("first_failing_age", "First failing age", Unit.YEAR,
                "Age at which the route first fails as the pack fades under the study's charging habit; no figure when it "
                        + "does not in the pack's service.",
                r -> r.fit().firstFailingAge() < 0 ? OptionalDouble.empty() : OptionalDouble.of(r.fit().firstFailingAge()));
    }

    private static void margin(TableDefinition<OfFit> table, String name, String words,
            Function<RouteFit, BlockCheck.Outcome> outcome) {
        table.number("margin_" + name + "_energy", "Margin, " + words, Unit.KILOWATT_HOUR,
                "Energy above the reserve at the lowest point of a week of the worst days, negative when it fails: " + words + ".",
                r -> outcome.apply(r.fit()).marginKwh());
        table.number("margin_" + name + "_distance", "Margin, " + words, Unit.KILOMETRE,
                "That margin as distance at the day's consumption: " + words + ".",
                r -> outcome.apply(r.fit()).marginKm());
    }

    static TableDefinition<OfUse> routeEnergy() {
        return new TableDefinition<>("route_energy", "What routes take in a year", OfUse::all)
                .text("route", "Route", "Name of the route.", r -> r.result().input().duty().routes().get(r.route()).name())
                .text("type", "Type", "Vehicle type.", r -> r.result().input().types().get(r.type()).name()).heads()
                .text("energy_model", "Energy model", "How the energy was found: physics, or the type's consumption curve; and "
                        + "whether measurements calibrate it.", RouteTables::energyModel)
                .number("distance", "Distance", Unit.KILOMETRE, "Distance in a year of service.", r -> year(r).km())
                .optional("energy_per_distance", "Energy per distance", Unit.KWH_PER_KM,
                        "Net battery energy over distance; no figure for an engine bus.",
                        r -> perKm(r, r.electric(), year(r).batteryKwh()))
                .number("drawn", "Drawn", Unit.KILOWATT_HOUR, "Energy drawn from the battery, or work of the crankshaft.",
                        r -> year(r).drawnKwh())
                .number("recovered", "Recovered", Unit.KILOWATT_HOUR, "Braking energy returned to the battery.",
                        r -> year(r).recoveredKwh())
                .number("rolling", "Rolling", Unit.KILOWATT_HOUR, "Work against rolling resistance.",
                        r -> year(r).causes().rollingKwh())
                .number("drag", "Air drag", Unit.KILOWATT_HOUR, "Work against air drag.",
                        r -> year(r).causes().dragKwh())
                .number("climbing", "Climb", Unit.KILOWATT_HOUR, "Work of height gained less height lost.",
                        r -> year(r).causes().climbingKwh())
                .number("friction_brakes", "Friction brakes", Unit.KILOWATT_HOUR, "Braking work lost at the friction brakes.",
                        r -> year(r).causes().frictionBrakeKwh())
                .number("driveline", "Driveline", Unit.KILOWATT_HOUR, "Losses of motor and gears.",
                        r -> year(r).causes().drivelineKwh())
                .number("pack_loss", "Pack loss", Unit.KILOWATT_HOUR, "Heat in the battery's resistance.",
                        r -> year(r).causes().packKwh())
                .number("auxiliary", "Auxiliaries", Unit.KILOWATT_HOUR, "Energy of the auxiliaries.",
                        r -> year(r).causes().auxiliaryKwh())
                .number("heat", "Heat", Unit.KILOWATT_HOUR, "Electric energy for cabin heat.",
                        r -> year(r).causes().heatKwh())
                .number("cooling", "Cooling", Unit.KILOWATT_HOUR, "Energy for cooling the cabin.",
                        r -> year(r).causes().coolingKwh())
                .number("pack_heat", "Pack heat", Unit.KILOWATT_HOUR, "Energy to heat and cool the battery.",
                        r -> year(r).causes().packHeatKwh())
                .number("unsplit", "Not split", Unit.KILOWATT_HOUR, "Driving by a consumption curve, which does not say where the energy goes.",
                        r -> year(r).causes().unsplitKwh())
                .number("from_yard", "From the yard", Unit.KILOWATT_HOUR,
                        "Energy for heat while plugged in, at the meter.", r -> year(r).gridKwh())
                .optional("fuel", "Fuel", Unit.LITRE, "Fuel of the engine; no figure without one.",
                        r -> r.electric() ? OptionalDouble.empty() : OptionalDouble.of(year(r).fuelL()))
                .optional("fuel_economy", "Fuel economy", ColumnUnit.FUEL_ECONOMY,
                        "Distance and fuel in one figure; no figure without an engine.",
                        r -> perKm(r, !r.electric(), year(r).fuelL()))
                .number("heater_fuel", "Heater fuel", Unit.LITRE, "Fuel of a fuel-fired heater.",
                        r -> year(r).heaterFuelL());
    }

    private static String energyModel(OfUse row) {
        VehicleSpec vehicle = row.result().input().types().get(row.type()).spec();
        boolean curve = row.result().input().duty().routes().get(row.route()).energyModel() == EnergyModel.CURVE
                && vehicle instanceof ElectricSpec electric && electric.curve().isPresent();
        boolean calibrated = row.result().duty().calibration(row.route()).factor(vehicle) != 1;
        return (curve ? "consumption curve" : "physics") + (calibrated ? ", calibrated" : "");
    }

    private static EnergyUse year(OfUse row) {
        return row.use().year();
    }

    private static OptionalDouble perKm(OfUse row, boolean applies, double amount) {
        return applies && year(row).km() > 0 ? OptionalDouble.of(amount / year(row).km()) : OptionalDouble.empty();
    }
}
