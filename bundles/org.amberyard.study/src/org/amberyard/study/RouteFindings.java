package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.Remedy;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.RouteOutlook;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Findings on routes that a plan gives to electric buses and that fail, now or as the pack ages. */
final class RouteFindings {
    private final Study study;
    private final StudyInput input;
    private final PlanResult plan;
    private final List<RouteOutlook> outlooks;
    private final List<Finding> findings = new ArrayList<>();

    RouteFindings(Study study, StudyResult result, int plan) {
        this.study = study;
        this.input = result.input();
        this.plan = result.plans().get(plan);
        this.outlooks = result.outlooks().get(plan);
    }

    List<Finding> list() {
        for (int place = 0; place < input.buses().size(); place++) {
            int at = place;
            plan.fleet().fleetAtEnd().get(place).ifPresent(vehicle -> input.buses().get(at).route()
                    .ifPresent(route -> plan.fits().of(route, vehicle.type()).ifPresent(fit -> add(at, vehicle, fit))));
        }
        return List.copyOf(findings);
    }

    private void add(int place, Vehicle vehicle, RouteFit fit) {
        boolean midday = input.middayCharging();
        if (!fit.whenNew(midday).passes()) {
            add(Severity.WARNING, place, fit, String.format(Locale.ROOT,
                    " falls %s short of the reserve in a week of the worst days even when new", distance(-fit.whenNew(midday).marginKm())));
        } else if (fit.firstFailingAge() >= 0) {
            int year = input.baseYear() + vehicle.inServiceYear() + fit.firstFailingAge();
            boolean within = year < input.baseYear() + input.years();
            add(within ? Severity.WARNING : Severity.INFO, place, fit, " first fails in a week of the worst days in " + year
                    + ", " + fit.firstFailingAge() + (fit.firstFailingAge() == 1 ? " year" : " years") + " after purchase");
        } else if (!fit.whenNew(midday).refilled()) {
            add(Severity.INFO, place, fit, " is not filled up by a night of charging on the worst days, but the week's reserve holds");
        }
    }

    private void add(Severity severity, int place, RouteFit fit, String fact) {
        String text = "Plan “" + plan.name() + "”: " + input.types().get(fit.type()).name() + " in the place of "
                + input.buses().get(place).name() + " on route " + input.duty().routes().get(fit.route()).name() + fact
                + remedy(fit) + ".";
        findings.add(new Finding(severity, study.getBuses().get(place), null, text));
    }

    /** How many days fail, and the best remedy but for an engine; both were evaluated. */
    private String remedy(RouteFit fit) {
        RouteOutlook outlook = outlooks.get(fit.route());
        if (!outlook.answer().fit().equals(Optional.of(fit))) {
            return "";
        }
        String days = outlook.failingWhenAged().filter(d -> d.total() > 0)
                .map(d -> "; with an aged pack on " + d.total() + (d.total() == 1 ? " day" : " days") + " a year").orElse("");
        return days + outlook.remedies().stream().filter(r -> !r.measures().contains(Remedy.Measure.KEEP_ENGINE)).findFirst()
                .map(r -> "; " + r.words(input) + (r.cures() ? " cures it" : " brings " + distance(r.recoveredKm())
                        + " more but does not cure it"))
                .orElse("");
    }

    private String distance(double km) {
        UnitSystem units = StudyUnits.of(study);
        return String.format(Locale.ROOT, "%.0f %s", Unit.KILOMETRE.show(km, units), Unit.KILOMETRE.symbol(units, ""));
    }
}
