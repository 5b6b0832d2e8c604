package org.amberyard.exchange;

/**
 * Something in a file that keeps it from being imported.
 *
 * @param file name of the file
 * @param row row in the file, the header being 1; 0 when the file as a whole is meant
 * @param column header of the column; blank when the row as a whole is meant
 * @param message what is wrong and what to do
 */
public record ImportProblem(String file, int row, String column, String message) {
    private static final int MOST_COLUMN = 80;
    private static final int MOST_MESSAGE = 1200;

    /** What is quoted from a file may be of any length; its middle is then left out. */
    public ImportProblem {
        column = shortened(column, MOST_COLUMN);
        message = shortened(message, MOST_MESSAGE);
    }

    private static String shortened(String text, int most) {
        return text.length() <= most ? text : text.substring(0, most / 2) + "…" + text.substring(text.length() - most / 3);
    }

    @Override
    public String toString() {
        String place = row == 0 ? file : file + ", row " + row;
        return (column.isEmpty() ? place : place + ", column “" + column + "”") + ": " + message;
    }
}
