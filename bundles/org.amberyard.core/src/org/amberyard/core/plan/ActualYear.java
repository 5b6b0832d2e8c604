package org.amberyard.core.plan;

import java.util.OptionalDouble;

/**
 * What came of a year that is over. A figure that nobody has is empty.
 *
 * @param year year, counted from the base year; negative before it
 * @param electricityKwh energy at the meter for charging, kWh
 * @param electricityCost bills for it, money of the year
 * @param fuelL fuel of engines and heaters, L
 * @param fuelCost what it cost, money of the year
 * @param upkeepCost parts and labour, money of the year
 */
public record ActualYear(int year, OptionalDouble electricityKwh, OptionalDouble electricityCost, OptionalDouble fuelL,
        OptionalDouble fuelCost, OptionalDouble upkeepCost) {
}
