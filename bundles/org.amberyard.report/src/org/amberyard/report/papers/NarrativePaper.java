package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;
import org.amberyard.study.FigureName;

/** The narratives of a study with their figures, and from which table each figure is. */
final class NarrativePaper {
    private final List<NarrativeFacts> narratives;
    private final NarrativeFigures figures;

    private NarrativePaper(PaperInput in) {
        this.narratives = in.facts().narratives().stream().filter(n -> !n.text().isBlank()).toList();
        this.figures = new NarrativeFigures(in);
    }

    /** Sections of all narratives that have a text, on pages of their own; none where there is none. */
    static List<Section> of(PaperInput in) {
        NarrativePaper paper = new NarrativePaper(in);
        List<Section> sections = new ArrayList<>();
        for (NarrativeFacts narrative : paper.narratives) {
            sections.add(new Section("Narrative: " + narrative.heading(), false, sections.isEmpty(), paper.blocks(narrative)));
        }
        paper.table().ifPresent(t -> sections.add(new Section("", false, false, List.of(Block.Condensed.close(t)))));
        return sections;
    }

    private List<Block> blocks(NarrativeFacts narrative) {
        NarrativeFilling filling = new NarrativeFilling(narrative.parts(), figures);
        List<Block> blocks = new ArrayList<>();
        Arrays.stream(filling.printed().split("\\R\\s*\\R")).map(p -> p.strip().replaceAll("\\s*\\R\\s*", " ")).filter(p -> !p.isEmpty())
                .forEach(p -> blocks.add(new Block.Paragraph(p)));
        if (!filling.faults().isEmpty()) {
            blocks.add(new Block.Caution("Not for submission: " + String.join(" ", filling.faults())));
        }
        return blocks;
    }

    private Optional<DataTable> table() {
        List<FigureName> used = narratives.stream().flatMap(n -> n.parts().figures().stream()).filter(f -> figures.of(f).isPresent())
                .distinct().sorted().toList();
        return used.isEmpty() ? Optional.empty() : Optional.of(new TableBuilder<FigureName>("N1",
                "N1. Figures in the narrative and the tables that they are from").text("Figure", 3, FigureName::words)
                .text("As printed", 2, f -> figures.of(f).orElseThrow().words()).text("Table", 1, f -> figures.of(f).orElseThrow().table())
                .mark(used.stream().map(f -> figures.of(f).orElseThrow().mark()).filter(m -> !m.isEmpty()).findFirst().orElse("")).of(used));
    }
}
