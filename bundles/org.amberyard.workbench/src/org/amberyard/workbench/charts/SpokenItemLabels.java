package org.amberyard.workbench.charts;

import org.amberyard.workbench.language.Words;
import org.jfree.chart.labels.CategoryItemLabelGenerator;
import org.jfree.data.category.CategoryDataset;

/** Figures beside bars, as the locale writes them. */
record SpokenItemLabels(CategoryItemLabelGenerator made) implements CategoryItemLabelGenerator {

    @Override
    public String generateLabel(CategoryDataset data, int row, int column) {
        String label = made.generateLabel(data, row, column);
        return label == null ? null : Words.figure(label);
    }

    @Override
    public String generateRowLabel(CategoryDataset data, int row) {
        return Words.say(made.generateRowLabel(data, row));
    }

    @Override
    public String generateColumnLabel(CategoryDataset data, int column) {
        return Words.say(made.generateColumnLabel(data, column));
    }
}
