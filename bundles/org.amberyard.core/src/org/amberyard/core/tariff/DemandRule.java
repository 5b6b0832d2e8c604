package org.amberyard.core.tariff;

/** What sets a billed demand. */
public enum DemandRule {
    /** The highest demand of the month. */
    MEASURED,
    /** The highest demand of earlier months. */
    RATCHET,
    /** The least demand that the tariff bills. */
    MINIMUM
}
