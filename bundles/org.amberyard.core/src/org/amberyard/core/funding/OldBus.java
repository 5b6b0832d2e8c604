package org.amberyard.core.funding;

/**
 * The bus whose place a new one takes.
 *
 * @param unit its number
 * @param bodyType trade letter of its body type
 * @param diesel true for a diesel engine
 * @param engineModelYear calendar year of the model of its engine
 * @param leaves true when it leaves the fleet in the same year, false when it moves to another place
 * @param papers what else is told of it
 */
public record OldBus(String unit, String bodyType, boolean diesel, int engineModelYear, boolean leaves, BusPapers papers) {

    /** A bus of which nothing else is told. */
    public OldBus(String unit, String bodyType, boolean diesel, int engineModelYear, boolean leaves) {
        this(unit, bodyType, diesel, engineModelYear, leaves, BusPapers.NOT_TOLD);
    }
}
