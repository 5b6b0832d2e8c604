package org.amberyard.core.air;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;

import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.upkeep.TyreWear;
import org.amberyard.core.upkeep.WearYear;
import org.junit.jupiter.api.Test;

class AirFactorsTest {
    private final EngineFactors others = SampleAir.group("other", "", 0, 9999, Map.of());

    private static EmissionRates dust() {
        return SampleAir.rates(EmissionCause.WEAR, FactorUnit.G_PER_KM, Map.of(Pollutant.PM25, 0.01));
    }

    private AirFactors factors(List<EngineFactors> engines, List<WearFactors> wear) {
        AirFactors whole = SampleAir.whole().factors();
        return new AirFactors(whole.fuels(), engines, others, wear, whole.heaterPerL(), whole.grid(), Optional.empty(),
                WarmingPotentials.AR5, false);
    }

    @Test
    void theGroupOfABodyTypeCountsBeforeThatForAll() {
        EngineFactors all = SampleAir.group("all", "", 2007, 2009, Map.of());
        EngineFactors small = SampleAir.group("small", "AB", 2007, 2009, Map.of());
        AirFactors factors = factors(List.of(all, small), List.of());
        assertSame(small, factors.engine(FuelKind.DIESEL, "A", 2008));
        assertSame(all, factors.engine(FuelKind.DIESEL, "C", 2008));
        assertSame(all, factors.engine(FuelKind.DIESEL, "C", 2009));
        assertSame(others, factors.engine(FuelKind.DIESEL, "C", 2010));
        assertSame(others, factors.engine(FuelKind.GASOLINE, "A", 2008));
    }

    @Test
    void dustWithoutFactorsIsNotKnown() {
        WearFactors large = new WearFactors("large", "CD", dust(), 0.3, dust(), Optional.empty());
        AirFactors factors = factors(List.of(), List.of(large));
        assertSame(large, factors.wear("C"));
        assertSame(WearFactors.UNKNOWN, factors.wear("A"));
        assertEquals(Double.NaN, factors.wear("A").brakes().of(1).kg(Pollutant.PM25));
    }

    private static WearYear year(double brakeKwh, double massKg) {
        return new WearYear(1000, 50, brakeKwh, 0, massKg, Collections.nCopies(12, 1 / 12.0));
    }

    /** A bus whose motor takes back three quarters of its braking makes a quarter of the dust. */
    @Test
    void brakeDustFollowsTheHeatInFrictionBrakes() {
        WearFactors dust = new WearFactors("all", "", dust(), 0.4, dust(), Optional.of(new TyreWear(10_000)));
        assertEquals(1000, dust.brakeKm(year(400, 10_000)), 1e-9);
        assertEquals(250, dust.brakeKm(year(100, 10_000)), 1e-9);
        assertEquals(1000, dust.brakeKm(year(0, 10_000)), "not told: by distance");
        assertEquals(1200, dust.tyreKm(year(0, 12_000)), 1e-9);
    }
}
