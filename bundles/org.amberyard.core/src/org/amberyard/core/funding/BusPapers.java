package org.amberyard.core.funding;

import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is told of a bus of today that no calculation needs but programmes ask for. What is not told is empty, never zero.
 *
 * @param gvwrKg gross vehicle weight rating, kg
 * @param daysPerWeek days of a school week on which it is in service
 * @param owner who owns it
 */
public record BusPapers(OptionalDouble gvwrKg, OptionalDouble daysPerWeek, Optional<Owner> owner) {

    /** Nothing is told. */
    public static final BusPapers NOT_TOLD = new BusPapers(OptionalDouble.empty(), OptionalDouble.empty(), Optional.empty());
}
