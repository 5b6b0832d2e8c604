package org.amberyard.workbench.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;

class ChartPrintingTest {

    @Test
    void aPictureKeepsItsProportionsOnAPage() {
        assertEquals(new Rectangle(10, 20, 1000, 500), ChartPrinting.placed(300, 150, new Rectangle(10, 20, 1000, 900)));
        assertEquals(new Rectangle(410, 20, 200, 100), ChartPrinting.placed(300, 150, new Rectangle(10, 20, 1000, 100)));
    }
}
