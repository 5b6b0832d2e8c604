package org.amberyard.workbench.grid;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class RowWordsTest {
    private static final List<String> HEADERS = List.of("Name", "Engine model year");

    private static boolean in(String words, String... cells) {
        return new RowWords(words).in(HEADERS, () -> Stream.of(cells));
    }

    @Test
    void aConditionIsOfTheFigureOfAColumnOrAWord() {
        assertEquals(List.of(true, false), List.of(in("engine<=2009", "B1", "2009"), in("engine<=2009", "B1", "2010")));
        assertEquals(List.of(true, false), List.of(in("b1 engine<=2009", "B1", "2009"), in("b2 engine<=2009", "B1", "2009")));
        assertEquals(List.of(true, false), List.of(in("a<5", "where a<5", ""), in("a<5", "where a>5", "4")), "no column begins so");
        assertEquals(List.of(true, false), List.of(in("x=5", "B1", "", "x=5"), in("x=5", "B1", "", "5")), "beyond the headers");
    }

    /** Of notes and lists of figures no columns are known. */
    @Test
    void withoutHeadersEachWordIsAText() {
        assertEquals(true, new RowWords("a<5 see").in(() -> Stream.of("See there", "holds for A<5")));
        assertEquals(false, new RowWords("a<5").in(() -> Stream.of("4")));
    }
}
