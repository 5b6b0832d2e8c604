package org.amberyard.workbench.language;

import org.eclipse.osgi.util.NLS;

/** Words for a number of things, of which one has other words than none or several. */
public final class Counted {

    private Counted() {
    }

    /** The words that fit a number, of those for one and for any other. */
    public static String of(int count, String one, String several) {
        return count == 1 ? one : several;
    }

    /** The same with the number in the place of {0}. */
    public static String said(int count, String one, String several) {
        return NLS.bind(of(count, one, several), count);
    }
}
