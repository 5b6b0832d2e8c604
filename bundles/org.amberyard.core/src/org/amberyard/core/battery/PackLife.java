package org.amberyard.core.battery;

/**
 * How a pack ages and when it is at its end.
 *
 * @param cycleLimit full cycles after which it is replaced
 * @param endOfLifeShare present over nominal capacity at which it is replaced
 * @param ageLimitYears age at which it is replaced
 * @param storageShare state of charge on days without service, over the usable energy
 * @param fade law by which it loses capacity
 */
public record PackLife(double cycleLimit, double endOfLifeShare, double ageLimitYears, double storageShare, FadeLaw fade) {
}
