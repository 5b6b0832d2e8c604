package org.amberyard.workbench.fields;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

@ExtendWith(UsNumbers.class)
class ComputedColumnTest {
    /** A spreadsheet takes a figure with the minus of print for words. */
    @Test
    void aFigureIsReadWithTheMinusOfPrintAndCopiedWithThatOfKeyboards() {
        ComputedColumn column = new ComputedFigure("Mean", "", Unit.KILOWATT, 1, e -> -1234.56);
        assertEquals("−1,234.6", column.shown(null, UnitSystem.METRIC));
        assertEquals("-1,234.6", column.fullText(null, UnitSystem.METRIC));
        assertEquals("–", new ComputedFigure("Mean", "", Unit.KILOWATT, 1, e -> Double.NaN).fullText(null, UnitSystem.METRIC));
    }
}
