package org.amberyard.report.papers;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.study.Study;
import org.amberyard.report.ResultTable;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.WhatIfTables;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;
import org.amberyard.study.whatif.WhatIfRun;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** What documents say of a what-if, for the example with a few draws. */
class SensitivityPapersTest {
    private static final int DRAWS = 40;

    private static PaperInput without;
    private static PaperInput with;

    @BeforeAll
    static void run() {
        ExamplePapers example = new ExamplePapers();
        Study study = example.study();
        study.getWhatIf().setDraws(DRAWS);
        study.getWhatIf().getInputs().subList(2, study.getWhatIf().getInputs().size()).clear();
        study.getWhatIf().getCorrelations().clear();
        study.getWhatIf().getScenarios().clear();
        study.getWhatIf().setGridColumns(14);
        study.getWhatIf().setGridRows(3);
        StudyResult result = example.evaluated(study);
        WhatIfRun run = new WhatIfRun(study, result, 2, Optional.empty());
        run.run(Progress.NONE, soFar -> {});
        WhatIfResults results = run.results();
        StudyFacts facts = StudyFacts.of(study);
        without = new PaperInput(result, ExamplePapers.ELECTRIC, facts, PaperChoices.STANDARD);
        with = new PaperInput(result, ExamplePapers.ELECTRIC, facts, PaperChoices.STANDARD, Optional.of(results));
    }

    @Test
    void theAppendixTellsInWordsChartsAndNumberedTables() {
        Section section = SensitivityPapers.section(with, 70);
        assertTrue(section.blocks().get(0) instanceof Block.Paragraph words
                && words.text().contains("of " + DRAWS + " draws, seed " + with.whatIf().orElseThrow().inputs().seed())
                && words.text().matches(".* is decided by .* \\(about \\d+ %, likely \\d+ % to \\d+ %\\).*"));
        assertTrue(section.blocks().stream().filter(Block.Figure.class::isInstance).count() >= 5);
        List<DataTable> tables = new Document("d", "D", "", List.of(), "", "", List.of(section)).tables();
        assertTrue(tables.get(0).title().startsWith("Table 70. "), tables.get(0).title());
        assertTrue(tables.get(1).title().startsWith("Table 71. "), tables.get(1).title());
    }

    /** Fourteen values are more than a page has room for: the ends and those between, as the chart has them, and all on a sheet. */
    @Test
    void theGridGoesTwoWaysOnPaper() {
        List<Block> blocks = SensitivityPapers.section(with, 70).blocks();
        DataTable grid = blocks.stream().filter(DataTable.class::isInstance).map(DataTable.class::cast)
                .filter(t -> t.name().equals("two_inputs")).findFirst().orElseThrow();
        assertEquals("Table 71. Diesel price and Diesel price rise: what the plan saves", grid.title());
        assertEquals(1 + 11, grid.columns().size());
        assertEquals(3, grid.rows().size());
        ResultTable whole = table("what_if_grid");
        List<List<Object>> own = whole.rows().stream().filter(r -> r.get(0).equals("Electric in stages")).toList();
        List<Object> last = grid.rows().get(2).cells();
        assertEquals(Math.rint((double) own.get(2 * 14).get(3)), ((Number) last.get(1)).doubleValue(), 0.5);
        assertEquals(Math.rint((double) own.get(2 * 14 + 13).get(3)), ((Number) last.get(11)).doubleValue(), 0.5);
        assertTrue(grid.notes().contains("11 by 3 of 14 by 3 values."), grid.notes().toString());
        assertTrue(blocks.stream().anyMatch(b -> b instanceof Block.OnSheet sheet && sheet.table().rows().size() == 14 * 3));
    }

    /** What decides, and what it explains together, in a sentence of the appendix, and below the shares in their table. */
    @Test
    void whatDecidesIsSaidInWordsAndInTheTable() {
        assertTrue(SensitivityPapers.words(with).matches(".* explains? \\d+ % of the variance of its saving\\..*"), SensitivityPapers.words(with));
        ResultTable shares = table("variance_shares");
        assertTrue(shares.rows().stream().anyMatch(row -> row.get(0).equals("Electric in stages")
                && String.valueOf(row.get(1)).matches(".* explains? \\d+ % of the variance")), shares.rows().toString());
    }

    @Test
    void plansAreToldBesideEachOther() {
        ResultTable regret = table("what_if_regret");
        assertEquals(List.of("Like for like", "Electric in stages", "Rebate buses only"), regret.rows().stream().map(r -> r.get(0)).toList());
        assertTrue(regret.rows().stream().mapToDouble(r -> (double) r.get(1)).sum() >= 100, "in each draw one is the cheapest");
        ResultTable spent = table("what_if_spent");
        List<Object> first = spent.rows().get(0);
        assertTrue(first.get(8) == null && first.get(4) != null, "the baseline is no more than itself");
        assertTrue(spent.rows().stream().anyMatch(r -> r.get(0).equals("Electric in stages") && (double) r.get(10) > 0));
        assertTrue(table("what_would_have_to_be_true").rows().stream().allMatch(r -> r.get(4).equals("none") == (r.get(5) == null)));
    }

    private static ResultTable table(String name) {
        return WhatIfTables.of(with.whatIf().orElseThrow(), UnitSystem.US).stream().filter(t -> t.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void withoutARunItSaysHowToMakeOne() {
        Section section = SensitivityPapers.section(without, 70);
        assertEquals(1, section.blocks().size());
        assertTrue(section.blocks().get(0) instanceof Block.Paragraph words && words.text().startsWith("No what-if has been run"));
        assertEquals(1, GrantTable.T18.of(without).size());
        assertTrue(RiskPapers.all(without).stream().noneMatch(r -> r.evidence().contains("draws")));
    }

    @Test
    void theGrantWriterHasTheInputsOneAtATimeAndTheRiskTellsTheChance() {
        DataTable table = GrantTable.T18.of(with).get(1);
        assertEquals(3, table.rows().size(), "two inputs and both together");
        double saved = with.comparison().orElseThrow().presentSaving();
        assertEquals(Math.rint(saved), ((Number) table.rows().get(0).cells().get(4)).doubleValue(), 0.5);
        assertTrue(RiskPapers.all(with).stream().anyMatch(r -> r.what().equals("Prices move")
                && r.evidence().contains("costs less than “Like for like” in ")), "the risk of prices");
    }
}
