package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.routes.Run;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;

/** Says where a run is longer or shorter than the drive trace that it follows. */
final class TraceFindings {
    private static final double TOLERANCE = 0.05;

    private final Study study;
    private final List<Finding> findings = new ArrayList<>();

    private TraceFindings(Study study) {
        this.study = study;
    }

    /** Findings on the runs of a study whose traces have no error. */
    static List<Finding> of(Study study) {
        TraceFindings traces = new TraceFindings(study);
        for (Route route : study.getRoutes()) {
            route.getRuns().stream().filter(r -> r.getTrace() != null).forEach(traces::add);
        }
        return List.copyOf(traces.findings);
    }

    private void add(Run run) {
        double lengthKm = TraceCompiler.compile(run.getTrace()).distanceM() / 1000;
        if (Math.abs(run.getDistanceKm() - lengthKm) > TOLERANCE * lengthKm) {
            findings.add(new Finding(Severity.WARNING, run, RoutesPackage.Literals.RUN__TRACE,
                    Phrase.start(ElementNames.withKind(run)) + ": distance is " + distance(run.getDistanceKm())
                            + " but drive trace “" + run.getTrace().getName() + "” is " + distance(lengthKm)
                            + " long; the trace is driven as often as the distance needs."));
        }
    }

    private String distance(double km) {
        UnitSystem units = StudyUnits.of(study);
        return String.format(Locale.ROOT, "%.1f %s", Unit.KILOMETRE.show(km, units), Unit.KILOMETRE.symbol(units, ""));
    }
}
