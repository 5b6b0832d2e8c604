package org.amberyard.report;

import java.util.List;
import java.util.Locale;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.plan.FitOutlook;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.Remedy;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.RouteOutlook;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/**
 * Says why an electric type can or cannot do a route: on which day it is tightest, from when on it fails, by how much, and what
 * would do.
 */
final class RouteReason {
    private static final double WHOLE_FROM_KWH = 10;

    private final StudyResult result;
    private final RouteFit fit;
    private final FitOutlook outlook;
    private final UnitSystem system;
    private final boolean midday;

    private RouteReason(StudyResult result, RouteFit fit, UnitSystem system) {
        this.result = result;
        this.fit = fit;
        this.outlook = result.outlook(fit);
        this.system = system;
        this.midday = result.input().middayCharging();
    }

    static RouteReason of(StudyResult result, RouteFit fit, UnitSystem system) {
        return new RouteReason(result, fit, system);
    }

    /** For a bus bought in any year. */
    String ofType() {
        return said(fit.firstFailingAge() == 0 ? "even when new" : "from year " + (fit.firstFailingAge() + 1) + " of the pack",
                anyRemedy());
    }

    /** For the bus that a plan puts on the route; as for a bus bought in any year where an engine serves it. */
    String inPlan(PlanResult plan, RouteOutlook route) {
        OptionalInt from = firstYear(plan);
        if (from.isEmpty()) {
            return said(fit.firstFailingAge() == 0 ? "even when new" : "from year " + (fit.firstFailingAge() + 1) + " of the pack",
                    remedy(route.remedies()));
        }
        int year = result.input().baseYear() + from.getAsInt();
        boolean within = from.getAsInt() < result.input().years();
        return said((fit.firstFailingAge() == 0 ? "even when new, from " : "from ") + year + (within ? "" : " (after the study)"),
                remedy(route.remedies()));
    }

    /** First year in which a bus of the type fails the route, counted from the base year. */
    private OptionalInt firstYear(PlanResult plan) {
        List<Optional<Vehicle>> buses = plan.fleet().fleetAtEnd();
        return fit.firstFailingAge() < 0 ? OptionalInt.empty() : IntStream.range(0, buses.size())
                .filter(place -> Objects.equals(result.input().buses().get(place).route(), OptionalInt.of(fit.route())))
                .mapToObj(buses::get).flatMap(Optional::stream).filter(bus -> bus.type() == fit.type())
                .mapToInt(bus -> bus.inServiceYear() + fit.firstFailingAge()).min();
    }

    private String said(String when, String remedy) {
        BlockCheck.Outcome aged = fit.whenAged(midday);
        String day = degrees(outlook.worstAirC());
        return aged.passes() ? holds(day, aged)
                : "fails at " + day + " " + when + ": short by " + shortBy(aged) + " at " + reserve() + " reserve" + remedy;
    }

    private String shortBy(BlockCheck.Outcome aged) {
        BlockCheck.Outcome whenNew = fit.whenNew(midday);
        return whenNew.passes() ? kwh(-aged.marginKwh())
                : kwh(-whenNew.marginKwh()) + " when new, " + kwh(-aged.marginKwh()) + " when aged";
    }

    /** Where the study charges between runs, how much of it is needed. */
    private String holds(String day, BlockCheck.Outcome aged) {
        String holds = "holds at " + day + " to the end of the pack: " + kwh(aged.marginKwh()) + " above " + reserve() + " reserve";
        return outlook.leastMiddayMin().isPresent()
                ? holds + "; needs " + outlook.leastMiddayMin().getAsInt() + " min a day of charging between runs" : holds;
    }

    private String remedy(List<Remedy> remedies) {
        if (outlook.leastMiddayMin().isPresent()) {
            return "; a midday charge of " + outlook.leastMiddayMin().getAsInt() + " min would do";
        }
        Optional<Remedy> first = remedies.stream().filter(r -> !r.measures().contains(Remedy.Measure.KEEP_ENGINE)).findFirst();
        return first.map(r -> "; " + r.words(result.input()) + (r.cures() ? " would do" : " would help but not do"))
                .orElse(remedies.isEmpty() ? "" : "; only an engine bus would do");
    }

    /** What was found for the type on the route in any plan that asks for it. */
    private String anyRemedy() {
        return remedy(result.outlooks().stream().flatMap(List::stream).filter(o -> o.answer().fit().equals(Optional.of(fit)))
                .findFirst().map(RouteOutlook::remedies).orElse(List.of()));
    }

    private String degrees(double airC) {
        return String.format(Locale.ROOT, "%.0f %s", Unit.CELSIUS.show(airC, system), Unit.CELSIUS.symbol(system, ""))
                .replace("-0 ", "0 ").replace('-', '−');
    }

    private static String kwh(double kwh) {
        return String.format(Locale.ROOT, kwh < WHOLE_FROM_KWH ? "%.1f kWh" : "%.0f kWh", kwh);
    }

    private String reserve() {
        return String.format(Locale.ROOT, "%.0f %%", 100 * result.input().rules().reserveShare());
    }
}
