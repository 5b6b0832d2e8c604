package org.amberyard.reference;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.consumption.Calibration;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.core.consumption.CurveFit;
import org.amberyard.core.consumption.FitSettings;
import org.amberyard.core.consumption.LogEntry;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.junit.jupiter.api.Test;

/** Consumption curves beside published consumption of electric buses. */
class ConsumptionCurveReferenceTest {
    private static final double TRANSIT_KMH = 18;

    /**
     * Transit buses of Ithaca, NY (Cornell University 2025, as told by press summaries, not read at the source): 48 % more at
     * −4 to 0 °C than in the best range, 16 to 30 °C, about half of it for the cabin and half for the battery. A curve of that
     * form predicts Cleveland State's study (Henning et al. 2019, numbers from memory): 32 % less distance per energy at 22 to
     * 32 °F than at 50 to 60 °F. Two cities and two fleets, so 0.2 of the ratio of 1.47 is allowed.
     */
    @Test
    void curveOfOneCityPredictsAnother() {
        ConsumptionCurve curve = ithaca();
        assertEquals(1.48, curve.kwhPerKm(TRANSIT_KMH, -2) / curve.kwhPerKm(TRANSIT_KMH, 20), 1e-9);
        double cleveland = curve.kwhPerKm(TRANSIT_KMH, -2.8) / curve.kwhPerKm(TRANSIT_KMH, 12.8);
        assertEquals(1 / (1 - 0.32), cleveland, 0.2);
    }

    private static ConsumptionCurve ithaca() {
        double base = 1.2;
        double extraPerKm = base * 0.48 / 2;
        List<LogEntry> logs = new ArrayList<>();
        for (int day = 0; day < 8; day++) {
            double km = 100 + 10 * day;
            double hours = km / (TRANSIT_KMH + (day / 2 % 2 == 0 ? 0 : 8));
            boolean cold = day % 2 == 0;
            double heatKwh = extraPerKm * TRANSIT_KMH * hours;
            logs.add(new LogEntry(km, hours, km * base + (cold ? km * extraPerKm + heatKwh : 0), cold ? -2 : 20));
        }
        return assertInstanceOf(CurveFit.class,
                CurveFit.of(logs, new FitSettings(16, 22, 20, 8, OptionalDouble.empty()))).curve();
    }

    /**
     * Three electric school buses of the Massachusetts DOER pilot took 1.3 to 1.4 kWh/mi (US DOE, Alternative Fuels Data
     * Center, case 3092). A model that says 1.1 kWh/mi is 19 % low, which calibration corrects without suspicion; one that
     * says a transit bus's 2.17 kWh/mi (Foothill Transit, NREL/TP-5400-67698, as quoted in the press) is suspected.
     */
    @Test
    void publishedSchoolBusesCalibrateAModel() {
        double lowKwh = 100 * Unit.KWH_PER_KM.store(1.3, UnitSystem.US);
        double highKwh = 100 * Unit.KWH_PER_KM.store(1.4, UnitSystem.US);
        Calibration schoolBus = calibration(1.1, lowKwh, highKwh);
        assertEquals(1.35 / 1.1, schoolBus.factor(), 1e-9);
        assertEquals(-0.185, schoolBus.rawErrorShare(), 0.001);
        assertTrue(!schoolBus.isSuspicious() && calibration(2.17, lowKwh, highKwh).isSuspicious());
    }

    private static Calibration calibration(double modelledKwhPerMile, double lowKwh, double highKwh) {
        double modelledKwh = 100 * Unit.KWH_PER_KM.store(modelledKwhPerMile, UnitSystem.US);
        return Calibration.of(List.of(new Calibration.Pair(lowKwh, modelledKwh), new Calibration.Pair(highKwh, modelledKwh)));
    }
}
