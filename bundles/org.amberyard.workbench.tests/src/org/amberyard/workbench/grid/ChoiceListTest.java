package org.amberyard.workbench.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.junit.jupiter.api.Test;

class ChoiceListTest {
    private static final Rectangle SCREEN = new Rectangle(0, 0, 1280, 800);
    private static final Point SIZE = new Point(200, 234);

    @Test
    void aListStandsBelowItsCellAndOnTheScreen() {
        assertEquals(new Rectangle(300, 123, 200, 234), ChoiceList.placed(new Rectangle(300, 100, 80, 23), SIZE, SCREEN));
        assertEquals(new Rectangle(300, 466, 200, 234), ChoiceList.placed(new Rectangle(300, 700, 80, 23), SIZE, SCREEN), "above, near the bottom");
        assertEquals(new Rectangle(1080, 123, 200, 234), ChoiceList.placed(new Rectangle(1200, 100, 80, 23), SIZE, SCREEN), "whole at the right");
    }

    @Test
    void aListThatHasRoomOnNeitherSideIsAsHighAsTheWiderOne() {
        Rectangle low = new Rectangle(0, 0, 150, 300);
        assertEquals(new Rectangle(0, 123, 150, 177), ChoiceList.placed(new Rectangle(30, 100, 80, 23), SIZE, low), "below");
        assertEquals(new Rectangle(0, 0, 150, 180), ChoiceList.placed(new Rectangle(30, 180, 80, 23), SIZE, low), "above");
    }
}
