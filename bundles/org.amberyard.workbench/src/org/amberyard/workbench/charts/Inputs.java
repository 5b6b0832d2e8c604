package org.amberyard.workbench.charts;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.charts.Subject;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.views.StudyEditors;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.osgi.util.NLS;
import org.eclipse.ui.IWorkbenchPage;

/** Finds the inputs behind a chart in the study, which may have been edited since the chart's results were computed. */
final class Inputs {
    private final IWorkbenchPage page;

    Inputs(IWorkbenchPage page) {
        this.page = page;
    }

    /** Goes to the editor's row of a part of the study, or to a field in it; false when that part is not there any more. */
    boolean open(Study study, StudyInput shown, Subject subject, Optional<EStructuralFeature> field) {
        Optional<EObject> element = find(study, shown, subject);
        element.ifPresent(e -> StudyEditors.open(page, e, field.orElse(null)));
        return element.isPresent();
    }

    /** What a part is called, with its kind. */
    static String label(StudyInput shown, Subject subject) {
        return NLS.bind(switch (subject.kind()) {
            case ROUTE -> Messages.Inputs_route;
            case TYPE -> Messages.Inputs_type;
            case BUS -> Messages.Inputs_bus;
            case PLAN -> Messages.Inputs_plan;
            case FACTORS -> Messages.Inputs_factors;
        }, name(shown, subject));
    }

    /** What a field of a part is called. */
    static String label(StudyInput shown, Subject subject, EStructuralFeature field) {
        return NLS.bind(Messages.Inputs_field, Words.field(field).label(), name(shown, subject));
    }

    static String name(StudyInput shown, Subject subject) {
        return switch (subject.kind()) {
            case ROUTE -> shown.duty().routes().get(subject.place()).name();
            case TYPE -> shown.types().get(subject.place()).name();
            case BUS -> shown.buses().get(subject.place()).name();
            case PLAN -> shown.plans().get(subject.place()).name();
            case FACTORS -> Phrase.inside(Words.kind(StudyPackage.Literals.EMISSION_FACTORS));
        };
    }

    /** The element of the place that the results know, if it still has its name; else one of that name. */
    private static Optional<EObject> find(Study study, StudyInput shown, Subject subject) {
        List<? extends EObject> elements = elements(study, subject.kind());
        String name = name(shown, subject);
        Optional<EObject> samePlace = subject.place() < elements.size() ? Optional.of(elements.get(subject.place()))
                : Optional.empty();
        return samePlace.filter(e -> name.equals(ElementNames.of(e)))
                .or(() -> elements.stream().filter(e -> name.equals(ElementNames.of(e))).findFirst().map(EObject.class::cast));
    }

    private static List<? extends EObject> elements(Study study, Subject.Kind kind) {
        return switch (kind) {
            case ROUTE -> study.getRoutes();
            case TYPE -> study.getVehicleTypes();
            case BUS -> study.getBuses();
            case PLAN -> study.getPlans();
            case FACTORS -> Stream.ofNullable(study.getEmissionFactors()).toList();
        };
    }
}
