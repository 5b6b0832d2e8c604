package org.amberyard.exchange;

import java.util.List;
import org.amberyard.model.fleet.MaintenanceTask;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The default tasks of the shop, a table like that of a study and read like it: common practice, no source. */
public final class DefaultTasks {
    private static final DefaultTables TABLES = new DefaultTables("tasks", "maintenance_tasks");

    private DefaultTasks() {
    }

    /** Fresh copies of the default tasks, each with the note that it is assumed. */
    public static List<MaintenanceTask> all() {
        return List.copyOf(EcoreUtil.copyAll(TABLES.read().getMaintenanceTasks()));
    }
}
