package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.variants.TwoTogether;
import org.amberyard.core.variants.VariedInputs;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Grid;
import org.amberyard.report.ResultTable;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** What a plan saves over two inputs, as a table that goes two ways, with as many values of each as a page has room for. */
final class TwoInputsPaper {
    private static final int MOST_COLUMNS = 11;
    private static final int MOST_ROWS = 26;

    private final PaperInput in;
    private final VariedInputs inputs;
    private final TwoTogether run;
    private final Grid grid;
    private final int[] columns;
    private final int[] rows;

    private TwoInputsPaper(PaperInput in, WhatIfResults results) {
        this.in = in;
        this.inputs = results.inputs();
        this.run = results.grid().orElseThrow();
        this.grid = run.grid();
        this.columns = places(grid.columns(), MOST_COLUMNS);
        this.rows = places(grid.rows(), MOST_ROWS);
    }

    /**
     * The table and, where a page has no room for all values, the whole grid for a workbook.
     *
     * @param whole the grid, a row for each pair of values
     * @param number number of the table in the document
     */
    static List<Block> of(PaperInput in, WhatIfResults results, ResultTable whole, int number) {
        TwoInputsPaper paper = new TwoInputsPaper(in, results);
        List<Block> blocks = new ArrayList<>(List.of(paper.table(whole.title(), number)));
        if (paper.isThinned()) {
            blocks.add(new Block.OnSheet(PrintedResults.of(whole, in.plan().name(), number)));
        }
        return blocks;
    }

    /** Places spread evenly over a number of values, both ends among them. */
    private static int[] places(int values, int most) {
        int shown = Math.min(values, most);
        return IntStream.range(0, shown).map(i -> Math.round((float) i * (values - 1) / (shown - 1))).toArray();
    }

    private boolean isThinned() {
        return columns.length < grid.columns() || rows.length < grid.rows();
    }

    private DataTable table(String title, int number) {
        double[] saving = run.saving(in.planIndex());
        TableBuilder<Integer> table = new TableBuilder<Integer>("two_inputs", "Table " + number + ". " + title + ": what the plan saves")
                .text(inputs.name(run.second()), 1, row -> inputs.words(run.second(), grid.second(row * grid.columns())));
        for (int column : columns) {
            table.number(inputs.words(run.first(), grid.first(column)), "", CellFormat.MONEY, row -> saving[row * grid.columns() + column]);
        }
        table.note("Across: " + inputs.name(run.first()) + "; down: " + inputs.name(run.second()) + ". Present cost of the baseline less that "
                + "of the plan, " + in.currency() + "; below zero the plan costs more.");
        if (isThinned()) {
            table.note(columns.length + " by " + rows.length + " of " + grid.columns() + " by " + grid.rows() + " values.");
        }
        return table.of(IntStream.of(rows).boxed().toList());
    }
}
