package org.amberyard.workbench.look;

import java.util.regex.Pattern;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Keys of two strokes in menus. GTK has a place for one stroke at the edge of a menu and leaves others out, so they go behind the words. */
public final class MenuKeys {
    private static final String GTK = "gtk";
    private static final Pattern TWO_STROKES = Pattern.compile("\t(\\S+ \\S+)$");
    private static final int AGAIN_MS = 80;

    private MenuKeys() {
    }

    /** Follows every menu that is opened. */
    public static void follow(Display display) {
        if (SWT.getPlatform().equals(GTK)) {
            display.addFilter(SWT.Show, MenuKeys::shown);
        }
    }

    private static void shown(Event event) {
        if (event.widget instanceof Menu menu) {
            menu.getDisplay().asyncExec(() -> say(menu));
            menu.getDisplay().timerExec(AGAIN_MS, () -> keep(menu));
        }
    }

    /** Items are made and get their words after the menu has opened, and get them anew whenever what they do can be done or not. */
    private static void keep(Menu menu) {
        say(menu);
        if (!menu.isDisposed() && menu.isVisible()) {
            menu.getDisplay().timerExec(AGAIN_MS, () -> keep(menu));
        }
    }

    private static void say(Menu menu) {
        for (MenuItem item : menu.isDisposed() ? new MenuItem[0] : menu.getItems()) {
            String said = withKeys(item.getText());
            if (!said.equals(item.getText())) {
                item.setText(said);
            }
        }
    }

    /** Words of an item with keys that the platform would leave out; others as they are. */
    static String withKeys(String text) {
        return TWO_STROKES.matcher(text).replaceFirst("   ($1)");
    }
}
