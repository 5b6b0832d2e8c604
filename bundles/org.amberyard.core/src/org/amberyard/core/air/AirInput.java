package org.amberyard.core.air;

import java.util.Map;

/**
 * Everything that decides what a study says of the air.
 *
 * @param factors emission factors
 * @param engineModelYears model year of the engine by bus of today; an engine that is bought later has that of its purchase
 * @param social social cost of greenhouse gases
 * @param health harm to health
 * @param grants terms by which grants are judged
 */
public record AirInput(AirFactors factors, Map<String, Integer> engineModelYears, SocialCosts social, HealthCosts health,
        GrantTerms grants) {

    public AirInput {
        engineModelYears = Map.copyOf(engineModelYears);
    }

    /** Model year of the engine of a bus by its name, with the calendar year in which it entered service. */
    public int engineModelYear(String unit, int inService) {
        return engineModelYears.getOrDefault(unit, inService);
    }
}
