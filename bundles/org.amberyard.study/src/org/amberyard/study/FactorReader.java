package org.amberyard.study;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.core.air.Factor;
import org.amberyard.core.air.FactorOrigin;
import org.amberyard.core.air.FactorQuality;
import org.amberyard.core.air.FactorUnit;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.why.InputRef;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Reads emission factors of an element, with where each comes from. */
final class FactorReader {
    private final EObject element;
    private final String region;

    FactorReader(EObject element, String region) {
        this.element = element;
        this.region = region == null ? "" : region;
    }

    /** Rates of a cause; a field that is empty is not known. */
    EmissionRates rates(EmissionCause cause, Map<Pollutant, EAttribute> fields) {
        return EmissionRates.of(cause, known(fields));
    }

    /** The factors of fields that are filled in. */
    Map<Pollutant, Factor> known(Map<Pollutant, EAttribute> fields) {
        Map<Pollutant, Factor> known = new EnumMap<>(Pollutant.class);
        fields.forEach((pollutant, field) -> factor(field).ifPresent(f -> known.put(pollutant, f)));
        return known;
    }

    /** The factor of a field; empty where it is not filled in. */
    Optional<Factor> factor(EAttribute field) {
        return Optional.ofNullable((Double) element.eGet(field))
                .map(v -> new Factor(v, FactorUnit.of(FieldInfo.of(field).unitToken()), origin(field)));
    }

    /** Where a field comes from. */
    FactorOrigin origin(EAttribute field) {
        InputSource source = InputSource.of(element, field);
        boolean single = element.eContainmentFeature() == null || !element.eContainmentFeature().isMany();
        InputRef input = new InputRef(element.eClass().getName(), single ? "" : ElementNames.of(element), field.getName());
        return new FactorOrigin(input, region, quality(source), orEmpty(source.citation()), orEmpty(source.date()));
    }

    private static FactorQuality quality(InputSource source) {
        return Arrays.stream(FactorQuality.values()).filter(q -> q.label().equals(source.quality())).findFirst().orElseThrow();
    }

    private static String orEmpty(String text) {
        return text == null ? "" : text;
    }
}
