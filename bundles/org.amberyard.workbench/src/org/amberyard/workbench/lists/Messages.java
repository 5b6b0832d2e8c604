package org.amberyard.workbench.lists;

import org.eclipse.osgi.util.NLS;

/** Texts of this package. */
final class Messages extends NLS {
    public static String List_more;
    public static String List_nothing;

    static {
        NLS.initializeMessages("org.amberyard.workbench.lists.messages", Messages.class);
    }

    private Messages() {
    }
}
