package org.amberyard.core.plan;

import java.util.OptionalDouble;

/**
 * Figures of a fiscal year that meters, bills and books tell. One that nobody has is empty.
 *
 * @param electricityKwh energy at the meter for charging, ports at rest included, kWh
 * @param electricityCost bills for it, money of the year
 * @param fuelL fuel of engines and heaters, L
 * @param fuelCost what it cost, money of the year
 * @param upkeepCost parts and labour, money of the year
 */
public record YearFigures(OptionalDouble electricityKwh, OptionalDouble electricityCost, OptionalDouble fuelL, OptionalDouble fuelCost,
        OptionalDouble upkeepCost) {
    /** None is known. */
    public static final YearFigures UNKNOWN = new YearFigures(OptionalDouble.empty(), OptionalDouble.empty(), OptionalDouble.empty(),
            OptionalDouble.empty(), OptionalDouble.empty());
}
