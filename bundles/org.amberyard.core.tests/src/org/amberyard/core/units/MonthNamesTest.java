package org.amberyard.core.units;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class MonthNamesTest {

    @Test
    void monthsCountFromZero() {
        assertEquals("January", MonthNames.full(0));
        assertEquals("Dec", MonthNames.brief(11));
        assertEquals("May", MonthNames.brief(4));
    }

    @Test
    void monthsThatFollowAreSaidByTheFirstAndTheLast() {
        assertEquals("every month", MonthNames.of(IntStream.range(0, 12).boxed().toList()));
        assertEquals("January to May, October", MonthNames.of(List.of(0, 1, 2, 3, 4, 9)));
        assertEquals("March, June to July, December", MonthNames.of(List.of(2, 5, 6, 11)));
        assertEquals("August", MonthNames.of(List.of(7)));
        assertEquals("", MonthNames.of(List.of()));
    }

    @Test
    void othersAreRefused() {
        assertDoesNotThrow(() -> MonthNames.require(0));
        assertDoesNotThrow(() -> MonthNames.require(11));
        assertEquals("month is 12 but must be 0 for January to 11 for December",
                assertThrows(IllegalArgumentException.class, () -> MonthNames.require(12)).getMessage());
        assertThrows(IllegalArgumentException.class, () -> MonthNames.require(-1));
    }
}
