package org.amberyard.report.papers;

import java.util.Map;

/**
 * A figure as a table of the grant set prints it.
 *
 * @param number its digits, or words where the table has words
 * @param unit its unit; may be empty
 * @param money true where the unit is a currency, which stands before the number
 * @param table short name of the table, as T4a
 * @param mark what the table says of its figures, such as that they are not for submission; empty when it says nothing
 */
public record PrintedFigure(String number, String unit, boolean money, String table, String mark) {
    private static final String TO_UNIT = "\u00a0";
    /** Units that sentences write out. */
    private static final Map<String, String> IN_SENTENCES = Map.of("yr", "years", "mi", "miles", "gal", "gallons", "h", "hours", "L",
            "liters");

    /** The figure with its unit, as a sentence has it. */
    public String words() {
        if (unit.isEmpty()) {
            return number;
        }
        return money ? unit + TO_UNIT + number : number + TO_UNIT + (number.equals("1") ? unitInSentence().replaceAll("s$", "")
                : unitInSentence());
    }

    private String unitInSentence() {
        return IN_SENTENCES.getOrDefault(unit, unit);
    }
}
