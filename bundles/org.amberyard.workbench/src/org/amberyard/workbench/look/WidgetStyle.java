package org.amberyard.workbench.look;

import java.io.File;
import java.io.IOException;
import java.net.URL;
import org.eclipse.core.runtime.FileLocator;
import org.eclipse.core.runtime.ILog;
import org.osgi.framework.FrameworkUtil;

/** States of the platform's own buttons, which GTK's dark style makes darker than a dark ground. */
public final class WidgetStyle {
    private static final String FILE = "css/widgets.css";
    /** By which the widget toolkit learns, where it is that of GTK, of a style sheet beside its own. */
    private static final String PROPERTY = "org.eclipse.swt.internal.gtk.cssFile";

    private WidgetStyle() {
    }

    /** Tells the toolkit; to be called before there is a display. A style sheet that is named at start stays. */
    public static void begin() {
        if (System.getProperty(PROPERTY) != null) {
            return;
        }
        try {
            URL sheet = FileLocator.toFileURL(FrameworkUtil.getBundle(WidgetStyle.class).getEntry(FILE));
            System.setProperty(PROPERTY, new File(sheet.getPath()).getPath());
        } catch (IOException e) {
            // The platform's own style is there without it.
            ILog.of(WidgetStyle.class).warn(e.getMessage(), e);
        }
    }
}
