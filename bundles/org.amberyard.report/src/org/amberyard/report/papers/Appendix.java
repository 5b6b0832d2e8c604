package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.charts.BudgetChart;
import org.amberyard.charts.ChartTheme;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.Cautions;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;

/** The consultant's appendix: how everything was computed, all results of the plan, all inputs with their sources. */
final class Appendix {
    private static final String TITLE = "Appendix: methods, results, inputs";

    /** Height over width. */
    private static final double CHART_HEIGHT = 0.42;

    private Appendix() {
    }

    static Document of(PaperInput in, Progress progress) {
        List<Section> sections = new ArrayList<>(List.of(Section.of("Contents", new Block.Contents())));
        sections.addAll(Methods.sections(in));
        sections.add(Section.of("Cautions", new Block.Bullets(Cautions.SENTENCES)));
        List<ResultTables.Group> groups = ResultTables.groups();
        int place = 0;
        for (ResultTables.Group group : groups) {
            List<Block> blocks = new ArrayList<>();
            for (int i = 0; i < group.tables().size(); i++) {
                progress.at((double) place / ResultTables.titles().size());
                ResultTable table = ResultTables.of(place++, in.result(), in.system(), Progress.NONE);
                blocks.add(PrintedResults.block(in, table, place));
            }
            sections.addAll(TurnedPages.of("Results: " + group.title(), blocks, in.choices().paper()));
        }
        sections.add(Section.of("Money by year", new Block.Figure(BudgetChart.of(in.result(), in.planIndex(), in.system(), ChartTheme.light()),
                "To be appropriated by year, “" + in.plan().name() + "”", CHART_HEIGHT)));
        sections.add(SensitivityPapers.section(in, place + 1));
        sections.add(inputs(in));
        progress.at(1);
        return new Document("consultants-appendix", TITLE, in.study().name(), in.documentFacts(), in.running("Appendix"),
                AirPapers.mark(in), sections);
    }

    /** Every input for programs, the main ones for pages. */
    private static Section inputs(PaperInput in) {
        List<Block> blocks = new ArrayList<>(List.of(new Block.Paragraph("The main assumptions and what they rest on.")));
        RegisterPapers.inShort(in).forEach(t -> blocks.add(Block.Condensed.close(t)));
        blocks.add(new Block.OnSheet(RegisterPapers.all(in)));
        return new Section("Inputs", true, true, blocks);
    }
}
