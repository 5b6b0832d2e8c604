package org.amberyard.core.plan;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Upkeep of fleets of a study that have been asked for before. Prices move it in no other way than by the fleet, and many values of a
 * price lead to the same one. For one thread.
 */
final class KnownUpkeep {
    private static final int MOST_FLEETS = 8;

    private final Map<List<VehicleYear>, List<UpkeepYear>> known = new LinkedHashMap<>(MOST_FLEETS, 1, true) {
        private static final long serialVersionUID = 1;

        @Override
        protected boolean removeEldestEntry(Map.Entry<List<VehicleYear>, List<UpkeepYear>> eldest) {
            return size() > MOST_FLEETS;
        }
    };

    /**
     * Upkeep of each bus-year of a fleet, in the order of its years.
     *
     * @param study the study; from one question to the next nothing but its prices and its money rules may be another
     */
    List<UpkeepYear> of(StudyInput study, FleetHistory fleet, StudyFigures figures) {
        return known.computeIfAbsent(fleet.years(), years -> FleetUpkeep.of(study, fleet, figures));
    }
}
