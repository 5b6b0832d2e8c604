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
 */
public record Document(String name, String title, String subtitle, List<Fact> facts, String running, String mark,
        List<Section> sections) {

    /** Something to know about the document. */
    public record Fact(String label, String value) {
    }

    public Document {
        facts = List.copyOf(facts);
        sections = List.copyOf(sections);
    }

    /** All tables, in their order. */
    public List<DataTable> tables() {
        return blocks().filter(DataTable.class::isInstance).map(DataTable.class::cast).toList();
    }

    /** All blocks, in their order. */
    Stream<Block> blocks() {
        return sections.stream().flatMap(s -> s.blocks().stream());
    }
}
