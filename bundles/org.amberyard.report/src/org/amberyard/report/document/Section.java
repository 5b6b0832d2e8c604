package org.amberyard.report.document;

import java.util.List;

/**
 * A part of a document under a heading.
 *
 * @param heading heading; empty for a section without one
 * @param wide true for pages in landscape
 * @param newPage true when it starts a page
 * @param blocks what stands in it
 */
public record Section(String heading, boolean wide, boolean newPage, List<Block> blocks) {

    public Section {
        blocks = List.copyOf(blocks);
    }

    /** A section that follows the one before on the same page. */
    public static Section of(String heading, Block... blocks) {
        return new Section(heading, false, false, List.of(blocks));
    }
}
