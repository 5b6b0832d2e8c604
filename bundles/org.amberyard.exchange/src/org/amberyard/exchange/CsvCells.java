package org.amberyard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Cells of one line of comma-separated values (RFC 4180 without line ends inside cells). */
public final class CsvCells {
    private CsvCells() {
    }

    /** The cells without blanks around them; empty when a quote is not closed. */
    public static Optional<List<String>> of(String line) {
        return line.indexOf('"') < 0 ? Optional.of(bare(line)) : quoted(line);
    }

    private static List<String> bare(String line) {
        List<String> cells = new ArrayList<>();
        int from = 0;
        for (int comma = line.indexOf(','); comma >= 0; comma = line.indexOf(',', from)) {
            cells.add(line.substring(from, comma).strip());
            from = comma + 1;
        }
        cells.add(line.substring(from).strip());
        return cells;
    }

    private static Optional<List<String>> quoted(String line) {
        List<String> cells = new ArrayList<>();
        StringBuilder cell = new StringBuilder();
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            char c = line.charAt(i);
            if (c == '"' && quoted && i + 1 < line.length() && line.charAt(i + 1) == '"') {
                cell.append(c);
                i++;
            } else if (c == '"' && (quoted || cell.toString().isBlank())) {
                quoted = !quoted;
            } else if (c == ',' && !quoted) {
                cells.add(cell.toString().strip());
                cell.setLength(0);
            } else {
                cell.append(c);
            }
        }
        cells.add(cell.toString().strip());
        return quoted ? Optional.empty() : Optional.of(cells);
    }
}
