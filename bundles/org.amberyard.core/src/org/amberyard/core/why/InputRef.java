package org.amberyard.core.why;

/**
 * Names an input of a study, so that its source can be looked up where the study is known.
 *
 * @param kind kind of its element as the model names it, for instance {@code FuelPrice}
 * @param element name of the element as the user sees it, for instance a bus number; empty where there is only one
 * @param field name of the input as the model names it, for instance {@code pricePerL}; empty for all inputs of the element
 */
public record InputRef(String kind, String element, String field) {

    /** All inputs of an element. */
    public static InputRef allOf(String kind, String element) {
        return new InputRef(kind, element, "");
    }

    /** True when it stands for all inputs of its element. */
    public boolean isWholeElement() {
        return field.isEmpty();
    }
}
