package org.amberyard.report.document;

/** How the rows of a table are set on paper. */
enum RowSetting {
    /** Eight points, with room around them. */
    OPEN("", "Table", 4.7, 9),
    /** Half a point less and little room, for tables of many rows. */
    CLOSE(" close", "Close", 4.4, 8);

    private final String look;
    private final String style;
    private final double characterPoints;
    private final double paddingPoints;

    RowSetting(String look, String style, double characterPoints, double paddingPoints) {
        this.look = look;
        this.style = style;
        this.characterPoints = characterPoints;
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

    /** Width of words in a cell with what is left and right of them, points. */
    double points(int characters) {
        return characters * characterPoints + paddingPoints;
    }

    /** Lines that words take in a cell of a width. */
    int lines(int characters, double points) {
        return Math.max(1, (int) Math.ceil(characters * characterPoints / Math.max(1, points - paddingPoints)));
    }
}
