package org.amberyard.reference;

import java.util.EnumMap;
import java.util.Map;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.core.air.Factor;
import org.amberyard.core.air.FactorOrigin;
import org.amberyard.core.air.FactorQuality;
import org.amberyard.core.air.FactorUnit;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.why.InputRef;

/** Rates made of published figures; each check names its source. */
final class PublishedRates {
    private PublishedRates() {
    }

    static EmissionRates of(EmissionCause cause, FactorUnit unit, Map<Pollutant, Double> values) {
        Map<Pollutant, Factor> known = new EnumMap<>(Pollutant.class);
        values.forEach((pollutant, value) -> known.put(pollutant, new Factor(value, unit, new FactorOrigin(
                new InputRef("Published", "", unit.symbol()), "", FactorQuality.PUBLISHED, "beside the check", ""))));
        return EmissionRates.of(cause, known);
    }
}
