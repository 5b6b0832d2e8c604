package org.amberyard.core.battery;

/**
 * Capacity that a pack has lost, as shares of the nominal capacity.
 *
 * @param calendarLoss lost to time
 * @param cycleLoss lost to cycles
 */
public record FadeState(double calendarLoss, double cycleLoss) {

    /** A new pack. */
    public static final FadeState NEW = new FadeState(0, 0);

    /** Present over nominal capacity; never below zero. */
    public double health() {
        return Math.max(0, 1 - calendarLoss - cycleLoss);
    }

    /** After a time at a rate. */
    public FadeState after(FadeRate rate, double years) {
        return new FadeState(rate.calendar().after(calendarLoss, years), rate.cycling().after(cycleLoss, years));
    }

    /**
     * The state with the health that was measured: both losses keep their proportion. Where none was modelled yet, the two
     * causes share the measured loss evenly (common practice, no source).
     */
    public FadeState measured(double health) {
        double loss = 1 - health;
        double modelled = calendarLoss + cycleLoss;
        return modelled > 0 ? new FadeState(loss * calendarLoss / modelled, loss * cycleLoss / modelled)
                : new FadeState(loss / 2, loss / 2);
    }
}
