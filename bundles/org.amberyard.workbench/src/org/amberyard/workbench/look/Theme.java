package org.amberyard.workbench.look;

import org.amberyard.charts.ChartTheme;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.osgi.service.prefs.BackingStoreException;

/**
 * A light window or a dark one. Which it is, the platform keeps among its preferences and reads when it starts, since widgets
 * have their colours from their making on.
 */
public enum Theme {
    /** Dark on white. */
    LIGHT("org.amberyard.workbench.light", ChartTheme.light()),
    /** Light on near-black. */
    DARK("org.amberyard.workbench.dark", ChartTheme.dark());

    private static final String NODE = "org.eclipse.e4.ui.css.swt.theme";
    private static final String KEY = "themeid";
    private static final Theme SHOWN = chosen();

    private final String id;
    private final ChartTheme charts;

    Theme(String id, ChartTheme charts) {
        this.id = id;
        this.charts = charts;
    }

    /** The theme of this run. */
    public static Theme shown() {
        return SHOWN;
    }

    /** The theme of the next run. */
    public static Theme chosen() {
        String kept = Platform.getPreferencesService().getString(NODE, KEY, LIGHT.id, null);
        return DARK.id.equals(kept) ? DARK : LIGHT;
    }

    /** Chooses the theme of the next run. */
    public static void choose(Theme theme) {
        InstanceScope.INSTANCE.getNode(NODE).put(KEY, theme.id);
        try {
            InstanceScope.INSTANCE.getNode(NODE).flush();
        } catch (BackingStoreException e) {
            // A theme that is forgotten harms nobody.
            ILog.of(Theme.class).warn(e.getMessage(), e);
        }
    }

    /** Colours of charts in the window. */
    public ChartTheme charts() {
        return charts;
    }
}
