package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.amberyard.workbench.grid.TabbedText;
import org.junit.jupiter.api.Test;

class TabbedTextTest {

    @Test
    void readsBlockOfASpreadsheet() {
        assertEquals(List.of(List.of("a", "1"), List.of("b", "2")), TabbedText.read("a\t1\r\nb\t2\r\n"));
    }

    @Test
    void keepsEmptyCells() {
        assertEquals(List.of(List.of("", "1", ""), List.of("")), TabbedText.read("\t1\t\n\n"));
    }

    @Test
    void readsQuotedTabsLinesAndQuotes() {
        assertEquals(List.of(List.of("two\nlines", "a \"word\"", "5\" pipe")),
                TabbedText.read("\"two\nlines\"\t\"a \"\"word\"\"\"\t5\" pipe"));
    }

    @Test
    void readsWhatItWrites() {
        List<List<String>> block = List.of(List.of("x\ty", "", "\"q\""), List.of("1", "line\nline", "z"));

        assertEquals(block, TabbedText.read(TabbedText.write(block)));
    }
}
