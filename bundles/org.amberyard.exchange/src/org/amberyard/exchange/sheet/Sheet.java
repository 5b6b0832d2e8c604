package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.exchange.ImportProblem;

/**
 * A sheet of a workbook, or a file of delimited text.
 *
 * @param file name of the file
 * @param name name of the sheet; empty for a text file
 * @param rows rows in which something stands, in order
 * @param numbers how numbers in its texts are written
 * @param remarks how it was read, for people
 * @param problems what is wrong with its shape, whatever it holds; nothing of it can be imported while there are any
 */
public record Sheet(String file, String name, List<SheetRow> rows, NumberStyle numbers, List<String> remarks,
        List<ImportProblem> problems) {

    public Sheet {
        rows = List.copyOf(rows);
        remarks = List.copyOf(remarks);
        problems = List.copyOf(problems);
    }

    /** Where it is, for messages. */
    public String place() {
        return name.isEmpty() ? file : file + ", sheet “" + name + "”";
    }

    /** Number of columns of its widest row. */
    int width() {
        return rows.stream().mapToInt(r -> r.cells().size()).max().orElse(0);
    }

    /** Cells of a column below a row that are not blank. */
    Stream<SheetCell> column(int column, int belowRow) {
        return rows.stream().filter(r -> r.number() > belowRow).map(r -> r.cell(column)).filter(c -> !c.isBlank());
    }
}
