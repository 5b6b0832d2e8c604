package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.Cautions;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;

/** The consultant's appendix: how everything was computed, all results of the plan, all inputs with their sources. */
final class Appendix {
    private static final String TITLE = "Appendix: methods, results, inputs";
    /** Longer tables are for a workbook alone. */
    private static final int LONGEST_ON_PAPER = 400;

    private Appendix() {
    }

    static Document of(PaperInput in, Progress progress) {
        List<Section> sections = new ArrayList<>();
        sections.addAll(Methods.sections(in));
        sections.add(Section.of("Cautions", new Block.Bullets(Cautions.SENTENCES)));
        List<ResultTables.Group> groups = ResultTables.groups();
        int place = 0;
        for (ResultTables.Group group : groups) {
            List<Block> blocks = new ArrayList<>();
            for (int i = 0; i < group.tables().size(); i++) {
                progress.at((double) place / ResultTables.titles().size());
                ResultTable table = ResultTables.of(place++, in.result(), in.system(), Progress.NONE);
                blocks.add(onPaper(PrintedResults.of(table, in.plan().name(), place)));
            }
            sections.add(new Section("Results: " + group.title(), true, true, blocks));
        }
        sections.add(SensitivityPapers.section(in, place + 1));
        sections.add(new Section("Inputs", true, true, List.of(onPaper(RegisterPapers.all(in)))));
        progress.at(1);
        return new Document("consultants-appendix", TITLE, in.study().name(), in.documentFacts(), in.running("Appendix"),
                AirPapers.mark(in), sections);
    }

    /** A table, or where to find it when it is too long for paper. */
    static Block onPaper(DataTable table) {
        if (table.rows().isEmpty()) {
            return new Block.Paragraph(table.title() + ": no rows for this plan.");
        }
        return table.rows().size() > LONGEST_ON_PAPER ? new Block.OnSheet(table) : table;
    }
}
