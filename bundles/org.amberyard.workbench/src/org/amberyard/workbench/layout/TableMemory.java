package org.amberyard.workbench.layout;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.ui.IPerspectiveDescriptor;
import org.eclipse.ui.IWorkbenchPage;
import org.osgi.service.prefs.BackingStoreException;

/** Keeps which table of results each layout shows, from one start of the program to the next. */
public final class TableMemory {
    private static final String NODE = "org.amberyard.workbench/tables";

    private TableMemory() {
    }

    /** Names of tables to show in the layout that is open, the first that there is: the one that was chosen there, then those that fit it. */
    public static List<String> wanted(IWorkbenchPage page) {
        Purpose purpose = purpose(page);
        List<String> names = new ArrayList<>();
        Optional.ofNullable(node().get(purpose.name(), null)).ifPresent(names::add);
        names.addAll(purpose.tables());
        return names;
    }

    /** The user has chosen a table in the layout that is open. */
    public static void keep(IWorkbenchPage page, String table) {
        node().put(purpose(page).name(), table);
        try {
            node().flush();
        } catch (BackingStoreException e) {
            // A choice that is forgotten harms nobody.
            ILog.of(TableMemory.class).warn(e.getMessage(), e);
        }
    }

    private static Purpose purpose(IWorkbenchPage page) {
        return Optional.ofNullable(page.getPerspective()).map(IPerspectiveDescriptor::getId).flatMap(Purpose::ofId).orElse(Purpose.MONEY);
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}
