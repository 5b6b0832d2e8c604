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

    @Override
    public String toString() {
        String place = row == 0 ? file : file + ", row " + row;
        return (column.isEmpty() ? place : place + ", column “" + column + "”") + ": " + message;
    }
}
