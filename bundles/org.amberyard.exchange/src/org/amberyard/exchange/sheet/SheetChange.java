package org.amberyard.exchange.sheet;

/**
 * What a row changes in a study.
 *
 * @param sheet name of the sheet; empty for a text file
 * @param row number of the row in the file
 * @param element element that is changed or added
 * @param field field that is changed; empty where the element is added
 * @param before what it held; empty for a new element
 * @param after what it holds then
 */
public record SheetChange(String sheet, int row, String element, String field, String before, String after) {

    /** True when the element is new in the study. */
    public boolean isAddition() {
        return field.isEmpty();
    }

    /** In a line. */
    public String words() {
        return isAddition() ? element + " is new" : element + ", " + field + ": " + (before.isEmpty() ? "nothing" : before) + " → "
                + (after.isEmpty() ? "nothing" : after);
    }
}
