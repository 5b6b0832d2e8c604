package org.amberyard.workbench.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Locale;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ComputedColumnTest {
    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);

    @BeforeEach
    void setLocale() {
        Locale.setDefault(Locale.Category.FORMAT, Locale.US);
    }

    @AfterEach
    void resetLocale() {
        Locale.setDefault(Locale.Category.FORMAT, before);
    }

    /** A spreadsheet takes a figure with the minus of print for words. */
    @Test
    void aFigureIsReadWithTheMinusOfPrintAndCopiedWithThatOfKeyboards() {
        ComputedColumn column = new ComputedFigure("Mean", "", Unit.KILOWATT, 1, e -> -1234.56);
        assertEquals("−1,234.6", column.shown(null, UnitSystem.METRIC));
        assertEquals("-1,234.6", column.fullText(null, UnitSystem.METRIC));
        assertEquals("–", new ComputedFigure("Mean", "", Unit.KILOWATT, 1, e -> Double.NaN).fullText(null, UnitSystem.METRIC));
    }
}
