package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.Paper;
import org.amberyard.report.document.Section;

/** Blocks under one heading on pages that are turned as they need it: upright or in landscape. */
final class TurnedPages {
    /** Lines around the rows of a table: its caption, its head, what parts it from others. */
    private static final int LINES_AROUND = 6;
    /** So few lines are better read where the page is turned already. */
    private static final int FEW_LINES = 30;
    private static final int LINES_OF_WORDS = 2;

    private final List<Run> runs = new ArrayList<>();

    /** Blocks that follow each other on pages that are turned alike. */
    private record Run(boolean wide, List<Block> blocks) {
        int lines(Paper paper) {
            return blocks.stream().mapToInt(b -> b instanceof Block.Condensed table ? table.lines(paper) + LINES_AROUND : LINES_OF_WORDS).sum();
        }
    }

    private TurnedPages() {
    }

    /** Sections of which only the first has the heading. */
    static List<Section> of(String heading, List<? extends Block> blocks, Predicate<Block> wide) {
        TurnedPages pages = new TurnedPages();
        blocks.forEach(b -> pages.add(wide.test(b), List.of(b)));
        return pages.sections(heading);
    }

    /** The same for a paper: few upright lines between pages in landscape do not turn the page. */
    static List<Section> of(String heading, List<Block> blocks, Paper paper) {
        TurnedPages pages = new TurnedPages();
        blocks.forEach(b -> pages.add(b instanceof Block.Condensed table && table.isWide(paper), List.of(b)));
        TurnedPages calm = new TurnedPages();
        boolean turned = pages.runs.stream().anyMatch(Run::wide);
        pages.runs.forEach(r -> calm.add(r.wide() || turned && r.lines(paper) < FEW_LINES, r.blocks()));
        return calm.sections(heading);
    }

    private void add(boolean wide, List<Block> blocks) {
        boolean goesOn = !runs.isEmpty() && runs.get(runs.size() - 1).wide() == wide;
        List<Block> together = new ArrayList<>(goesOn ? runs.remove(runs.size() - 1).blocks() : List.of());
        together.addAll(blocks);
        runs.add(new Run(wide, together));
    }

    private List<Section> sections(String heading) {
        List<Section> sections = new ArrayList<>();
        runs.forEach(r -> sections.add(new Section(sections.isEmpty() ? heading : "", r.wide(), true, r.blocks())));
        return sections;
    }
}
