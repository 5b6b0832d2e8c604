package org.amberyard.exchange;

/** What the numbers of a meter's file are. */
enum MeterUnit {
    /** Mean power of the interval. */
    KW("kW", "kwh"),
    /** Energy of the interval. */
    KWH("kWh", "kw");

    private final String label;
    private final String other;

    MeterUnit(String label, String other) {
        this.label = label;
        this.other = other;
    }

    /** Mean power of an interval, kW. */
    double kw(double number, int stepMin) {
        return this == KW ? number : number * 60 / stepMin;
    }

    String label() {
        return label;
    }

    /** The ending of a header that would say the other unit. */
    String otherEnding() {
        return other;
    }
}
