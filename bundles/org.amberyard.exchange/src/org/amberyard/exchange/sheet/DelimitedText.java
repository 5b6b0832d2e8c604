package org.amberyard.exchange.sheet;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;

/** Delimited text with any separator and encoding: commas, semicolons, tabs or bars, quoted as in RFC 4180. */
final class DelimitedText {
    private static final Map<Character, String> SEPARATORS = Map.of(',', "commas", ';', "semicolons", '\t', "tabs", '|', "bars");
    private static final List<Character> IN_ORDER = List.of(',', ';', '\t', '|');
    private static final int LOOKED_AT = 40;
    private static final int FEWEST_TO_TELL = 4;
    private static final int TOLD_EVERY = 1000;

    private final String file;
    private final TextEncoding text;
    private final ReadingProgress progress;

    private DelimitedText(String file, TextEncoding text, ReadingProgress progress) {
        this.file = file;
        this.text = text;
        this.progress = progress;
    }

    /** @throws ImportException when the file is no text, or holds too much */
    static Sheet read(Path path, ReadingProgress progress) throws IOException, ImportException {
        String file = path.getFileName().toString();
        TextEncoding text = TextEncoding.of(Files.readAllBytes(path)).orElseThrow(() -> SheetReader.refused(file,
                "The file is neither a workbook (XLSX) nor text; save the table as XLSX or CSV."));
        return new DelimitedText(file, text, progress).read();
    }

    /** @throws ImportException when the text holds too much */
    static Sheet of(String place, String text, ReadingProgress progress) throws ImportException {
        return new DelimitedText(place, TextEncoding.known(text), progress).read();
    }

    private Sheet read() throws ImportException {
        try {
            return sheet();
        } catch (TooMuch e) {
            throw SheetReader.refused(file, e.getMessage());
        }
    }

    private Sheet sheet() {
        Widths shape = shape();
        char separator = shape.separator();
        DelimitedRows source = new DelimitedRows(text.text(), separator);
        List<SheetRow> rows = rows(source);
        List<String> texts = rows.stream().flatMap(r -> r.cells().stream()).map(SheetCell::text).toList();
        NumberStyle numbers = separator == ',' ? NumberStyle.POINT : NumberStyle.of(texts);
        return new Sheet(file, "", rows.stream().filter(r -> !r.isBlank()).toList(), numbers, remarks(separator, numbers),
                problems(source.open(), rows, shape));
    }

    private List<SheetRow> rows(DelimitedRows source) {
        List<SheetRow> rows = new ArrayList<>();
        for (Optional<SheetRow> row = source.next(); row.isPresent(); row = source.next()) {
            if (rows.size() == SheetReader.MOST_ROWS) {
                throw new TooMuch("The file has more than 100,000 rows; split it or remove what is not needed.");
            }
            if (rows.size() % TOLD_EVERY == 0) {
                progress.step(file, rows.size());
            }
            rows.add(row.get());
        }
        return rows;
    }

    private List<ImportProblem> problems(List<DelimitedRows.Open> open, List<SheetRow> rows, Widths shape) {
        Stream<ImportProblem> unclosed = open.stream().map(o -> new ImportProblem(file, o.row(), "", "The quotation mark before “" + o.begin()
                + "” is not closed; close it behind the text of its cell, or remove it."));
        Stream<ImportProblem> swallowed = rows.stream().filter(r -> r.cells().stream().anyMatch(shape::holdsRows))
                .map(r -> new ImportProblem(file, r.number(), "", "A quoted cell of this row holds lines that look like rows of the table; "
                        + "close its quotation mark behind the text of the cell, or take the line ends out of it."));
        return Stream.concat(unclosed, swallowed).toList();
    }

    private List<String> remarks(char separator, NumberStyle numbers) {
        List<String> remarks = new ArrayList<>();
        if (separator != ',' || numbers == NumberStyle.COMMA) {
            remarks.add("Read as text separated by " + SEPARATORS.get(separator) + " with a decimal "
                    + (numbers == NumberStyle.COMMA ? "comma." : "point."));
        }
        if (text.isGuessed()) {
            remarks.add("The file is not UTF-8 text; it was read as Windows-1252. Look at names with accents.");
        }
        return remarks;
    }

    /** The separator that makes most rows of one width, and that a wide one; of equals the usual one. */
    private Widths shape() {
        Widths chosen = null;
        for (char separator : IN_ORDER) {
            Widths widths = Widths.of(separator, text.text());
            chosen = chosen == null || widths.cells() > chosen.cells() ? widths : chosen;
        }
        return chosen;
    }

    /**
     * How a separator parts the first rows.
     *
     * @param width the most frequent number of columns above one; 0 where no row is parted
     * @param cells cells in the rows of that width
     */
    private record Widths(char separator, int width, long cells) {

        /** Rows that are too large for this separator tell nothing. */
        static Widths of(char separator, String text) {
            Map<Integer, Long> counts = new TreeMap<>();
            DelimitedRows rows = new DelimitedRows(text, separator);
            try {
                Stream.generate(rows::next).limit(LOOKED_AT).takeWhile(Optional::isPresent)
                        .forEach(r -> counts.merge(r.get().cells().size(), 1L, Long::sum));
            } catch (TooMuch e) {
                counts.clear();
            }
            return counts.entrySet().stream().filter(e -> e.getKey() > 1).max(Comparator.comparingLong(e -> e.getKey() * e.getValue()))
                    .map(e -> new Widths(separator, e.getKey(), e.getKey() * e.getValue())).orElseGet(() -> new Widths(separator, 0, 0));
        }

        /** True for a cell of several lines of which one has as many separators as a row of a table that is not narrow. */
        boolean holdsRows(SheetCell cell) {
            return width >= FEWEST_TO_TELL && cell.text().lines().skip(1).anyMatch(l -> l.chars().filter(c -> c == separator).count() == width - 1);
        }
    }
}
