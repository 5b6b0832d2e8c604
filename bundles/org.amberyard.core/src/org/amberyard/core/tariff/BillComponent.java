package org.amberyard.core.tariff;

/** Parts of a bill in the order in which they are printed. */
public enum BillComponent {
    /** Charges per month or day of service. */
    CUSTOMER("customer charge"),
    /** Charges per energy. */
    ENERGY("energy charge"),
    /** Charges per demand. */
    DEMAND("demand charge"),
    /** Surcharges and credits beside the base rates. */
    RIDER("rider"),
    /** What lifts a bill to its minimum. */
    MINIMUM("minimum bill"),
    /** Taxes. */
    TAX("tax");

    private final String label;

    BillComponent(String label) {
        this.label = label;
    }

    /** Words for tables. */
    public String label() {
        return label;
    }
}
