package org.amberyard.report.document;

import java.util.List;
import java.util.stream.Stream;

/**
 * A document, whatever format it is written in.
 *
 * @param name short name for files, for example {@code board-memo}
 * @param title title
 * @param subtitle what it is about, below the title; may be empty
 * @param facts who, what and which version, in the order printed below the title
 * @param running line at the foot of every page, beside the page numbers
 * @param mark what every page must say, such as that figures are not for submission; empty when there is nothing to say
 * @param sections sections
 * @param paper paper that it is laid out for
 */
public record Document(String name, String title, String subtitle, List<Fact> facts, String running, String mark,
        List<Section> sections, Paper paper) {

    /** Something to know about the document. */
    public record Fact(String label, String value) {
    }

    public Document {
        facts = List.copyOf(facts);
        sections = List.copyOf(sections);
    }

    /** On letter paper. */
    public Document(String name, String title, String subtitle, List<Fact> facts, String running, String mark,
            List<Section> sections) {
        this(name, title, subtitle, facts, running, mark, sections, Paper.LETTER);
    }

    /** The same on other paper. */
    public Document on(Paper other) {
        return new Document(name, title, subtitle, facts, running, mark, sections, other);
    }

    /** All tables, in their order; those too long for paper too. */
    public List<DataTable> tables() {
        return sections.stream().flatMap(s -> s.blocks().stream()).flatMap(Document::tables).toList();
    }

    private static Stream<DataTable> tables(Block block) {
        if (block instanceof Block.Condensed condensed) {
            return Stream.of(condensed.table());
        }
        return block instanceof DataTable table ? Stream.of(table)
                : block instanceof Block.OnSheet longTable ? Stream.of(longTable.table()) : Stream.empty();
    }
}
