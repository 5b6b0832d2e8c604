package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;

/**
 * A table that has a row for each year as pages have it: a column for each year, some years to a table. Its first column is the year,
 * its last the figure, and what lies between says what the figure is of.
 */
final class YearsAcross {
    private static final int YEARS_A_TABLE = 5;

    private final DataTable whole;
    private final List<BigDecimal> years;
    private final Map<List<Object>, Map<BigDecimal, Object>> rows = new LinkedHashMap<>();

    private YearsAcross(DataTable whole) {
        this.whole = whole;
        this.years = whole.rows().stream().map(r -> (BigDecimal) r.cells().get(0)).distinct().toList();
    }

    /**
     * Turns a table whose rows without a figure are left out.
     *
     * @param order rows of all that a figure may be of, in their order
     */
    static Block of(DataTable whole, List<List<Object>> order) {
        YearsAcross across = new YearsAcross(whole);
        order.forEach(of -> across.rows.putIfAbsent(of, new LinkedHashMap<>()));
        whole.rows().forEach(across::add);
        across.rows.values().removeIf(Map::isEmpty);
        List<DataTable> parts = new ArrayList<>();
        for (int from = 0; from < across.years.size(); from += YEARS_A_TABLE) {
            parts.add(across.part(across.years.subList(from, Math.min(across.years.size(), from + YEARS_A_TABLE))));
        }
        return Block.Condensed.of(whole, parts);
    }

    private void add(DataTable.Row row) {
        int figure = row.cells().size() - 1;
        rows.computeIfAbsent(row.cells().subList(1, figure), k -> new LinkedHashMap<>()).put((BigDecimal) row.cells().get(0), row.cells().get(
                figure));
    }

    private DataTable part(List<BigDecimal> of) {
        DataTable.Column figure = whole.columns().get(whole.columns().size() - 1);
        List<DataTable.Column> columns = new ArrayList<>(whole.columns().subList(1, whole.columns().size() - 1));
        of.forEach(y -> columns.add(new DataTable.Column(CellFormat.YEAR.print(y), figure.unit(), figure.format(), false, 1)));
        List<DataTable.Row> lines = new ArrayList<>();
        rows.forEach((key, byYear) -> {
            List<Object> cells = new ArrayList<>(key);
            of.forEach(y -> cells.add(byYear.get(y)));
            lines.add(new DataTable.Row(DataTable.Kind.LINE, cells));
        });
        return new DataTable(whole.name(), whole.title() + ": " + CellFormat.YEAR.print(of.get(0)) + " to " + CellFormat.YEAR.print(of.get(
                of.size() - 1)), columns, lines, List.of("–: no amount in the year."), whole.mark());
    }
}
