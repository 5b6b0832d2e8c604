package org.amberyard.exchange.weather;

import java.time.LocalDate;

/** Air and sun of one day, gathered from its records. */
final class EpwDay {
    private final LocalDate date;
    private double lowC = Double.POSITIVE_INFINITY;
    private double highC = Double.NEGATIVE_INFINITY;
    private double sunWhPerM2;
    private int airs;
    private int suns;
    private int records;

    EpwDay(LocalDate date) {
        this.date = date;
    }

    /** Takes a record; what is missing in it is not a number. */
    void add(double airC, double sun) {
        records++;
        if (!Double.isNaN(airC)) {
            lowC = Math.min(lowC, airC);
            highC = Math.max(highC, airC);
            airs++;
        }
        if (!Double.isNaN(sun)) {
            sunWhPerM2 += sun;
            suns++;
        }
    }

    LocalDate date() {
        return date;
    }

    int records() {
        return records;
    }

    /** Records that told the air. */
    int airs() {
        return airs;
    }

    /** Records that told the sun. */
    int suns() {
        return suns;
    }

    /** Lowest air temperature, °C. */
    double lowC() {
        return lowC;
    }

    /** Highest air temperature, °C. */
    double highC() {
        return highC;
    }

    /** Sum of the sun on level ground, Wh/m². */
    double sunWhPerM2() {
        return sunWhPerM2;
    }
}
