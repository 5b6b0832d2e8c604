package org.amberyard.report;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.consumption.Calibration;
import org.amberyard.core.consumption.Interval;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.plan.FailingDays;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.Unit;
import org.amberyard.report.OutlookRows.OfCalibration;
import org.amberyard.report.OutlookRows.OfOutlook;
import org.amberyard.report.OutlookRows.OfRemedy;
import org.amberyard.report.OutlookRows.OfWeather;

/** Tables of what plans mean for routes: failing days, remedies, the route in telling weathers, calibration. */
final class OutlookTables {
    private OutlookTables() {
    }

    static TableDefinition<OfOutlook> routeOutlook() {
        return new TableDefinition<>("route_outlook", "Routes in the plans", OfOutlook::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .text("route", "Route", "Name of the route.", r -> r.route())
                .text("type", "Electric type", "Type that serves it, else the one that fits best; empty when none does.",
                        r -> r.fit().map(f -> r.result().input().types().get(f.type()).name()).orElse(""))
                .heads()
                .text("verdict", "Verdict", "Whether that type can do the route, in a few words; empty when there is none.",
                        r -> r.fit().map(f -> f.verdict().label()).orElse(""))
                .words("why", "Why", "The answer in a sentence: on which day, from which year on, by how much, and what would do.",
                        r -> r::why)
                .optional("failing_days_new", "Failing days a year, new pack", Unit.DAY,
                        RouteTables.FAILING_DAYS,
                        r -> days(r.outlook().failingWhenNew()))
                .optional("failing_days_aged", "Failing days a year, aged pack", Unit.DAY, "The same for an aged pack.",
                        r -> days(r.outlook().failingWhenAged()))
                .text("served_by", "Served by",
                        "Whether an electric bus serves the route at the end of the study, or an engine does.",
                        r -> r.outlook().answer().electric() ? "electric" : "engine")
                .optional("margin_new", "Margin, new pack", Unit.KILOMETRE,
                        "Distance left above the reserve in a week of the worst days under the study's charging habit.",
                        r -> r.figure(f -> outcome(r, f, false).marginKm()))
                .optional("margin_new_share", "Margin, new pack", Unit.SHARE, "That margin over the usable energy.",
                        r -> r.figure(f -> outcome(r, f, false).marginShare()))
                .optional("margin_aged", "Margin, aged pack", Unit.KILOMETRE,
                        "The same for a pack at the end of its service.", r -> r.figure(f -> outcome(r, f, true).marginKm()))
                .optional("margin_aged_share", "Margin, aged pack", Unit.SHARE, "That margin over the usable energy.",
                        r -> r.figure(f -> outcome(r, f, true).marginShare()))
                .text("worst_run", "Worst run", "Run at whose end an aged pack is nearest to its reserve.",
                        r -> r.fit().map(f -> outcome(r, f, true).worstRun()).orElse(""))
                .optional("first_failing_age", "First failing age", Unit.YEAR,
                        "Age of the pack at which the route first fails; no figure when it does not in the pack's service.",
                        r -> r.fit().filter(f -> f.firstFailingAge() >= 0).map(f -> OptionalDouble.of(f.firstFailingAge()))
                                .orElse(OptionalDouble.empty()))
                .text("best_remedy", "Best remedy", "The first remedy that cures; empty where none is needed.",
                        r -> r.outlook().cure().map(m -> m.words(r.result().input()))
                                .orElse(""));
    }

    private static BlockCheck.Outcome outcome(OfOutlook row, RouteFit fit, boolean aged) {
        boolean midday = row.result().input().middayCharging();
        return aged ? fit.whenAged(midday) : fit.whenNew(midday);
    }

    private static OptionalDouble days(Optional<FailingDays> days) {
        return days.map(d -> OptionalDouble.of(d.total())).orElse(OptionalDouble.empty());
    }

    static TableDefinition<OfRemedy> remedies() {
        return new TableDefinition<>("remedies", "Remedies for routes that fail", OfRemedy::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.of().plan().name())
                .text("route", "Route", "Name of the route.", r -> r.of().route())
                .text("type", "Type", "Electric type that fails it with an aged pack.",
                        r -> r.of().fit().map(f -> r.of().result().input().types().get(f.type()).name()).orElse(""))
                .count("rank", "Rank", "Cures before helps, savings before costs, then cost per distance; an engine last.",
                        OfRemedy::rank)
                .heads()
                .text("remedy", "Remedy", "What is done; evaluated by driving the route again.",
                        r -> r.remedy().words(r.of().result().input()))
                .text("cures", "Cures", "Whether the duty is then done to the end of the pack's service.",
                        r -> r.remedy().cures() ? "yes" : "no")
                .number("recovered", "Recovered distance", Unit.KILOMETRE, "Distance gained on the worst day.",
                        r -> r.remedy().recoveredKm())
                .money("cost_per_year", "Cost per year",
                        "Change of the yearly cost at base-date prices: capital recovery, energy, demand as if it fell "
                                + "together with the yard's peak, packs and upkeep; without grants. Negative when it saves.",
                        r -> r.remedy().costPerYear())
                .optional("cost_per_distance", "Cost per year and recovered distance", Unit.MONEY_PER_KM,
                        "The one over the other.", r -> r.remedy().costPerKm());
    }

    static TableDefinition<OfWeather> routeWeather() {
        TableDefinition<OfWeather> table = new TableDefinition<>("route_weather", "Routes in four weathers", OfWeather::all);
        table.text("route", "Route", "Name of the route.",
                r -> r.result().input().duty().routes().get(r.weather().route()).name())
                .text("type", "Type", "Electric vehicle type.",
                        r -> r.result().input().types().get(r.weather().type()).name())
                .text("weather", "Weather", "Mild: normal day nearest to 18 °C. Hot: hottest operated day. Cold: normal day of "
                        + "the coldest month. Design-cold: coldest operated day.", r -> r.weather().kind().label())
                .heads()
                .text("month", "Month", "Month of that day.",
                        r -> MonthNames.full(r.weather().month()))
                .number("mean_air", "Mean outside air", Unit.CELSIUS, "Mean of the day.", r -> r.weather().meanAirC())
                .number("energy_per_distance", "Energy per distance", Unit.KWH_PER_KM, "Net battery energy over distance.",
                        r -> r.weather().day().batteryKwh() / r.weather().day().km());
        margins(table, "new", "new pack", r -> r.weather().whenNew().marginKwh(), r -> r.weather().whenNew().marginKm());
        margins(table, "aged", "aged pack", r -> r.weather().whenAged().marginKwh(), r -> r.weather().whenAged().marginKm());
        return table;
    }

    private static void margins(TableDefinition<OfWeather> table, String name, String words,
            ToDoubleFunction<OfWeather> kwh, ToDoubleFunction<OfWeather> km) {
        table.number("margin_" + name + "_energy", "Margin, " + words, Unit.KILOWATT_HOUR,
                "Energy above the reserve in a week of such days under the study's charging habit, " + words + ".", kwh)
                .number("margin_" + name + "_distance", "Margin, " + words, Unit.KILOMETRE,
                        "That margin as distance, " + words + ".", km);
    }

    static TableDefinition<OfCalibration> routeCalibration() {
        return new TableDefinition<>("route_calibration", "Calibration by measurements", OfCalibration::all)
                .text("route", "Route", "Name of the route.", OfCalibration::route)
                .text("of", "Of", "Energy of electric buses, or fuel of buses with an engine.", OfCalibration::subject).heads()
                .number("factor", "Multiplier", ColumnUnit.TIMES, "Measured over modelled; the model's energy is multiplied by it.",
                        r -> r.calibration().factor())
                .optional("factor_low", "Multiplier, low", ColumnUnit.TIMES,
                        "Lower end of its 95 % confidence; no figure from one measurement.", r -> bound(r.calibration(), false))
                .optional("factor_high", "Multiplier, high", ColumnUnit.TIMES,
                        "Upper end of its 95 % confidence; no figure from one measurement.", r -> bound(r.calibration(), true))
                .number("raw_error", "Error of the model before", Unit.SHARE,
                        "Modelled over measured less one, before calibration.", r -> r.calibration().rawErrorShare())
                .count("measurements", "Measurements", "How many it rests on.", r -> r.calibration().pairs());
    }

    private static OptionalDouble bound(Calibration calibration, boolean high) {
        Optional<Interval> interval = calibration.interval95();
        return interval.map(i -> OptionalDouble.of(high ? i.high() : i.low())).orElse(OptionalDouble.empty());
    }
}
