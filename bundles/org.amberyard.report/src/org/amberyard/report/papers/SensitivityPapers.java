package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.charts.ChartTheme;
import org.amberyard.charts.WhatIfChart;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.report.ResultTable;
import org.amberyard.report.WhatIfTables;
import org.amberyard.report.WhatIfWords;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;

/** What a what-if says about a plan: which inputs decide, how likely the answer is. */
final class SensitivityPapers {
    private static final String NOT_RUN = "No what-if has been run on the study as it is. Enter what is uncertain under “What "
            + "if” and run it, then write the documents again.";
    private static final double CHART_HEIGHT = 0.6;
    private static final double WIDE = 3;

    private SensitivityPapers() {
    }

    /** The appendix on sensitivity: in words, as charts, as tables numbered from a number on. */
    static Section section(PaperInput in, int firstNumber) {
        String heading = "What if: uncertain inputs";
        if (in.whatIf().isEmpty() || in.planIndex() == in.study().baseline()) {
            return Section.of(heading, new Block.Paragraph(in.whatIf().isEmpty() ? NOT_RUN
                    : "A what-if compares plans with the baseline; this is the baseline."));
        }
        WhatIfResults results = in.whatIf().get();
        List<Block> blocks = new ArrayList<>();
        WhatIfWords.of(results, in.planIndex()).ifPresent(words -> blocks.add(new Block.Paragraph(words)));
        charts(results).forEach(c -> blocks.add(new Block.Figure(c.of(results, in.planIndex(), in.system(), ChartTheme.light()), c.label(), CHART_HEIGHT)));
        int number = firstNumber;
        for (ResultTable table : WhatIfTables.of(results, in.system())) {
            blocks.addAll(table.name().equals(WhatIfTables.GRID) ? TwoInputsPaper.of(in, results, table, number)
                    : List.of(PrintedResults.block(in, table, number)));
            number++;
        }
        TwoTogether.whyNone(results.inputs()).ifPresent(why -> blocks.add(new Block.Paragraph(why + ".")));
        return new Section(heading, true, true, blocks);
    }

    /** Charts of what has been found. */
    private static List<WhatIfChart> charts(WhatIfResults results) {
        return Arrays.stream(WhatIfChart.values()).filter(chart -> switch (chart) {
            case TORNADO -> results.single().isPresent();
            case DISTRIBUTION, BUDGET, SPENT, SPENT_MORE, REGRET, CONVERGENCE -> results.all().isPresent();
            case PRICES -> !results.prices().isEmpty();
            case SHARES -> results.shares().isPresent();
            case GRID -> results.grid().isPresent();
            case ALONE -> results.breakEvens().alone().isPresent();
            case BREAK_EVEN -> results.breakEven().isPresent();
            case SURFACE -> results.breakEvens().surface().isPresent();
            case SCENARIOS -> results.scenarios().isPresent();
        }).toList();
    }

    /** The uncertain inputs one at a time, for a grant agency; empty where no what-if was run. */
    static Optional<DataTable> oneAtATime(PaperInput in) {
        return in.whatIf().flatMap(WhatIfTables::oneAtATime)
                .map(table -> ResultLine.all(table, in.plan().name())).filter(lines -> !lines.isEmpty())
                .map(lines -> new TableBuilder<ResultLine>("T18b", "T18b. What each uncertain input does by itself to the present cost saved")
                        .text("Input", WIDE, l -> l.text("input")).text("Low", l -> l.text("low")).text("High", l -> l.text("high"))
                        .optional("Saved at low", in.currency(), CellFormat.MONEY, l -> l.number("saving_low"))
                        .optional("Saved", in.currency(), CellFormat.MONEY, l -> l.number("saving"))
                        .optional("Saved at high", in.currency(), CellFormat.MONEY, l -> l.number("saving_high"))
                        .note("Low and high: what one case in ten stays below and what one in ten exceeds. " + words(in)).of(lines));
    }

    /** How likely the plan is to cost less than the baseline, and what decides it; blank where it is not known. */
    static String words(PaperInput in) {
        return in.whatIf().flatMap(r -> WhatIfWords.of(r, in.planIndex())).orElse("");
    }
}
