package org.amberyard.workbench.grid;

import java.text.DecimalFormatSymbols;

/** A figure as forms take it: digits, a decimal sign and a plain minus. */
public final class PlainFigure {
    private PlainFigure() {
    }

    /** A figure in the locale of the program without what separates its thousands. */
    public static String of(String figure) {
        String group = String.valueOf(DecimalFormatSymbols.getInstance().getGroupingSeparator());
        return figure.replace(group, "").replace("\u00a0", "").replace("\u202f", "").replace('\u2212', '-');
    }

    /** A figure in the locale of the program for machines, with a point; empty for what is no figure in digits. */
    static String withPoint(String figure) {
        String plain = of(figure).replace(DecimalFormatSymbols.getInstance().getDecimalSeparator(), '.');
        return plain.matches("-?\\d+(\\.\\d+)?") ? plain : "";
    }
}
