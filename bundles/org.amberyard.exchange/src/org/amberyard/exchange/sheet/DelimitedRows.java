package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.poi.ss.util.CellReference;

/**
 * Takes delimited text apart into rows, quoted as in RFC 4180, and stops at the first row or cell that is too large. A quotation mark that
 * is not closed before other text follows it, or not at all, is taken as text, so that it cannot swallow the rows behind it.
 */
final class DelimitedRows {
    private static final char QUOTE = '"';
    private static final int SHOWN = 40;

    private final String text;
    private final char separator;
    private final ReadingBudget budget = new ReadingBudget();
    private final List<Open> open = new ArrayList<>();
    private int at;
    private int number;

    DelimitedRows(String text, char separator) {
        this.text = text;
        this.separator = separator;
    }

    /**
     * A quotation mark that is not closed.
     *
     * @param row number of its row
     * @param begin the text that it begins, shortened
     */
    record Open(int row, String begin) {
    }

    /** Quotation marks that are not closed in the rows so far. */
    List<Open> open() {
        return List.copyOf(open);
    }

    /**
     * The next row; empty behind the last.
     *
     * @throws TooMuch when the row, one of its cells or the file is too large
     */
    Optional<SheetRow> next() {
        if (at >= text.length()) {
            return Optional.empty();
        }
        number++;
        List<SheetCell> cells = new ArrayList<>();
        do {
            if (cells.size() == SheetReader.MOST_COLUMNS) {
                throw new TooMuch("Row " + number + " has more than 300 columns; at most 300 are read.");
            }
            cells.add(counted(cell(), cells.size()));
        } while (goesOn());
        return Optional.of(new SheetRow(number, cells));
    }

    private SheetCell counted(String cell, int column) {
        budget.cells(1);
        budget.text(() -> "Row " + number + ", column " + CellReference.convertNumToColString(column), cell.length());
        return SheetCell.ofText(cell);
    }

    /** Steps over the separator or the end of the line; true when the row goes on. */
    private boolean goesOn() {
        if (at >= text.length()) {
            return false;
        }
        boolean more = text.charAt(at) == separator;
        at += text.startsWith("\r\n", at) ? 2 : 1;
        return more;
    }

    private String cell() {
        if (at < text.length() && text.charAt(at) == QUOTE) {
            int close = close(at + 1);
            int end = end(Math.max(close, at));
            if (close > 0 && isClosed(close, end)) {
                String inside = text.substring(at + 1, close).replace("\"\"", "\"") + text.substring(close + 1, end);
                at = end;
                return inside;
            }
            open.add(new Open(number, text.substring(at + 1, Math.min(end(at), at + 1 + SHOWN))));
        }
        int begin = at;
        at = end(at);
        return text.substring(begin, at);
    }

    /** Text behind the closing mark is borne with within a line only. */
    private boolean isClosed(int close, int end) {
        return text.substring(close + 1, end).isBlank() || !isManyLines(text.substring(at + 1, close));
    }

    private static boolean isManyLines(String inside) {
        return inside.indexOf('\n') >= 0 || inside.indexOf('\r') >= 0;
    }

    /** Place of the mark that closes a quotation, doubled ones within left out; -1 for none. */
    private int close(int from) {
        int mark = text.indexOf(QUOTE, from);
        while (mark >= 0 && mark + 1 < text.length() && text.charAt(mark + 1) == QUOTE) {
            mark = text.indexOf(QUOTE, mark + 2);
        }
        return mark;
    }

    /** Place of the next separator or end of a line. */
    private int end(int from) {
        int end = from;
        while (end < text.length() && text.charAt(end) != separator && text.charAt(end) != '\n' && text.charAt(end) != '\r') {
            end++;
        }
        return end;
    }
}
