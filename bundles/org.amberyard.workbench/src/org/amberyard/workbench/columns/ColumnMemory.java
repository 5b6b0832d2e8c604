package org.amberyard.workbench.columns;

import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** Keeps how the user has arranged the columns of each table, from one start of the program to the next. */
final class ColumnMemory {

    private static final String NODE = "org.amberyard.workbench/columns";

    private final String table;

    /** @param table name of the table, the same at every start */
    ColumnMemory(String table) {
        this.table = table;
    }

    ColumnArrangement recall() {
        return ColumnArrangement.of(node().get(table, ""));
    }

    void keep(ColumnArrangement arrangement) {
        node().put(table, arrangement.text());
        flush();
    }

    void forget() {
        node().remove(table);
        flush();
    }

    private static void flush() {
        try {
            node().flush();
        } catch (BackingStoreException e) {
            // An order of columns that is forgotten harms nobody.
            ILog.of(ColumnMemory.class).warn(e.getMessage(), e);
        }
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }
}
