package org.amberyard.charts;

import java.text.FieldPosition;
import java.text.NumberFormat;
import java.text.ParsePosition;

/** Labels of an axis: written, never read back. */
abstract class AxisFormat extends NumberFormat {
    private static final long serialVersionUID = 1L;

    @Override
    public final StringBuffer format(long number, StringBuffer to, FieldPosition position) {
        return format((double) number, to, position);
    }

    @Override
    public final Number parse(String source, ParsePosition position) {
        throw new UnsupportedOperationException("Labels of an axis are not read back");
    }
}
