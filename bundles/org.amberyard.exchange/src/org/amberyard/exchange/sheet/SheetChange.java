package org.amberyard.exchange.sheet;

/**
 * What a row changes in a study.
 *
 * @param sheet name of the sheet; empty for a text file
 * @param row number of the row in the file
 * @param element element that is changed or added
 * @param isNew true for a new element and its values
 * @param field field that gets a value; empty where the element is added
 * @param typed what stands in the cell that tells the value; empty where it is worked out from several, or from none
 * @param before what the field held; empty for a new element
 * @param after what it holds then, with its unit
 * @param isWhole true for a change by itself; false for what an element holds that comes or goes, which is one change
 */
public record SheetChange(String sheet, int row, String element, boolean isNew, String field, String typed, String before, String after,
        boolean isWhole) {

    /** True when the element is new in the study. */
    public boolean isAddition() {
        return field.isEmpty();
    }

    /** In a line. */
    public String words() {
        if (isAddition()) {
            return element + " is new";
        }
        if (isNew) {
            return element + ", " + field + ": " + (typed.isEmpty() ? "" : "“" + typed + "” → ") + orNothing(after);
        }
        return element + ", " + field + ": " + orNothing(before) + " → " + orNothing(after);
    }

    private static String orNothing(String value) {
        return value.isEmpty() ? "nothing" : value;
    }
}
