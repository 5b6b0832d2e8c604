package org.amberyard.report.document;

/** How the rows of a table are set on paper. */
public enum RowSetting {
    /** Eight points, with room around them. */
    OPEN("", "Table", 8),
    /** Half a point less and little room, for tables of many rows. */
    CLOSE(" close", "Close", 7.5);

    /** Room left and right of words, points; a little more than there is, for letters are wider than others. */
    private static final double PADDING_POINTS = 9;
    /** Width of a letter in the size of the letters, on the average. */
    private static final double LETTER = 0.55;

    private final String look;
    private final String style;
    private final double fontPoints;

    RowSetting(String look, String style, double fontPoints) {
        this.look = look;
        this.style = style;
        this.fontPoints = fontPoints;
    }

    /** Class of the style sheet of pages, after a blank. */
    String look() {
        return look;
    }

    /** Beginning of the names of styles of a word processor. */
    String style() {
        return style;
    }

    /** Width of words with the room around them, points. */
    double points(String words) {
        return TextWidth.em(words) * fontPoints + PADDING_POINTS;
    }

    /** Width of so many letters with the room around them, points. */
    double points(int letters) {
        return letters * LETTER * fontPoints + PADDING_POINTS;
    }

    /** Lines that words take in a cell of a width. */
    int lines(String words, double points) {
        return Math.max(1, (int) Math.ceil((points(words) - PADDING_POINTS) / Math.max(1, points - PADDING_POINTS)));
    }
}
