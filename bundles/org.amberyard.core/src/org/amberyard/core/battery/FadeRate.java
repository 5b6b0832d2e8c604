package org.amberyard.core.battery;

/**
 * How fast a pack loses capacity under one year's stress.
 *
 * @param calendar loss to time
 * @param cycling loss to cycles
 */
public record FadeRate(LossGrowth calendar, LossGrowth cycling) {

    /** The same with all cycles of the year multiplied. */
    public FadeRate withCycles(double factor) {
        return new FadeRate(calendar, cycling.times(factor));
    }
}
