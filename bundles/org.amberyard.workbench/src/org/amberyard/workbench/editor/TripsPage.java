package org.amberyard.workbench.editor;

import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripCover;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.session.Choices;
import org.amberyard.workbench.session.PlanOptions;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Composite;

/** Field and athletic trips, and how many of them no bus of the plan on show can cover. */
final class TripsPage extends StudyPage {
    private FeatureTable trips;

    TripsPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        trips = rows(parent, Messages.Table_trips, this::study, StudyPackage.Literals.STUDY__TRIPS,
                RoutesPackage.Literals.TRIP);
        evaluationChanged();
        return trips.control();
    }

    @Override
    void evaluationChanged() {
        trips.remark(session().evaluation().result().filter(r -> !r.input().trips().isEmpty()).flatMap(this::words).orElse(""));
    }

    @Override
    void choiceChanged() {
        evaluationChanged();
    }

    private Optional<String> words(StudyResult result) {
        return PlanOptions.of(result).pick(session().choices().of(Choices.Kind.PLAN)).map(Choices.Chosen::place).map(plan -> {
            TripCover cover = result.tripCovers().get(plan);
            int none = cover.uncovered().size();
            return NLS.bind(none == 0 ? Messages.Trips_allCovered : Messages.Trips_uncovered, new Object[] {none, cover.answers().size(),
                result.plans().get(plan).name(), String.valueOf(result.input().baseYear() + cover.year())});
        });
    }
}
