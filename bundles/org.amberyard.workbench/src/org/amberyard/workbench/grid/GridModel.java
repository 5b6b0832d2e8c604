package org.amberyard.workbench.grid;

import java.util.List;
import java.util.Optional;

/** What a {@link Grid} shows. Read-only unless it says otherwise. */
public interface GridModel {

    /** Number of rows, without the empty one for new entries. */
    int rows();

    /** Number of columns. */
    int columns();

    /** Header of a column, with its unit. */
    String header(int column);

    /** Name of a column, whatever the language and the units; the user's arrangement of columns is kept by it. */
    default String columnName(int column) {
        return header(column);
    }

    /** What a column holds, in a sentence or two. */
    default String headerTip(int column) {
        return "";
    }

    /** Text of a cell at a length for reading. */
    String text(int row, int column);

    /** Text of a cell at full length, for editing and copying. */
    default String fullText(int row, int column) {
        return text(row, column);
    }

    /** The same without thousands separators, for forms and programs that take none. */
    default String plainText(int row, int column) {
        return isFigure(row, column) ? PlainFigure.of(fullText(row, column)) : fullText(row, column);
    }

    /** What may be said of a cell when the pointer rests on it, besides its mark. */
    default String tip(int row, int column) {
        return "";
    }

    /** What people have noted of what stands in a cell; blank for nothing. */
    default String note(int row, int column) {
        return "";
    }

    /** True for figures, which stand at the right edge of their column. */
    default boolean isFigure(int row, int column) {
        return false;
    }

    /** True for cells that name others, such as the labels of a transposed table. */
    default boolean isLabel(int row, int column) {
        return false;
    }

    /** Number of leading columns that stay when the others scroll. */
    default int frozenColumns() {
        return 0;
    }

    /** How a cell looks apart from its text. */
    default CellLook look(int row, int column) {
        return isLabel(row, column) ? CellLook.LABEL : CellLook.PLAIN;
    }

    /** A cell in words, for those who hear it. */
    default String words(int row, int column) {
        return header(column) + ": " + text(row, column);
    }

    /** What is to be said about a cell. */
    default Optional<CellMark> mark(int row, int column) {
        return Optional.empty();
    }

    /** True when the cell takes entries. */
    default boolean isEditable(int row, int column) {
        return false;
    }

    /**
     * What a cell stands for, so that an entry can tell whether its cell still means the same after the table has changed.
     */
    default Object subject(int row, int column) {
        return row;
    }

    /** Texts to choose from; empty when any text may be typed. */
    default List<String> choices(int row, int column) {
        return List.of();
    }

    /** Texts that may be chosen in all rows of a column, for which its width leaves room; none where they are others from row to row. */
    default List<String> commonChoices(int column) {
        return List.of();
    }

    /**
     * True for a table of signs: the columns that scroll are equally wide, as wide as what they show, whatever there is to
     * choose; and Enter opens the choices of a cell.
     */
    default boolean isCompact() {
        return false;
    }

    /** True when an empty row at the end takes new entries. */
    default boolean hasEntryRow() {
        return false;
    }

    /**
     * Enters texts from a cell on to the right and down, as one step that can be undone; rows past the last are added.
     * A text that is null leaves its cell as it is, and so does each of several that is refused.
     *
     * @return the texts of several that were refused, row by row
     * @throws CellRefusal when nothing has changed: the block does not fit, or its only text is refused
     */
    default List<CellRefusal> put(int row, int column, List<List<String>> block) throws CellRefusal {
        throw new CellRefusal("", "", row, column);
    }

    /**
     * Empties cells, or brings them back to their defaults, as one step that can be undone.
     *
     * @param top first row
     * @param bottom last row; may be the empty one
     * @param columns the columns
     */
    default void clear(int top, int bottom, List<Integer> columns) {
        // a table that is only read has nothing to empty
    }

    /** False for a table of one element, whose single column of values needs no words above it. */
    default boolean hasHeader() {
        return true;
    }

    /** Lines that headers may take before columns grow wider for them. */
    default int headerLines() {
        return 2;
    }

    /** True when the last column takes the width that the others leave. */
    default boolean stretchesLast() {
        return false;
    }

    /** Sorts the rows by a column, or brings them back to their own order. */
    default void sort(int column, boolean ascending) {
        // most tables have one order only
    }

    /** True when a click on a header sorts. */
    default boolean isSortable() {
        return false;
    }
}
