package org.amberyard.core.money;

/** Money in which yearly amounts are stated. */
public enum MoneyBasis {
    /** Money of the base date. */
    CONSTANT,
    /** Money of the time of payment. */
    NOMINAL
}
