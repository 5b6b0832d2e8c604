package org.amberyard.exchange;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * A CSV file of a header row and data rows (RFC 4180, UTF-8), bounded in size.
 *
 * @param file name of the file, for messages
 * @param header header cells
 * @param rows data rows; each as long as the header
 */
record CsvSheet(String file, List<String> header, List<List<String>> rows) {
    static final int MOST_ROWS = 100_000;
    private static final long MOST_BYTES = 32L * 1024 * 1024;
    private static final CSVFormat FORMAT = CSVFormat.RFC4180.builder().setRecordSeparator('\n').get();
    private static final String BYTE_ORDER_MARK = "\ufeff";

    static CsvSheet read(Path path, List<ImportProblem> problems) {
        return read(path, ',', problems);
    }

    static CsvSheet read(Path path, char separator, List<ImportProblem> problems) {
        String file = path.getFileName().toString();
        try {
            if (Files.size(path) > MOST_BYTES) {
                return failed(file, problems, "The file is larger than 32 MiB; split it or remove what is not needed.");
            }
            try (BufferedReader reader = Files.newBufferedReader(path, StandardCharsets.UTF_8)) {
                return sheet(file, FORMAT.builder().setDelimiter(separator).get().parse(reader), problems);
            }
        } catch (IOException e) {
            return unreadable(file, problems, e);
        } catch (UncheckedIOException e) {
            return unreadable(file, problems, e.getCause());
        } catch (IllegalStateException e) {
            return failed(file, problems, "The file cannot be read: " + e.getMessage());
        }
    }

    private static CsvSheet unreadable(String file, List<ImportProblem> problems, IOException cause) {
        return failed(file, problems, cause instanceof MalformedInputException
                ? "The file is not UTF-8 text; save it again as CSV UTF-8."
                : "The file cannot be read: " + cause.getMessage());
    }

    private static CsvSheet sheet(String file, Iterable<CSVRecord> records, List<ImportProblem> problems) {
        List<String> header = List.of();
        List<List<String>> rows = new ArrayList<>();
        for (CSVRecord row : records) {
            if (header.isEmpty()) {
                header = row.stream().map(c -> c.replace(BYTE_ORDER_MARK, "").strip()).toList();
            } else if (rows.size() >= MOST_ROWS) {
                return failed(file, problems, "The file has more than 100,000 rows; split it or remove what is not needed.");
            } else {
                rows.add(padded(row, header.size(), file, problems));
            }
        }
        return new CsvSheet(file, header, rows);
    }

    private static List<String> padded(CSVRecord row, int width, String file, List<ImportProblem> problems) {
        if (row.size() > width) {
            problems.add(new ImportProblem(file, (int) row.getRecordNumber(), "",
                    "The row has " + row.size() + " cells but the header has " + width + "; is a separator or quote wrong?"));
        }
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < width; i++) {
            cells.add(i < row.size() ? row.get(i).strip() : "");
        }
        return cells;
    }

    private static CsvSheet failed(String file, List<ImportProblem> problems, String message) {
        problems.add(new ImportProblem(file, 0, "", message));
        return new CsvSheet(file, List.of(), List.of());
    }

    void write(Path folder) throws IOException {
        try (CSVPrinter printer = new CSVPrinter(Files.newBufferedWriter(folder.resolve(file), StandardCharsets.UTF_8), FORMAT)) {
            printer.printRecord(header);
            for (List<String> row : rows) {
                printer.printRecord(row);
            }
        }
    }
}
