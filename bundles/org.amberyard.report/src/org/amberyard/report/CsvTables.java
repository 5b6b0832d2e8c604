package org.amberyard.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.charts.DelimitedText;
import org.amberyard.report.document.PrintRounding;

/**
 * Tables as comma-separated values. Money is rounded to the cent, other figures to {@value #SIGNIFICANT_DIGITS} significant
 * digits; results.json has them in full.
 */
public final class CsvTables {
    /** Significant digits of figures that are not money. */
    public static final int SIGNIFICANT_DIGITS = 9;

    private CsvTables() {
    }

    /** A table as a document with one header line; figures that are not for submission say so in every row. */
    public static String document(ResultTable of) {
        ResultTable table = of.marked();
        List<List<Object>> rows = table.rows().stream().map(r -> rounded(table.columns(), r)).toList();
        return DelimitedText.CSV.document(table.columns().stream().map(ResultColumn::header).toList(), rows);
    }

    private static List<Object> rounded(List<ResultColumn> columns, List<Object> cells) {
        List<Object> row = new ArrayList<>();
        for (int i = 0; i < cells.size(); i++) {
            row.add(cells.get(i) instanceof Double number ? rounded(columns.get(i).type(), number) : cells.get(i));
        }
        return row;
    }

    private static BigDecimal rounded(ResultColumn.Type type, double number) {
        return type == ResultColumn.Type.MONEY ? PrintRounding.cents(number)
                : BigDecimal.valueOf(number).round(new MathContext(SIGNIFICANT_DIGITS, RoundingMode.HALF_EVEN));
    }
}
