package org.amberyard.exchange.gtfs;

import java.io.BufferedInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.exchange.BoundedLines;
import org.amberyard.exchange.CsvCells;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.amberyard.exchange.ReadingProgress;

/** Reads the tables of a schedule row by row, so that they may be larger than the memory. */
final class GtfsTable {
    private static final int ROWS_BETWEEN_TELLING = 8192;

    private final GtfsFiles files;
    private final ProblemList problems;
    private final ReadingProgress progress;

    GtfsTable(GtfsFiles files, ProblemList problems, ReadingProgress progress) {
        this.files = files;
        this.problems = problems;
        this.progress = progress;
    }

    /** Takes a row of a table. */
    interface Taker {
        void take(GtfsRow row) throws ImportException;
    }

    /**
     * Reads a table; false when it is not there.
     *
     * @param file name of the table
     * @param needed columns that it must have
     * @throws ImportException when it cannot be read at all
     */
    boolean read(String file, List<String> needed, Taker taker) throws ImportException {
        try {
            Optional<InputStream> in = files.open(file);
            if (in.isEmpty()) {
                return false;
            }
            try (BoundedLines lines = new BoundedLines(new BufferedInputStream(in.get(), 1 << 16), file)) {
                readRows(lines, file, needed, taker);
            }
            return true;
        } catch (IOException e) {
            throw ProblemList.refusal(file, 0, "", "The file cannot be read: " + e.getMessage() + ".");
        }
    }

    /** Reads a table that must be there. */
    void readNeeded(String file, List<String> needed, Taker taker) throws ImportException {
        if (!read(file, needed, taker)) {
            problems.add(file, 0, "", "The file is missing; every GTFS schedule has it.");
        }
    }

    private void readRows(BoundedLines lines, String file, List<String> needed, Taker taker) throws IOException, ImportException {
        Optional<String> head = lines.next();
        Optional<Map<String, Integer>> columns = columns(head.orElse(""), file, needed);
        if (columns.isEmpty()) {
            return;
        }
        for (Optional<String> line = lines.next(); line.isPresent(); line = lines.next()) {
            if (!line.get().isBlank()) {
                Optional<List<String>> cells = cells(line.get(), columns.get().size(), file, lines.row());
                if (cells.isPresent()) {
                    taker.take(new GtfsRow(file, lines.row(), columns.get(), cells.get(), problems));
                }
            }
            if (lines.row() % ROWS_BETWEEN_TELLING == 0) {
                progress.step(file, lines.row());
            }
            if (problems.isFull()) {
                problems.refuseIfAny();
            }
        }
    }

    private Optional<Map<String, Integer>> columns(String head, String file, List<String> needed) {
        Map<String, Integer> columns = new HashMap<>();
        List<String> names = CsvCells.of(head).orElse(List.of());
        boolean sound = true;
        for (int i = 0; i < names.size(); i++) {
            if (columns.put(names.get(i), i) != null && !names.get(i).isEmpty()) {
                problems.add(file, 1, names.get(i), "The column stands there twice; remove one.");
                sound = false;
            }
        }
        for (String name : needed) {
            if (!columns.containsKey(name)) {
                problems.add(file, 1, "", "The column " + name + " is missing.");
                sound = false;
            }
        }
        return sound ? Optional.of(columns) : Optional.empty();
    }

    private Optional<List<String>> cells(String line, int width, String file, int row) {
        Optional<List<String>> cells = CsvCells.of(line);
        if (cells.isEmpty()) {
            problems.add(file, row, "", "A quote is not closed in the row.");
        } else if (cells.get().size() > width) {
            problems.add(file, row, "", "The row has " + cells.get().size() + " cells but the header has " + width
                    + "; is a separator or quote wrong?");
            return Optional.empty();
        }
        return cells;
    }
}
