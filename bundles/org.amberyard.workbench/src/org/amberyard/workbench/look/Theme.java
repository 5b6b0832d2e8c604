package org.amberyard.workbench.look;

import java.util.List;
import org.amberyard.charts.ChartTheme;
import org.amberyard.workbench.preferences.Preferences;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.e4.ui.css.swt.theme.IThemeEngine;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;

/**
 * A light window or a dark one. Which it is stands among the preferences; the platform keeps a note of it for its own styles,
 * which it reads when it starts.
 */
public enum Theme {
    /** Dark on white. */
    LIGHT("org.amberyard.workbench.light"),
    /** Light on near-black. */
    DARK("org.amberyard.workbench.dark");

    private static final String NODE = "org.eclipse.e4.ui.css.swt.theme";
    private static final String KEY = "themeid";
    private static Theme shown = wanted();

    private final String id;

    Theme(String id) {
        this.id = id;
    }

    /** The theme of the window. */
    public static synchronized Theme shown() {
        return shown;
    }

    private static synchronized void show(Theme theme) {
        shown = theme;
    }

    private static Theme wanted() {
        return switch (Preferences.THEME.get()) {
            case "dark" -> DARK;
            case "system" -> Display.isSystemDarkTheme() ? DARK : LIGHT;
            default -> LIGHT;
        };
    }

    /** Tells the platform, before it starts, which theme is wanted. */
    public static void begin() {
        InstanceScope.INSTANCE.getNode(NODE).put(KEY, shown().id);
    }

    /** Uses the theme that is set from now on, in all windows; charts are made anew by those who show them. */
    public static void use(Display display) {
        Theme before = shown();
        Theme next = wanted();
        if (before == next) {
            return;
        }
        Recolouring colours = new Recolouring(before, next);
        List.of(display.getShells()).forEach(colours::note);
        show(next);
        IThemeEngine engine = PlatformUI.getWorkbench().getService(IThemeEngine.class);
        if (engine != null) {
            engine.setTheme(next.id, true);
        }
        colours.apply();
    }

    /** Colours of charts in the window. */
    public ChartTheme charts() {
        boolean strong = "strong".equals(Preferences.COLOURS.get());
        if (this == DARK) {
            return strong ? ChartTheme.strongDark() : ChartTheme.dark();
        }
        return strong ? ChartTheme.strongLight() : ChartTheme.light();
    }
}
