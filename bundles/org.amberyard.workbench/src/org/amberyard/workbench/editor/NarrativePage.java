package org.amberyard.workbench.editor;

import java.util.Optional;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.StudyPackage.Literals;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.narrative.NarrativeDesk;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Texts for applications with figures of the results; the one in focus is written beside what it will read. */
final class NarrativePage extends StudyPage {

    private NarrativeDesk desk;

    NarrativePage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        FeatureTable narratives = rows(columns, Messages.Table_narratives, this::study, Literals.STUDY__NARRATIVES,
                Literals.NARRATIVE, Literals.NARRATIVE__TEXT, Literals.NARRATIVE__GIVEN_OUT_FOR, Literals.NARRATIVE__GIVEN_OUT_TO,
                Literals.NARRATIVE__GIVEN_OUT_ON);
        desk = new NarrativeDesk(columns, session(), () -> selected(narratives), narratives.grid()::redraw);
        narratives.markAlso(narrative -> desk.mark((Narrative) narrative));
        narratives.grid().leadEnter(desk::write);
        keep(desk.grid());
        narratives.drives(desk::update);
        columns.setWeights(20, 80);
        desk.update();
        return columns;
    }

    private static Optional<Narrative> selected(FeatureTable narratives) {
        return Optional.ofNullable((Narrative) narratives.selected());
    }

    @Override
    void update() {
        super.update();
        desk.update();
    }

    @Override
    void evaluationChanged() {
        desk.update();
    }

    @Override
    void choiceChanged() {
        desk.update();
    }

    @Override
    void enter() {
        desk.enter();
    }
}
