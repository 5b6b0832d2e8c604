package org.amberyard.workbench.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;

class ShortNamesTest {

    @Test
    void longWordsAreCutToInitialsAndSpansToTwoDigits() {
        assertEquals(List.of("EC 150", "EC 226", "EA 118", "DC 05-09", "DC new", "GA"), ShortNames.of(List.of("Electric C 150",
                "Electric C 226", "Electric A 118", "Diesel C 2005-2009", "Diesel C new", "Gasoline A")));
    }

    @Test
    void namesThatWouldBeAlikeKeepMoreLetters() {
        assertEquals(List.of("Die", "Dip"), ShortNames.of(List.of("Diesel", "Dipper")));
        assertEquals(List.of("Di C", "Do C"), ShortNames.of(List.of("Diesel C", "Double C")));
    }

    @Test
    void namesThatAreAlikeStayAlike() {
        assertEquals(List.of("DC", "DC", "EC"), ShortNames.of(List.of("Diesel C", "Diesel C", "Electric C")));
    }
}
