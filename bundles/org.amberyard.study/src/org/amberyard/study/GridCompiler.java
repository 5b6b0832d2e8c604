package org.amberyard.study;

import java.util.Comparator;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.air.EmissionCause;
import org.amberyard.core.air.Factor;
import org.amberyard.core.air.GridPath;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.model.air.AirPackage;
import org.amberyard.model.air.GridBasis;
import org.amberyard.model.air.GridEmission;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.model.study.StudyPackage;
import org.eclipse.emf.ecore.EAttribute;

/** Compiles the power plants: the region that was chosen, on each basis that has factors. */
final class GridCompiler {
    private static final Map<Pollutant, EAttribute> FIELDS = Collections.unmodifiableMap(new EnumMap<>(Map.of(
            Pollutant.CO2E, AirPackage.Literals.GRID_EMISSION__CO2E_KG_PER_KWH,
            Pollutant.CO2, AirPackage.Literals.GRID_EMISSION__CO2_KG_PER_KWH,
            Pollutant.CH4, AirPackage.Literals.GRID_EMISSION__CH4_GPER_KWH,
            Pollutant.N2O, AirPackage.Literals.GRID_EMISSION__N2O_GPER_KWH,
            Pollutant.NOX, AirPackage.Literals.GRID_EMISSION__NOX_GPER_KWH,
            Pollutant.SO2, AirPackage.Literals.GRID_EMISSION__SO2_GPER_KWH,
            Pollutant.PM25, AirPackage.Literals.GRID_EMISSION__PM25_GPER_KWH)));

    private final EmissionFactors factors;
    private final int baseYear;

    GridCompiler(EmissionFactors factors, int baseYear) {
        this.factors = factors;
        this.baseYear = baseYear;
    }

    /** The grid that counts; where its basis has no factors by region, the one figure of the study. */
    GridPath chosen() {
        return path(factors.getGridBasis()).orElseGet(this::single);
    }

    /** The grid on the other basis, where it has factors. */
    Optional<GridPath> other() {
        return path(factors.getGridBasis() == GridBasis.AVERAGE ? GridBasis.MARGINAL : GridBasis.AVERAGE);
    }

    private Optional<GridPath> path(GridBasis basis) {
        String region = region();
        List<GridPath.Point> points = factors.getGridEmissions().stream()
                .filter(g -> g.getBasis() == basis && region.equals(g.getRegion()))
                .sorted(Comparator.comparingInt(GridEmission::getYear)).map(this::point).toList();
        return points.isEmpty() ? Optional.empty() : Optional.of(path(region, basis, points));
    }

    private String region() {
        String chosen = factors.getGridRegion();
        return chosen == null || chosen.isBlank()
                ? factors.getGridEmissions().stream().map(GridEmission::getRegion).findFirst().orElse("") : chosen;
    }

    private GridPath.Point point(GridEmission row) {
        Map<Pollutant, Factor> known = new FactorReader(row, row.getRegion()).known(FIELDS);
        return new GridPath.Point(row.getYear() - baseYear, EmissionRates.of(EmissionCause.GENERATION, known));
    }

    private GridPath single() {
        EmissionRates rates = new FactorReader(factors, "").rates(EmissionCause.GENERATION, Map.of(Pollutant.CO2E,
                StudyPackage.Literals.EMISSION_FACTORS__GRID_CO2E_KG_PER_KWH));
        return path("", GridBasis.AVERAGE, List.of(new GridPath.Point(0, rates)));
    }

    private GridPath path(String region, GridBasis basis, List<GridPath.Point> points) {
        return new GridPath(region, basis(basis), points, factors.getGridTrendPerYear(), factors.getLineLossShare());
    }

    private static org.amberyard.core.air.GridBasis basis(GridBasis basis) {
        return switch (basis) {
            case AVERAGE -> org.amberyard.core.air.GridBasis.AVERAGE;
            case MARGINAL -> org.amberyard.core.air.GridBasis.MARGINAL;
        };
    }
}
