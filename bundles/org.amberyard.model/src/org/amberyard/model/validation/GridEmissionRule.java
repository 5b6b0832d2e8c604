package org.amberyard.model.validation;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.air.AirPackage.Literals;
import org.amberyard.model.air.GridBasis;
import org.amberyard.model.air.GridEmission;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;

/** Each region, basis and year has its grid emissions once, and what the study chooses has some. */
final class GridEmissionRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        EmissionFactors factors = study.getEmissionFactors();
        if (factors == null) {
            return;
        }
        Set<String> seen = new HashSet<>();
        for (GridEmission row : factors.getGridEmissions()) {
            if (!seen.add(ElementNames.of(row))) {
                findings.error(row, Literals.GRID_EMISSION__YEAR, "it appears more than once; keep one.");
            }
        }
        checkChoice(factors, findings);
    }

    private static void checkChoice(EmissionFactors factors, Findings findings) {
        String chosen = factors.getGridRegion() == null ? "" : factors.getGridRegion();
        List<GridEmission> rows = factors.getGridEmissions().stream()
                .filter(r -> chosen.isBlank() || chosen.equals(r.getRegion())).toList();
        if (!chosen.isBlank() && rows.isEmpty()) {
            findings.error(factors, StudyPackage.Literals.EMISSION_FACTORS__GRID_REGION, "grid region is " + chosen
                    + ", which has no grid emissions; " + (factors.getGridEmissions().isEmpty() ? "add them." : "choose one of "
                            + regions(factors) + "."));
            return;
        }
        boolean marginal = factors.getGridBasis() == GridBasis.MARGINAL;
        String region = rows.isEmpty() ? "" : rows.get(0).getRegion();
        if (marginal && rows.stream().noneMatch(r -> r.getBasis() == GridBasis.MARGINAL && region.equals(r.getRegion()))) {
            findings.error(factors, StudyPackage.Literals.EMISSION_FACTORS__GRID_BASIS,
                    "grid basis is marginal, but there are no marginal grid emissions of the region; add them or choose average.");
        }
    }

    private static String regions(EmissionFactors factors) {
        return factors.getGridEmissions().stream().map(GridEmission::getRegion).distinct().collect(Collectors.joining(", "));
    }
}
