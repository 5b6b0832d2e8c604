package org.amberyard.workbench.editor;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.exchange.DefaultTasks;
import org.amberyard.model.fleet.MaintenanceTask;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.edit.command.AddCommand;

/** Adds those default tasks that the study does not have by name, as one edit that can be undone. */
final class AddDefaultTasks {
    private final StudySession session;

    AddDefaultTasks(StudySession session) {
        this.session = session;
    }

    void run() {
        Study study = session.study();
        Set<String> present = study.getMaintenanceTasks().stream().map(MaintenanceTask::getName).collect(Collectors.toSet());
        List<MaintenanceTask> missing = DefaultTasks.all().stream().filter(t -> !present.contains(t.getName())).toList();
        if (!missing.isEmpty()) {
            session.execute(AddCommand.create(session.domain(), study, StudyPackage.Literals.STUDY__MAINTENANCE_TASKS, missing),
                    Messages.DefaultTasks);
        }
    }
}
