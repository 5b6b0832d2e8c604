package org.amberyard.core.plan;

import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;

/**
 * A bus of the present fleet, which also names its place in the fleet. Years count from the base year.
 *
 * @param name bus number
 * @param role what the place is for
 * @param type place of its type in the list of types
 * @param route place of its route in the list of routes, if it has one
 * @param inServiceYear year in which it entered service; negative before the base year
 * @param odometerKm odometer at the base date, km
 * @param otherKmPerYear distance per year beyond the route, km
 * @param idleHoursPerYear yard idling of an engine per year, h
 * @param measuredKmPerL fuel economy by the fuel log, all fuel over all distance, if it was measured
 * @param retirementYear year in which it is due, if that is set
 * @param measuredPack measured state of health of its pack, if there is one
 * @param record what is known of its years before the base date
 */
public record BusInput(String name, Role role, int type, OptionalInt route, int inServiceYear, double odometerKm,
        double otherKmPerYear, double idleHoursPerYear, OptionalDouble measuredKmPerL, OptionalInt retirementYear,
        Optional<MeasuredPack> measuredPack, BusRecord record) {

    /** A bus of whose past only age and odometer are known. */
    public BusInput(String name, Role role, int type, OptionalInt route, int inServiceYear, double odometerKm,
            double otherKmPerYear, double idleHoursPerYear, OptionalDouble measuredKmPerL, OptionalInt retirementYear,
            Optional<MeasuredPack> measuredPack) {
        this(name, role, type, route, inServiceYear, odometerKm, otherKmPerYear, idleHoursPerYear, measuredKmPerL,
                retirementYear, measuredPack, BusRecord.NONE);
    }

    /** A bus whose pack, if it has one, was not measured. */
    public BusInput(String name, Role role, int type, OptionalInt route, int inServiceYear, double odometerKm,
            double otherKmPerYear, double idleHoursPerYear, OptionalDouble measuredKmPerL, OptionalInt retirementYear) {
        this(name, role, type, route, inServiceYear, odometerKm, otherKmPerYear, idleHoursPerYear, measuredKmPerL,
                retirementYear, Optional.empty());
    }

    /** The same in service from another year. */
    BusInput from(int year) {
        return new BusInput(name, role, type, route, year, odometerKm, otherKmPerYear, idleHoursPerYear, measuredKmPerL,
                retirementYear, measuredPack, record);
    }
}
