package org.amberyard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class DstRuleTest {

    /** Days from a calendar; the first two rules are those of the United States since 2007. */
    @ParameterizedTest
    @CsvSource({"360E2000, 2025, 2025-03-09T02:00", "360E2000, 2026, 2026-03-08T02:00", "B40E2000, 2025, 2025-11-02T02:00",
        "3E0E2000, 2025, 2025-03-30T02:00", "AE0E3000, 2025, 2025-10-26T03:00", "61220708, 2025, 2025-06-18T00:30:00",
        "22E40000, 2025, 2025-02-18T00:00"})
    void theDayOfTheChangeIsFound(String text, int year, String moment) {
        assertEquals(LocalDateTime.parse(moment), DstRule.of(text).orElseThrow().moment(year));
    }

    @Test
    void otherTextsAreNoRules() {
        assertTrue(DstRule.of("").isEmpty());
        assertTrue(DstRule.of("360E200").isEmpty());
        assertTrue(DstRule.of("060E2000").isEmpty(), "month 0");
        assertTrue(DstRule.of("D60E2000").isEmpty(), "month 13");
        assertTrue(DstRule.of("36002000").isEmpty(), "a weekday is needed");
    }
}
