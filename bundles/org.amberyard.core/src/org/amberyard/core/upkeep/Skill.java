package org.amberyard.core.upkeep;

/** Who may do a task, from least to most training. */
public enum Skill {
    DRIVER("driver"), TECHNICIAN("technician"), SENIOR("senior technician"), HIGH_VOLTAGE("high-voltage technician");

    private final String word;

    Skill(String word) {
        this.word = word;
    }

    /** Name for tables and charts. */
    public String word() {
        return word;
    }
}
