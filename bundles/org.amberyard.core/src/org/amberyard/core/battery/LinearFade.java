package org.amberyard.core.battery;

/**
 * Loss of capacity, linear in time and in full cycles; the two add up. For sets of a maker or a user.
 *
 * @param calendarPerYear share of the nominal energy lost per year
 * @param perCycle share of the nominal energy lost per full cycle
 */
public record LinearFade(double calendarPerYear, double perCycle) implements FadeLaw {

    @Override
    public FadeRate rate(PackStress stress) {
        return new FadeRate(new LossGrowth(1, calendarPerYear), new LossGrowth(1, perCycle * stress.fullCycles()));
    }
}
