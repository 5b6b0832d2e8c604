package org.amberyard.exchange.sheet;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Delimited text with any separator and encoding: commas, semicolons, tabs or bars, quoted as in RFC 4180. */
final class DelimitedText {
    private static final Map<Character, String> SEPARATORS = Map.of(',', "commas", ';', "semicolons", '\t', "tabs", '|', "bars");
    private static final List<Character> IN_ORDER = List.of(',', ';', '\t', '|');
    private static final int LOOKED_AT = 40;

    private final String file;
    private final TextEncoding text;

    private DelimitedText(String file, TextEncoding text) {
        this.file = file;
        this.text = text;
    }

    /** @throws ImportException when the file is no text, or has too many rows */
    static Sheet read(Path path) throws IOException, ImportException {
        String file = path.getFileName().toString();
        TextEncoding text = TextEncoding.of(Files.readAllBytes(path)).orElseThrow(() -> SheetReader.refused(file,
                "The file is neither a workbook (XLSX) nor text; save the table as XLSX or CSV."));
        return new DelimitedText(file, text).sheet();
    }

    private Sheet sheet() throws ImportException {
        char separator = separator();
        List<SheetRow> rows = rows(separator, SheetReader.MOST_ROWS);
        if (rows.size() > SheetReader.MOST_ROWS) {
            throw SheetReader.refused(file, "The file has more than 100,000 rows; split it or remove what is not needed.");
        }
        List<String> texts = rows.stream().flatMap(r -> r.cells().stream()).map(SheetCell::text).toList();
        NumberStyle numbers = separator == ',' ? NumberStyle.POINT : NumberStyle.of(texts);
        return new Sheet(file, "", rows.stream().filter(r -> !r.isBlank()).toList(), numbers, remarks(separator, numbers));
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
    private char separator() throws ImportException {
        Comparator<Widths> best = Comparator.comparingLong(Widths::cells);
        Widths chosen = null;
        for (char separator : IN_ORDER) {
            Widths widths = Widths.of(separator, rows(separator, LOOKED_AT));
            chosen = chosen == null || best.compare(widths, chosen) > 0 ? widths : chosen;
        }
        return chosen.separator();
    }

    /** Cells in those of the first rows that share the most frequent width; none where that is a single column. */
    private record Widths(char separator, long cells) {
        static Widths of(char separator, List<SheetRow> rows) {
            Map<Integer, Long> counts = rows.stream().collect(Collectors.groupingBy(r -> r.cells().size(), Collectors.counting()));
            long cells = counts.entrySet().stream().filter(e -> e.getKey() > 1).mapToLong(e -> e.getKey() * e.getValue()).max().orElse(0);
            return new Widths(separator, cells);
        }
    }

    private List<SheetRow> rows(char separator, int most) throws ImportException {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(separator).setIgnoreEmptyLines(false).setTrailingData(true)
                .setLenientEof(true).get();
        List<SheetRow> rows = new ArrayList<>();
        try (CSVParser parser = CSVParser.parse(text.text(), format)) {
            for (CSVRecord line : parser) {
                rows.add(row((int) line.getRecordNumber(), line));
                if (rows.size() > most) {
                    break;
                }
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            throw SheetReader.refused(file, "The file cannot be read as a table: " + e.getMessage());
        }
        return rows;
    }

    private SheetRow row(int number, CSVRecord line) throws ImportException {
        if (line.size() > SheetReader.MOST_COLUMNS) {
            throw SheetReader.refused(file, "Row " + number + " has " + line.size() + " columns; at most 300 are read.");
        }
        return new SheetRow(number, line.stream().map((Function<String, SheetCell>) SheetCell::ofText).toList());
    }
}
