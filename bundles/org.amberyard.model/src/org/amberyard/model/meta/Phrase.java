package org.amberyard.model.meta;

/** Labels of the model inside and at the start of a sentence. */
public final class Phrase {
    private Phrase() {
    }

    /** The label inside a sentence: {@code Top speed} becomes {@code top speed}; {@code VIN} and {@code AC power} stay. */
    public static String inside(String label) {
        boolean abbreviation = label.length() > 1 && !Character.isLowerCase(label.charAt(1)) && label.charAt(1) != ' ';
        return label.isEmpty() || abbreviation ? label : Character.toLowerCase(label.charAt(0)) + label.substring(1);
    }

    /**
     * The label within a name: no comma and no colon of it is taken for one of the sentence. {@code Curve: base use} becomes
     * {@code curve – base use}.
     */
    public static String inName(String label) {
        return inside(label).replace(": ", " – ").replace(", ", " – ");
    }

    /** The text at the start of a sentence. */
    public static String start(String text) {
        return text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
