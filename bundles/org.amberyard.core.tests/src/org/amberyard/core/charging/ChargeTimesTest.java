package org.amberyard.core.charging;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

/** Times of a stay with a pause from minute 10 to 30. */
class ChargeTimesTest {
    private static final ChargeTimes TIMES = new ChargeTimes(List.of(new ChargeTimes.Span(0, 10), new ChargeTimes.Span(30, 60)));

    @Test
    void minutesPassInTheTimesAlone() {
        assertEquals(4, TIMES.after(4), 0);
        assertEquals(10, TIMES.after(10), 0, "at the end of the first, not after the pause");
        assertEquals(35, TIMES.after(15), 0);
        assertEquals(60, TIMES.after(40), 0);
        assertEquals(Double.NEGATIVE_INFINITY, TIMES.after(41), 0);
        assertEquals(40, TIMES.minutes(), 0);
    }

    @Test
    void momentsAreAskedForTheirTime() {
        assertEquals(10, TIMES.endMin(0), 0);
        assertEquals(Double.NEGATIVE_INFINITY, TIMES.endMin(10), 0);
        assertEquals(60, TIMES.endMin(30), 0);
        assertEquals(30, TIMES.nextMin(0), 0);
        assertEquals(Double.POSITIVE_INFINITY, TIMES.nextMin(30), 0);
    }

    @Test
    void partsAndLaterTimes() {
        assertEquals(List.of(new ChargeTimes.Span(5, 10)), TIMES.between(5, 30).spans());
        assertEquals(List.of(new ChargeTimes.Span(10, 20), new ChargeTimes.Span(40, 70)), TIMES.later(10).spans());
    }
}
