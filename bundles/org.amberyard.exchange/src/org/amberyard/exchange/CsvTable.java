package org.amberyard.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/**
 * A small CSV file of a header row and data rows, its cells separated by commas, or by semicolons where the header has none.
 *
 * @param file name of the file, for messages
 * @param header header cells
 * @param rows data rows; each as long as the header
 */
public record CsvTable(String file, List<String> header, List<List<String>> rows) {

    public CsvTable {
        header = List.copyOf(header);
        rows = List.copyOf(rows);
    }

    /**
     * The table in a file.
     *
     * @throws ImportException when it is none
     */
    public static CsvTable read(Path path) throws ImportException {
        List<ImportProblem> unreadable = new ArrayList<>();
        CsvSheet sheet = CsvSheet.read(path, unreadable);
        if (sheet.header().size() == 1 && sheet.header().get(0).contains(";")) {
            unreadable.clear();
            sheet = CsvSheet.read(path, ';', unreadable);
        }
        if (unreadable.isEmpty() && sheet.header().isEmpty()) {
            unreadable.add(new ImportProblem(sheet.file(), 0, "", "The file is empty."));
        }
        if (!unreadable.isEmpty()) {
            throw new ImportException(unreadable);
        }
        return new CsvTable(sheet.file(), sheet.header(), sheet.rows());
    }
}
