package org.amberyard.core.tariff;

/** What the quantity of a bill line counts. */
public enum BillUnit {
    /** Energy. */
    KWH("kWh"),
    /** Demand. */
    KW("kW"),
    /** Demand for so many months: where a period is no month, what is asked by the kW and month is asked for its part. */
    KW_MONTH("kW·month"),
    /** Months of service. */
    MONTH("month"),
    /** Days of service. */
    DAY("day"),
    /** Money, of which the price is a share. */
    MONEY("money");

    private final String label;

    BillUnit(String label) {
        this.label = label;
    }

    /** Words for tables. */
    public String label() {
        return label;
    }
}
