package org.amberyard.core.battery;

/**
 * How worn a pack is.
 *
 * @param years age
 * @param fullCycles full cycles so far
 * @param fade capacity lost
 */
public record PackWear(double years, double fullCycles, FadeState fade) {

    /** A new pack. */
    public static final PackWear NEW = new PackWear(0, 0, FadeState.NEW);

    /** Present over nominal capacity. */
    public double health() {
        return fade.health();
    }

    /** After a time of equal years. */
    public PackWear after(FadeRate rate, double fullCyclesPerYear, double time) {
        return new PackWear(years + time, fullCycles + fullCyclesPerYear * time, fade.after(rate, time));
    }
}
