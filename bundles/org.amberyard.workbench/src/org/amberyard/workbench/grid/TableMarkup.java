package org.amberyard.workbench.grid;

import java.util.List;

/** Blocks of cells as a table of a word processor: what programs take from the clipboard that know tables. */
public final class TableMarkup {
    /** Signs at which a spreadsheet would take words for a formula. */
    private static final String FORMULA_STARTS = "=+-@";

    private TableMarkup() {
    }

    /**
     * A block as a table.
     *
     * @param headed true when the first row holds headings
     */
    public static String write(List<List<String>> block, boolean headed) {
        StringBuilder html = new StringBuilder("<table border=\"1\" style=\"border-collapse:collapse\">");
        for (int row = 0; row < block.size(); row++) {
            html.append("<tr>");
            for (String cell : block.get(row)) {
                html.append(headed && row == 0 ? "<th>" : isArmed(cell) ? "<td style=\"mso-number-format:'\\@'\">" : "<td>")
                        .append(escaped(cell)).append(headed && row == 0 ? "</th>" : "</td>");
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
