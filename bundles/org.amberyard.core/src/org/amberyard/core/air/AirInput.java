package org.amberyard.core.air;

import java.util.Map;

/**
 * Everything that decides what a study says of the air.
 *
 * @param factors emission factors
 * @param engineModelYears model year of the engine by bus of today, as entered
 * @param social social cost of greenhouse gases
 * @param health harm to health
 * @param grants terms by which grants are judged
 */
public record AirInput(AirFactors factors, Map<String, Integer> engineModelYears, SocialCosts social, HealthCosts health,
        GrantTerms grants) {

    public AirInput {
        engineModelYears = Map.copyOf(engineModelYears);
    }
}
