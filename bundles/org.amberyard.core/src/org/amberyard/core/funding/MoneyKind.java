package org.amberyard.core.funding;

/** Whose money a programme pays. A tax credit is money of its own kind: in a match it counts as neither federal nor own. */
public enum MoneyKind {
    FEDERAL("federal"), STATE("state"), UTILITY("utility"), LOCAL("local"), TAX_CREDIT("tax credit");

    private final String label;

    MoneyKind(String label) {
        this.label = label;
    }

    /** Name for tables. */
    public String label() {
        return label;
    }
}
