package org.amberyard.workbench.charts;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.preferences.IEclipsePreferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/** Remembers what the user has hidden of each chart, from one run to the next. May be asked on any thread. */
final class HiddenSeries {
    private static final String NODE = "org.amberyard.workbench/hiddenSeries";
    private static final String SEPARATOR = "\n";

    private HiddenSeries() {
    }

    private static IEclipsePreferences node() {
        return InstanceScope.INSTANCE.getNode(NODE);
    }

    /** What is hidden of a chart, by its names in the legend. */
    static Set<String> of(String chart) {
        String kept = node().get(chart, "");
        return kept.isEmpty() ? Set.of() : new TreeSet<>(List.of(kept.split(SEPARATOR)));
    }

    /** Remembers what is hidden of a chart. */
    static void keep(String chart, Set<String> hidden) {
        if (hidden.isEmpty()) {
            node().remove(chart);
        } else {
            node().put(chart, String.join(SEPARATOR, hidden));
        }
        try {
            node().flush();
        } catch (BackingStoreException e) {
            // What is forgotten is shown, which harms nobody.
            ILog.of(HiddenSeries.class).warn(e.getMessage(), e);
        }
    }
}
