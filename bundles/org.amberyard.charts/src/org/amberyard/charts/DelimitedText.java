package org.amberyard.charts;

import java.math.BigDecimal;
import java.util.List;
import java.util.stream.Collectors;

/**
 * Text with a separator between cells: comma as in RFC 4180, or tab.
 *
 * <p>Numbers have a dot and no thousands separators. Text that a spreadsheet would take for a formula gets a leading
 * apostrophe. A missing figure is an empty cell.
 */
public enum DelimitedText {
    /** Comma-separated values, RFC 4180. */
    CSV(','),
    /** Tab-separated values. */
    TSV('\t');

    private static final String LINE_END = "\r\n";
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final char separator;

    DelimitedText(char separator) {
        this.separator = separator;
    }

    /** A header line and a line for each row. */
    public String document(List<String> header, List<? extends List<?>> rows) {
        StringBuilder text = new StringBuilder(line(header));
        rows.forEach(r -> text.append(line(r)));
        return text.toString();
    }

    /** One line with its end; cells are numbers, text or null. */
    public String line(List<?> cells) {
        return cells.stream().map(this::cell).collect(Collectors.joining(String.valueOf(separator), "", LINE_END));
    }

    private String cell(Object value) {
        if (value == null) {
            return "";
        }
        return value instanceof Number number ? number(number) : quoted(unarmed(value.toString()));
    }

    private static String number(Number number) {
        double value = number.doubleValue();
        return Double.isFinite(value) ? plain(new BigDecimal(number.toString())) : "";
    }

    private static String plain(BigDecimal value) {
        return value.signum() == 0 ? "0" : value.stripTrailingZeros().toPlainString();
    }

    private static String unarmed(String text) {
        return !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0 ? "'" + text : text;
    }

    private String quoted(String text) {
        boolean special = text.indexOf(separator) >= 0 || text.indexOf('"') >= 0 || text.indexOf('\n') >= 0
                || text.indexOf('\r') >= 0;
        return special ? '"' + text.replace("\"", "\"\"") + '"' : text;
    }
}
