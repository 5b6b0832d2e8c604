package org.amberyard.core.battery;

/**
 * How a chemistry loses capacity. A law turns a year of stress into two rates of loss, one by time and one by cycles; how they
 * add up over years of different stress stands in {@link LossGrowth}.
 */
public sealed interface FadeLaw permits LinearFade, LfpFade, NmcFade {

    /** Rates of loss under a year of stress that goes on. */
    FadeRate rate(PackStress stress);
}
