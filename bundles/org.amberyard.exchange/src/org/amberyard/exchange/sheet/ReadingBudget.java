package org.amberyard.exchange.sheet;

import java.util.Locale;
import java.util.function.Supplier;

/** What may be held in memory of one file, whatever its kind: so many cells, blank ones between others among them, and so much text. */
final class ReadingBudget {
    /** Most characters of a cell, as in spreadsheet programs. */
    static final int LONGEST_CELL = 32_767;
    private static final int MOST_CELLS = 2_000_000;
    private static final int MOST_CHARACTERS = 40_000_000;

    private long cells;
    private long characters;

    /**
     * Counts cells.
     *
     * @throws TooMuch when there are more than a file may have
     */
    void cells(int number) {
        cells += number;
        if (cells > MOST_CELLS) {
            throw new TooMuch("The file has more than 2,000,000 cells; remove sheets, columns and rows that are not needed.");
        }
    }

    /**
     * Holds the length of a cell against the longest.
     *
     * @param where the cell, for the message
     * @param length number of characters
     * @throws TooMuch when it is longer
     */
    void cell(Supplier<String> where, int length) {
        if (length > LONGEST_CELL) {
            throw new TooMuch(String.format(Locale.ROOT, "%s holds %,d characters; a cell may hold at most 32,767.", where.get(), length));
        }
    }

    /**
     * Counts text that is held.
     *
     * @param where the cell, for the message
     * @param length number of characters
     * @throws TooMuch when a cell or the file has more than it may
     */
    void text(Supplier<String> where, int length) {
        cell(where, length);
        characters += length;
        if (characters > MOST_CHARACTERS) {
            throw new TooMuch("The file holds more than 40,000,000 characters of text; remove sheets, columns and rows that are not needed.");
        }
    }
}
