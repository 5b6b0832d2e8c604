package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.FactorOrigin;
import org.amberyard.core.air.FactorQuality;
import org.amberyard.core.air.HealthCosts;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SampleAir;
import org.amberyard.core.air.SocialCosts;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.why.InputRef;
import org.junit.jupiter.api.Test;

class AirHarmTest {
    private static final FactorOrigin INVENTED = new FactorOrigin(new InputRef("SocialCost", "", "costPerT"), "",
            FactorQuality.ASSUMED, "invented", "");

    private final StudyResult result = evaluated();
    private final PlanResult plan = result.plans().get(1);
    private final AirHarm harm = new AirHarm(result.input(), plan);

    private static StudyResult evaluated() {
        AirInput whole = SampleAir.whole();
        List<SocialCosts.Point> table = List.of(point(Pollutant.CO2, 2026, 200), point(Pollutant.CO2, 2036, 300),
                point(Pollutant.CH4, 2026, 2000), point(Pollutant.N2O, 2026, 60_000));
        HealthCosts health = new HealthCosts(List.of(new HealthCosts.Cost(Pollutant.PM25, false, 1e5, 4e5, INVENTED)));
        StudyInput study = TinyDistrict.withAir(TinyDistrict.study(), new AirInput(whole.factors(), Map.of(),
                new SocialCosts(table, 0.02, 1.25), health, whole.grants()));
        return StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }

    private static SocialCosts.Point point(Pollutant gas, int year, double perTonne) {
        return new SocialCosts.Point(gas, year, 0.02, perTonne, INVENTED);
    }

    /** Exhaust by its gases, the grid by its published CO2e; in 2029 a tonne of carbon dioxide costs 1.25 × 230. */
    @Test
    void gasesCountOneByOneAndTheGridAsCarbonDioxide() {
        AirYear year = plan.air().get(3);
        Masses driving = year.emissions().of(EmissionSource.DRIVING);
        double heaters = year.heaterKg();
        double idling = year.emissions().of(EmissionSource.IDLING).kg(Pollutant.CO2);
        double co2 = driving.kg(Pollutant.CO2) + idling + heaters + year.gridKg();
        double expected = 1.25 * (co2 * 230 + driving.kg(Pollutant.CH4) * 2000 + driving.kg(Pollutant.N2O) * 60_000) / 1000;
        assertEquals(expected, harm.social(3), 1e-6);
        assertEquals(expected / Math.pow(1.02, 4), harm.socialPresent(3), 1e-6, "at the end of the fourth year");
        assertEquals(expected, harm.why(new AirWhy(result), 3).value(), 1e-6);
    }

    @Test
    void healthIsARangeOfWhatBusesEmit() {
        double kg = plan.air().get(0).emissions().exhaust().plus(plan.air().get(0).emissions().wear()).kg(Pollutant.PM25);
        assertEquals(kg / 1000 * 1e5, harm.healthLow(0), 1e-6);
        assertEquals(kg / 1000 * 4e5, harm.healthHigh(0), 1e-6);
    }

    @Test
    void withoutATableThereIsNoCost() {
        StudyInput bare = TinyDistrict.study();
        AirHarm none = new AirHarm(bare, StudyEvaluation.of(bare, result.duty()).baseline());
        assertTrue(Double.isNaN(none.social(0)));
        assertEquals(0, none.healthHigh(0));
    }
}
