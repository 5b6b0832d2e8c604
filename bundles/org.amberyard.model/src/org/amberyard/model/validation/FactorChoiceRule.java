package org.amberyard.model.validation;

import java.util.HashSet;
import java.util.Set;
import org.amberyard.model.air.AirPackage;
import org.amberyard.model.air.FuelEmission;
import org.amberyard.model.air.WarmingSet;
import org.amberyard.model.air.WearEmission;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;

/** Fuels and body types have their factors once, and own warming potentials are entered only to be used. */
final class FactorChoiceRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        EmissionFactors factors = study.getEmissionFactors();
        if (factors == null) {
            return;
        }
        checkWarming(factors, Literals.EMISSION_FACTORS__GWP_CH4, findings);
        checkWarming(factors, Literals.EMISSION_FACTORS__GWP_N2O, findings);
        Set<String> seen = new HashSet<>();
        for (FuelEmission row : factors.getFuelEmissions()) {
            if (!seen.add(ElementNames.of(row))) {
                findings.error(row, AirPackage.Literals.FUEL_EMISSION__FUEL, "the fuel appears more than once; keep one.");
            }
        }
        for (WearEmission row : factors.getWearEmissions()) {
            BodyLetters.check(row, AirPackage.Literals.WEAR_EMISSION__BODY_TYPES, findings);
            if (!seen.add(ElementNames.of(row))) {
                findings.error(row, AirPackage.Literals.WEAR_EMISSION__BODY_TYPES, "the body types appear more than once; keep one.");
            }
        }
    }

    private static void checkWarming(EmissionFactors factors, EAttribute field, Findings findings) {
        if (factors.getWarmingSet() != WarmingSet.OWN && !factors.eGet(field).equals(field.getDefaultValue())) {
            findings.warning(factors, field, findings.fact(factors, field) + " but counts only when own values are chosen; the study "
                    + "uses " + factors.getWarmingSet().getLiteral() + ".");
        }
    }
}
