package org.amberyard.model.validation;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.air.AirPackage;
import org.amberyard.model.air.HealthCost;
import org.amberyard.model.air.SocialCost;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EObject;

/** Tables of social and health costs have each cell once, ranges in order, and a column for the rate that the study chooses. */
final class HarmRule implements Rule {
    private static final double SAME_RATE = 1e-9;

    @Override
    public void check(Study study, Findings findings) {
        EmissionFactors factors = study.getEmissionFactors();
        if (factors == null) {
            return;
        }
        once(factors.getSocialCosts(), AirPackage.Literals.SOCIAL_COST__YEAR, findings);
        once(factors.getHealthCosts(), AirPackage.Literals.HEALTH_COST__POLLUTANT, findings);
        for (HealthCost row : factors.getHealthCosts()) {
            if (row.getLowPerT() > row.getHighPerT()) {
                findings.error(row, AirPackage.Literals.HEALTH_COST__HIGH_PER_T, findings.fact(row,
                        AirPackage.Literals.HEALTH_COST__LOW_PER_T) + ", above its high end "
                        + findings.value(row, AirPackage.Literals.HEALTH_COST__HIGH_PER_T) + "; were they swapped?");
            }
        }
        checkRate(factors, findings);
    }

    private static void once(List<? extends EObject> rows, EAttribute field, Findings findings) {
        Set<String> seen = new HashSet<>();
        rows.stream().filter(r -> !seen.add(ElementNames.of(r)))
                .forEach(r -> findings.error(r, field, "it appears more than once; keep one."));
    }

    private static void checkRate(EmissionFactors factors, Findings findings) {
        List<SocialCost> rows = factors.getSocialCosts();
        EAttribute chosen = StudyPackage.Literals.EMISSION_FACTORS__SOCIAL_COST_RATE;
        if (!rows.isEmpty() && rows.stream().noneMatch(r -> Math.abs(r.getRate() - factors.getSocialCostRate()) < SAME_RATE)) {
            String rates = rows.stream().map(SocialCost::getRate).distinct().sorted()
                    .map(r -> findings.value(factors, chosen, r)).collect(Collectors.joining(", "));
            findings.error(factors, chosen, findings.fact(factors, chosen) + ", for which the table has no column; choose one of "
                    + rates + ".");
        }
    }
}
