package org.amberyard.core.upkeep;

/**
 * What wears a bus, counted over a stretch of its life.
 *
 * @param km distance, km
 * @param months time, months
 * @param hours time in service, h
 * @param brakeKwh energy turned to heat in the friction brakes, kWh
 */
public record Meters(double km, double months, double hours, double brakeKwh) {

    /** A bus that has just been built, or a task that has just been done. */
    public static final Meters ZERO = new Meters(0, 0, 0, 0);

    /** What a year of driving counts. */
    static Meters of(WearYear year) {
        return new Meters(year.km(), WearYear.MONTHS, year.hours(), year.brakeKwh());
    }

    /** These and others. */
    public Meters plus(Meters o) {
        return new Meters(km + o.km, months + o.months, hours + o.hours, brakeKwh + o.brakeKwh);
    }

    /** These a number of times. */
    public Meters times(double n) {
        return new Meters(n * km, n * months, n * hours, n * brakeKwh);
    }

    /** The same with another distance. */
    public Meters withKm(double otherKm) {
        return new Meters(otherKm, months, hours, brakeKwh);
    }
}
