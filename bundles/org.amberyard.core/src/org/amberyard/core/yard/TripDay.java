package org.amberyard.core.yard;

/**
 * The trip of a bus on the busiest day of trips of a month.
 *
 * @param month month, 0 for January
 * @param extendedYear true on a day of the extended-year programme, false on a school day
 * @param departureMin departure from the yard, minutes after midnight
 * @param returnMin return to the yard, minutes after midnight of the trip's day; beyond 1,440 on the next
 * @param batteryKwh energy that the trip takes from the battery, kWh
 */
public record TripDay(int month, boolean extendedYear, double departureMin, double returnMin, double batteryKwh) {

    /**
     * A month of service.
     *
     * @param month month, 0 for January
     * @param extendedYear true for the extended-year programme, false for school
     */
    public record Month(int month, boolean extendedYear) {
    }

    /** The month of service in which it is. */
    public Month in() {
        return new Month(month, extendedYear);
    }

    boolean on(ServiceMonth service) {
        return month == service.month() && extendedYear == service.extendedYear();
    }

    /** True when the bus is away at some time between two moments. */
    boolean awayBetween(double fromMin, double toMin) {
        return departureMin < toMin && fromMin < returnMin;
    }

    /** The same taking a share of the energy. */
    TripDay times(double share) {
        return new TripDay(month, extendedYear, departureMin, returnMin, share * batteryKwh);
    }
}
