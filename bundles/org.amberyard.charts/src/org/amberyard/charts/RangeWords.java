package org.amberyard.charts;

import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.RouteOutlook;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** Labels and captions that charts about the range of a plan's buses share. */
final class RangeWords {
    static final String NOT_JUDGED = "no electric bus listed can be judged here";

    private final StudyResult result;
    private final StudyInput study;
    private final int plan;
    private final UnitSystem system;

    RangeWords(StudyResult result, int plan, UnitSystem system) {
        this.result = result;
        this.study = result.input();
        this.plan = plan;
        this.system = system;
    }

    String route(RouteAnswer answer) {
        return study.duty().routes().get(answer.route()).name();
    }

    /** Route and type, with a ring where the plan has no electric bus there. */
    String label(RouteAnswer answer) {
        return route(answer) + answer.fit()
                .map(f -> " · " + study.types().get(f.type()).name() + (answer.electric() ? "" : " °")).orElse("");
    }

    /** On how many days a year the route fails with an aged pack and what would help most; empty where it does not fail. */
    String failing(RouteAnswer answer) {
        RouteOutlook outlook = result.outlooks().get(plan).get(answer.route());
        return outlook.failingWhenAged().filter(d -> d.total() > 0).map(d -> "Fails with an aged pack on " + d.total()
                + (d.total() == 1 ? " day" : " days") + " a year" + remedy(outlook)).orElse("");
    }

    private String remedy(RouteOutlook outlook) {
        return outlook.cure().map(r -> "; best remedy: " + r.words(study)).orElse("");
    }

    double shown(double km) {
        return Unit.KILOMETRE.show(km, system);
    }

    String unit() {
        return Unit.KILOMETRE.symbol(system, study.currency());
    }

    String caption() {
        String habit = study.middayCharging() ? "Charged overnight and between runs at the yard" : "Charged overnight only";
        return habit + "; reserve " + Figures.percent(study.rules().reserveShare()) + " of the usable energy; plan “"
                + result.plans().get(plan).name() + "”\n° no electric bus there in this plan; the best-fitting type is shown";
    }
}
