package org.amberyard.report.document;

/** How the rows of a table are set on paper. */
public enum RowSetting {
    /** Eight points, with room around them. */
    OPEN("", "Table", 8, 9),
    /** Half a point less and little room, for tables of many rows. */
    CLOSE(" close", "Close", 7.5, 9),
    /** Six points, for tables that a page has no room for otherwise. */
    DENSE(" close dense", "Dense", 6, 5);

    /** Width of a letter in the size of the letters, on the average. */
    private static final double LETTER = 0.55;

    private final String look;
    private final String style;
    private final double fontPoints;
    /** Room left and right of words; a little more than there is, for some letters are wider than they are taken to be. */
    private final double paddingPoints;

    RowSetting(String look, String style, double fontPoints, double paddingPoints) {
        this.look = look;
        this.style = style;
        this.fontPoints = fontPoints;
        this.paddingPoints = paddingPoints;
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
        return TextWidth.em(words) * fontPoints + paddingPoints;
    }

    /** Width of so many letters with the room around them, points. */
    double points(int letters) {
        return letters * LETTER * fontPoints + paddingPoints;
    }

    /** Lines that words take in a cell of a width. */
    int lines(String words, double points) {
        return Math.max(1, (int) Math.ceil((points(words) - paddingPoints) / Math.max(1, points - paddingPoints)));
    }
}
