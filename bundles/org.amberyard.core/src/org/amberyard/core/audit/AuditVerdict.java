package org.amberyard.core.audit;

/** What comes of holding a bill against a tariff. */
public enum AuditVerdict {
    /** Not every day of the period was metered, so nothing is worked out. */
    NOT_COVERED("not worked out: days are missing"),
    /** Printed and computed bill agree. */
    AGREES("agrees within 1 %"),
    /** The bills differ, and what the meter counted differs from what was billed: mend the data first. */
    DATA("differs; the meter’s data are not what was billed"),
    /** The bills differ though energy and demand agree, or the bill tells neither: the tariff is another. */
    TARIFF("differs; look at the tariff");

    private final String label;

    AuditVerdict(String label) {
        this.label = label;
    }

    /** Words for tables. */
    public String label() {
        return label;
    }
}
