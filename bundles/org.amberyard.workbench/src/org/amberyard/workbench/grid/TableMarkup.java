package org.amberyard.workbench.grid;

import java.util.List;

/** Blocks of cells as a table of a word processor: what programs take from the clipboard that know tables. */
public final class TableMarkup {
    /** Signs at which a spreadsheet would take words for a formula. */
    private static final String FORMULA_STARTS = "=+-@";

    private TableMarkup() {
    }

    /**
     * A cell as a word processor shows it, with the figure that a spreadsheet computes with.
     *
     * @param shown text for reading
     * @param figure all digits of a figure, with a point for the decimals; empty for words
     */
    public record Cell(String shown, String figure) {
        /** Words, or a figure of which no more is known than what is shown. */
        public static Cell of(String shown) {
            return new Cell(shown, "");
        }

        private String opening() {
            if (!figure.isEmpty()) {
                // The first is what Excel reads, the others what LibreOffice reads; either takes the text where they are missing.
                return "<td x:num=\"" + figure + "\" sdval=\"" + figure + "\" sdnum=\"1033;\">";
            }
            return isArmed(shown) ? "<td style=\"mso-number-format:'\\@'\">" : "<td>";
        }
    }

    /**
     * A block as a table.
     *
     * @param headed true when the first row holds headings
     */
    public static String write(List<List<Cell>> block, boolean headed) {
        StringBuilder html = new StringBuilder("<table xmlns:x=\"urn:schemas-microsoft-com:office:excel\" border=\"1\" ")
                .append("style=\"border-collapse:collapse\">");
        for (int row = 0; row < block.size(); row++) {
            html.append("<tr>");
            for (Cell cell : block.get(row)) {
                html.append(headed && row == 0 ? "<th>" : cell.opening()).append(escaped(cell.shown()))
                        .append(headed && row == 0 ? "</th>" : "</td>");
            }
            html.append("</tr>");
        }
        return html.append("</table>").toString();
    }

    /** True for words that begin as a formula does; a negative figure is none. */
    private static boolean isArmed(String cell) {
        return !cell.isEmpty() && FORMULA_STARTS.indexOf(cell.charAt(0)) >= 0 && !cell.matches("[+-][\\d.,\u00A0\u202F ]+%?");
    }

    private static String escaped(String text) {
        return text.replace("&", "&amp;").replace("<", "&lt;").replace(">", "&gt;").replace("\"", "&quot;").replace("\n", "<br/>");
    }
}
