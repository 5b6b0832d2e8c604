package org.amberyard.study.roll;

/**
 * A field of a study that rolling it has changed, or an element that came or went.
 *
 * @param kind kind of the element
 * @param element the element, with its kind
 * @param field label of the field; blank where the whole element came or went
 * @param before value before, with its unit; blank where there was none
 * @param after value after, with its unit; blank where there is none
 * @param why why
 */
public record RollChange(String kind, String element, String field, String before, String after, String why) {

    /** In one line. */
    public String words() {
        if (field.isEmpty()) {
            return element + " " + (after.isEmpty() ? "goes" : "is added") + ": " + why;
        }
        return element + ", " + field + ": " + (before.isEmpty() ? "empty" : before) + " → " + (after.isEmpty() ? "empty" : after)
                + " (" + why + ")";
    }
}
