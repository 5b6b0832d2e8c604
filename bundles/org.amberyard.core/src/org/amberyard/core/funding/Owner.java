package org.amberyard.core.funding;

/** Who owns a bus. */
public enum Owner {
    /** The district itself. */
    DISTRICT("owned"),
    /** A lessor, from whom the district has it. */
    LESSOR("leased"),
    /** A contractor, who drives for the district. */
    CONTRACTOR("a contractor's");

    private final String label;

    Owner(String label) {
        this.label = label;
    }

    /** What the bus is then, for tables. */
    public String label() {
        return label;
    }
}
