package org.amberyard.core.plan;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalInt;

/**
 * Years for which owners have marked buses to retire. A mark goes with its bus, wherever that stands, but a plan that moves the
 * bus in that year or later keeps it on.
 */
final class RetirementMarks {
    private final Map<String, Integer> years = new HashMap<>();

    RetirementMarks(StudyInput study) {
        study.buses().forEach(bus -> bus.retirementYear().ifPresent(year -> years.put(bus.name(), year)));
    }

    /** Year, counted from the base year, from which on a bus is to be retired; empty where a mark lies before a year, or none is. */
    OptionalInt after(int year, Vehicle vehicle) {
        Integer marked = years.get(vehicle.unit());
        return marked == null || marked <= year ? OptionalInt.empty() : OptionalInt.of(marked);
    }
}
