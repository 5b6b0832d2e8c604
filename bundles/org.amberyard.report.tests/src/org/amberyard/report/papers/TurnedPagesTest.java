package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.Paper;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;
import org.junit.jupiter.api.Test;

class TurnedPagesTest {
    private static final int MANY = 14;
    private static final int FEW = 2;

    private static Block table(int columns, int rows) {
        TableBuilder<Integer> table = new TableBuilder<>("T", "Table");
        IntStream.range(0, columns).forEach(c -> table.number("Column " + c, "USD", CellFormat.MONEY, r -> 1e6 * (c + r)));
        return Block.Condensed.close(table.of(IntStream.range(0, rows).boxed().toList()));
    }

    private static List<Boolean> wide(List<Section> sections) {
        return sections.stream().map(Section::wide).toList();
    }

    @Test
    void blocksThatAreTurnedAlikeShareASectionAndTheFirstHasTheHeading() {
        List<Block> blocks = IntStream.range(0, 5).mapToObj(i -> (Block) new Block.Paragraph("" + i)).toList();
        List<Section> sections = TurnedPages.of("Heading", blocks, b -> blocks.indexOf(b) == 2 || blocks.indexOf(b) == 3);
        assertEquals(List.of(blocks.subList(0, 2), blocks.subList(2, 4), blocks.subList(4, 5)), sections.stream().map(Section::blocks).toList());
        assertEquals(List.of("Heading", "", ""), sections.stream().map(Section::heading).toList());
        assertEquals(List.of(false, true, false), wide(sections));
        assertTrue(sections.stream().allMatch(Section::newPage));
    }

    @Test
    void fewUprightLinesDoNotTurnThePageBack() {
        Block broad = table(MANY, 3);
        List<Block> few = List.of(broad, table(FEW, 3), new Block.Paragraph("Words."), broad);
        assertEquals(List.of(true), wide(TurnedPages.of("H", few, Paper.LETTER)));
        assertEquals(List.of(few), TurnedPages.of("H", few, Paper.LETTER).stream().map(Section::blocks).toList());
        assertEquals(List.of(true, false, true), wide(TurnedPages.of("H", List.of(broad, table(FEW, 40), broad), Paper.LETTER)));
        assertEquals(List.of(false), wide(TurnedPages.of("H", List.of(table(FEW, 3)), Paper.LETTER)), "nothing turns them");
    }
}
