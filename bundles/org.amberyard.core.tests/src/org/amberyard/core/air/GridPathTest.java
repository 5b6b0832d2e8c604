package org.amberyard.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GridPathTest {
    private static GridPath.Point point(int year, double kgPerKwh) {
        return new GridPath.Point(year, SampleAir.rates(EmissionCause.GENERATION, FactorUnit.KG_PER_KWH,
                Map.of(Pollutant.CO2E, kgPerKwh)));
    }

    private static GridPath path(double trend, GridPath.Point... points) {
        return new GridPath("sample", GridBasis.AVERAGE, List.of(points), trend, 0.05);
    }

    private static double factor(GridPath path, int year) {
        return path.rates(year).factor(Pollutant.CO2E).orElseThrow().value();
    }

    @ParameterizedTest
    @CsvSource({"-3,0.4", "0,0.4", "2,0.35", "4,0.3", "7,0.24", "9,0.2", "10,0.18", "11,0.162"})
    void betweenPointsOnALineAfterThemByTheTrend(int year, double expected) {
        assertEquals(expected, factor(path(-0.1, point(0, 0.4), point(4, 0.3), point(9, 0.2)), year), 1e-12);
    }

    @Test
    void oneFactorFollowsTheTrend() {
        assertEquals(0.4 * 0.9 * 0.9 * 0.9, factor(path(-0.1, point(0, 0.4)), 3), 1e-12);
        assertEquals(0.4, factor(path(-0.1, point(2, 0.4)), 1), 1e-12, "before its year it stays");
    }

    @Test
    void lossesOnTheWayAreGeneratedToo() {
        Masses masses = path(0, point(0, 0.4)).of(95, 0, WarmingPotentials.AR5);
        assertEquals(100 * 0.4, masses.kg(Pollutant.CO2E), 1e-9);
        assertFalse(masses.known(Pollutant.NOX));
    }

    @Test
    void withoutAPublishedCo2eTheGasesCount() {
        EmissionRates gases = SampleAir.rates(EmissionCause.GENERATION, FactorUnit.G_PER_KWH,
                Map.of(Pollutant.CO2, 400.0, Pollutant.CH4, 0.03, Pollutant.N2O, 0.005));
        GridPath path = path(0, new GridPath.Point(0, gases));
        double expected = 100 * (400 + 0.03 * 25 + 0.005 * 298) / 1000;
        assertEquals(expected, path.of(95, 0, WarmingPotentials.AR4).kg(Pollutant.CO2E), 1e-9);
    }

    @Test
    void aPointWithoutAFactorLeavesTheYearsBesideItUnknown() {
        EmissionRates nox = SampleAir.rates(EmissionCause.GENERATION, FactorUnit.G_PER_KWH, Map.of(Pollutant.NOX, 1.0));
        GridPath path = path(0, new GridPath.Point(0, nox), point(4, 0.3));
        assertFalse(path.of(1, 2, WarmingPotentials.AR5).known(Pollutant.NOX));
        assertEquals(0.001, path.of(0.95, 0, WarmingPotentials.AR5).kg(Pollutant.NOX), 1e-12);
    }

    @Test
    void impossibleGridsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> path(0));
        assertThrows(IllegalArgumentException.class,
                () -> new GridPath("", GridBasis.AVERAGE, List.of(point(0, 1)), 0, 1));
    }
}
