package org.amberyard.workbench.editor;

import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.eclipse.swt.widgets.Composite;

/** Tasks of the shop. */
final class UpkeepPage extends StudyPage {

    UpkeepPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        FeatureTable tasks = rows(parent, Messages.Table_tasks, this::study, StudyPackage.Literals.STUDY__MAINTENANCE_TASKS,
                FleetPackage.Literals.MAINTENANCE_TASK);
        tasks.addTool(Messages.DefaultTasks, Messages.DefaultTasks_tip, () -> new AddDefaultTasks(session()).run());
        return tasks.control();
    }
}
