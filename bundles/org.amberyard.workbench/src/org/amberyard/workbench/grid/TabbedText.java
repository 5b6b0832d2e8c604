package org.amberyard.workbench.grid;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Blocks of cells as spreadsheets put them on the clipboard: tabs between cells, quotes around awkward ones. */
public final class TabbedText {

    private final String text;
    private final List<List<String>> rows = new ArrayList<>();
    private List<String> row = new ArrayList<>();
    private StringBuilder cell = new StringBuilder();
    private boolean quoted;

    private TabbedText(String text) {
        this.text = text;
    }

    /** A block as text. */
    public static String write(List<List<String>> block) {
        return block.stream().map(r -> r.stream().map(TabbedText::quoted).collect(Collectors.joining("\t")))
                .collect(Collectors.joining("\n"));
    }

    private static String quoted(String cell) {
        boolean awkward = cell.contains("\t") || cell.contains("\n") || cell.startsWith("\"");
        return awkward ? "\"" + cell.replace("\"", "\"\"") + "\"" : cell;
    }

    /** The block in a text; a line end after the last row begins no new one. */
    public static List<List<String>> read(String text) {
        return new TabbedText(text.replace("\r\n", "\n").replace('\r', '\n')).read();
    }

    private List<List<String>> read() {
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (quoted) {
                i += quotedCharacter(c, i);
            } else if (c == '"' && cell.isEmpty()) {
                quoted = true;
            } else if (c == '\t') {
                endCell();
            } else if (c == '\n') {
                endRow();
            } else {
                cell.append(c);
            }
        }
        if (!row.isEmpty() || !cell.isEmpty()) {
            endRow();
        }
        return rows;
    }

    /** Takes a character between quotes; answers how many more were taken with it. */
    private int quotedCharacter(char c, int at) {
        if (c != '"') {
            cell.append(c);
            return 0;
        }
        if (at + 1 < text.length() && text.charAt(at + 1) == '"') {
            cell.append('"');
            return 1;
        }
        quoted = false;
        return 0;
    }

    private void endCell() {
        row.add(cell.toString());
        cell = new StringBuilder();
    }

    private void endRow() {
        endCell();
        rows.add(row);
        row = new ArrayList<>();
    }
}
