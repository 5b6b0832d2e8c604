package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What the results say that a reader must not miss: routes that fail, packs that wear out, a service that is too small. */
public final class ResultFindings {
    private final Study study;
    private final StudyResult result;
    private final List<Finding> findings = new ArrayList<>();

    private ResultFindings(Study study, StudyResult result) {
        this.study = study;
        this.result = result;
    }

    /** Findings by plan; the result must be the study's own. */
    public static List<Finding> of(Study study, StudyResult result) {
        ResultFindings found = new ResultFindings(study, result);
        for (int plan = 0; plan < result.plans().size(); plan++) {
            found.addRoutes(plan);
            found.addPacks(plan);
            found.addService(plan);
        }
        return List.copyOf(found.findings);
    }

    private void addRoutes(int plan) {
        PlanResult results = result.plans().get(plan);
        int last = result.input().years() - 1;
        for (VehicleYear record : results.fleet().inYear(last)) {
            result.input().buses().get(record.place()).route().ifPresent(route -> result
                    .fit(route, record.vehicle().type()).ifPresent(fit -> addFit(plan, record.place(), fit)));
        }
    }

    private void addFit(int plan, int place, RouteFit fit) {
        if (fit.verdict() == RouteFit.Verdict.FOR_LIFE) {
            return;
        }
        boolean midday = result.input().depot().middayCharging();
        boolean fails = !fit.whenNew(midday).passes();
        if (fails || fit.firstFailingAge() >= 0) {
            add(fails ? Severity.WARNING : Severity.INFO, study.getBuses().get(place), null,
                    routeText(plan, place, fit, fit.whenNew(midday).marginKm(), fails));
        }
    }

    private String routeText(int plan, int place, RouteFit fit, double marginKm, boolean fails) {
        UnitSystem units = StudyUnits.of(study);
        String route = result.input().duty().routes().get(fit.route()).name();
        String type = result.input().types().get(fit.type()).name();
        String head = "Plan “" + result.plans().get(plan).name() + "”: " + type + " in the place of "
                + result.input().buses().get(place).name() + " on route " + route;
        String fact = fails
                ? String.format(Locale.ROOT, " falls %.0f %s short of the reserve on the worst day even when new",
                        Unit.KILOMETRE.show(-marginKm, units), Unit.KILOMETRE.symbol(units, ""))
                : " first fails on the worst day " + fit.firstFailingAge() + " years after purchase";
        return head + fact + "; " + remedy(fit) + ".";
    }

    private static String remedy(RouteFit fit) {
        return switch (fit.verdict()) {
            case FOR_LIFE -> "no remedy is needed";
            case MIDDAY_WHEN_AGED, MIDDAY_ALWAYS -> "charging between runs at the yard carries it to the end of the pack's life";
            case ONLY_WHEN_NEW -> "charging between runs does not carry it to the end of the pack's life: plan a shorter route for its later years";
            case FAILS -> "charging between runs does not help: a larger pack, fuel-fired heat or keeping an engine bus are left";
        };
    }

    private void addPacks(int plan) {
        for (FleetEvent event : result.plans().get(plan).fleet().events()) {
            if (event instanceof FleetEvent.PackReplaced replaced) {
                String cause = switch (replaced.cause()) {
                    case CYCLE_LIMIT -> "it has reached its cycle limit";
                    case CAPACITY -> "it has fallen to its end-of-life capacity";
                };
                add(Severity.INFO, study.getBuses().get(event.place()), null,
                        "Plan “" + result.plans().get(plan).name() + "”: the pack of " + event.vehicle().unit()
                                + " is replaced in " + (result.input().baseYear() + event.year()) + " because " + cause + ".");
            }
        }
    }

    private void addService(int plan) {
        List<ServiceYear> years = result.plans().get(plan).service();
        for (int year = 0; year < years.size(); year++) {
            if (years.get(year).connectedExceeds()) {
                ServiceYear load = years.get(year);
                add(load.spreadExceeds() ? Severity.WARNING : Severity.INFO, study.getDepot(), null, serviceText(plan, year, load));
                return;
            }
        }
    }

    private String serviceText(int plan, int year, ServiceYear load) {
        String spread = load.spreadExceeds() ? "and even charging spread over the night (%.0f kVA) does"
                : "while charging spread over the night (%.0f kVA) stays within it";
        return String.format(Locale.ROOT,
                "Plan “%s”: from %d all ports at full power with the building's peak (%.0f kVA) exceed the service (%.0f kVA), "
                        + spread + ". The utility and a licensed electrician decide.",
                result.plans().get(plan).name(), result.input().baseYear() + year, load.connectedKva(), load.limitKva(),
                load.spreadKva());
    }

    private void add(Severity severity, EObject element, EStructuralFeature feature, String message) {
        findings.add(new Finding(severity, element, feature, message));
    }
}
