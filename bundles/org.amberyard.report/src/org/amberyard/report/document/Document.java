package org.amberyard.report.document;

import java.util.ArrayList;
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
 * @param setting how its text is set
 */
public record Document(String name, String title, String subtitle, List<Fact> facts, String running, String mark,
        List<Section> sections, Paper paper, TextSetting setting) {

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
        this(name, title, subtitle, facts, running, mark, sections, Paper.LETTER, TextSetting.OPEN);
    }

    /** The same on other paper. */
    public Document on(Paper other) {
        return new Document(name, title, subtitle, facts, running, mark, sections, other, setting);
    }

    /** The same with its text set close, so that it keeps to few pages. */
    public Document close() {
        return new Document(name, title, subtitle, facts, running, mark, sections, paper, TextSetting.CLOSE);
    }

    /** True where the title stands on a page in landscape, with the first section. */
    boolean startsWide() {
        return !sections.isEmpty() && sections.get(0).wide() && !sections.get(0).newPage();
    }

    /**
     * A line of the contents.
     *
     * @param words heading, or title of a table
     * @param place name of the place that it leads to
     * @param table true for a table
     */
    record Entry(String words, String place, boolean table) {
    }

    /** Lines of the contents; tables that stand in several parts on pages have one for the first. */
    List<Entry> contents() {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < sections.size(); i++) {
            boolean itself = sections.get(i).blocks().stream().anyMatch(Block.Contents.class::isInstance);
            if (!sections.get(i).heading().isEmpty() && !itself) {
                entries.add(new Entry(sections.get(i).heading(), place(i), false));
            }
            for (int b = 0; b < sections.get(i).blocks().size(); b++) {
                String place = place(i, b);
                onPaper(sections.get(i).blocks().get(b)).findFirst().ifPresent(t -> entries.add(new Entry(t.title(), place, true)));
            }
        }
        return entries;
    }

    /** Name of the place of a section. */
    static String place(int section) {
        return "s" + section;
    }

    /** Name of the place of a table in a section. */
    static String place(int section, int block) {
        return "s" + section + "t" + block;
    }

    private static Stream<DataTable> onPaper(Block block) {
        return block instanceof Block.Condensed condensed ? condensed.onPaper().stream()
                : block instanceof DataTable table ? Stream.of(table) : Stream.empty();
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
