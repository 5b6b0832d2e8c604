package org.amberyard.report;

import static org.amberyard.report.WhatIfColumns.number;
import static org.amberyard.report.WhatIfColumns.text;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.variants.DrawnInput;
import org.amberyard.core.variants.WhatIfResults;

/** Table of what the fields of all uncertain inputs hold over the draws. */
final class DrawnInputTable {
    private static final double[] SHARES = {0.1, 0.5, 0.9};

    private DrawnInputTable() {
    }

    /** The table; empty where nothing is drawn yet. */
    static Optional<ResultTable> of(WhatIfResults results) {
        List<List<Object>> rows = new ArrayList<>();
        for (DrawnInput drawn : results.drawn()) {
            List<Object> row = new ArrayList<>(List.of(drawn.input(), drawn.elements(), drawn.field(), drawn.unit(), drawn.now()));
            for (double share : SHARES) {
                row.add(drawn.values().map(values -> values.quantile(share)).orElse(null));
            }
            row.add(drawn.words());
            rows.add(row);
        }
        return rows.isEmpty() ? Optional.empty() : Optional.of(new ResultTable("what_if_inputs", "Inputs as drawn", List.of(
                text("input", "Input", "Uncertain input."),
                text("elements", "Of", "Elements that hold the field; those that hold the same in the study are told together."),
                text("field", "Field", "Field that it moves."), text("unit", "Unit", "Unit of the field; blank for plain numbers and words."),
                text("now", "In the study", "What the field holds in the study."),
                number("p10", "P10", "What one draw in ten stays below; empty for words."), number("p50", "P50", "That half the draws stay below."),
                number("p90", "P90", "That one draw in ten exceeds."),
                text("words", "Words", "How often each word is drawn; blank for numbers.")), rows));
    }
}
