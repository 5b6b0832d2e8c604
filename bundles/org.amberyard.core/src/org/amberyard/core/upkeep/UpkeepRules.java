package org.amberyard.core.upkeep;

import java.util.List;
import java.util.Map;
import org.amberyard.core.math.Checks;

/**
 * Upkeep of the fleet by tasks. A type to which no task applies costs by its rate per distance.
 *
 * @param tasks tasks of all types; empty where rates alone are used
 * @param labourRatePerHour labour, base-date money per hour
 * @param highVoltageHours hours of high-voltage work that one trained person can do in a year, h
 * @param shopHours labour that the shop can give to buses in a year, h; zero where that is not known
 * @param measuredPerKm measured upkeep of today's buses by bus number, money/km; see {@link UpkeepCalibration}
 * @param earlierFactors measured over modelled upkeep of earlier years by the name of the vehicle type; they count where no
 *            bus of the type is measured
 */
public record UpkeepRules(List<MaintenanceTask> tasks, double labourRatePerHour, double highVoltageHours, double shopHours,
        Map<String, Double> measuredPerKm, Map<String, Double> earlierFactors) {

    /** Rates alone. */
    public static final UpkeepRules BY_RATE = new UpkeepRules(List.of(), 0, 1, 0, Map.of());

    /** Rules of a fleet of which no earlier work orders are known. */
    public UpkeepRules(List<MaintenanceTask> tasks, double labourRatePerHour, double highVoltageHours, double shopHours,
            Map<String, Double> measuredPerKm) {
        this(tasks, labourRatePerHour, highVoltageHours, shopHours, measuredPerKm, Map.of());
    }

    /** @throws IllegalArgumentException when the rate is negative or the hours are not above zero */
    public UpkeepRules {
        Checks.notNegative("Labour rate", labourRatePerHour);
        Checks.positive("High-voltage hours per person", highVoltageHours);
        Checks.notNegative("Shop hours per year", shopHours);
        tasks = List.copyOf(tasks);
        measuredPerKm = Map.copyOf(measuredPerKm);
        earlierFactors = Map.copyOf(earlierFactors);
    }

    /** Tasks that apply to a powertrain and body type. */
    public List<MaintenanceTask> tasks(Powertrain powertrain, String bodyType) {
        return tasks.stream().filter(t -> t.scope().covers(powertrain, bodyType)).toList();
    }
}
