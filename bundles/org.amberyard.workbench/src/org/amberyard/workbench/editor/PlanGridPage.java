package org.amberyard.workbench.editor;

import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.plan.PlanGrid;
import org.eclipse.swt.widgets.Composite;

/** A plan as a table of buses and years, to paint. */
final class PlanGridPage extends StudyPage {

    private PlanGrid plan;

    PlanGridPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        plan = new PlanGrid(parent, site());
        keep(plan.grid());
        return plan.control();
    }

    @Override
    void update() {
        plan.update();
    }

    @Override
    void evaluationChanged() {
        plan.update();
    }

    @Override
    void choiceChanged() {
        plan.update();
    }
}
