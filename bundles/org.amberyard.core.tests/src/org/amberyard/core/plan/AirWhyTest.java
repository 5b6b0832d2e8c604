package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SampleAir;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;

class AirWhyTest {
    private final StudyInput study = TinyDistrict.withAir(TinyDistrict.study(), SampleAir.whole());
    private final StudyResult result = StudyEvaluation.of(study, DutyTable.of(study.duty()));
    private final AirWhy why = new AirWhy(result);

    private static Stream<Derivation> tree(Derivation root) {
        return Stream.concat(Stream.of(root), root.parts().stream().flatMap(AirWhyTest::tree));
    }

    /** Both known and equal, or both not known. */
    private static boolean same(double expected, double actual) {
        return Double.isNaN(expected) ? Double.isNaN(actual) : Math.abs(expected - actual) <= 1e-9 * Math.abs(expected) + 1e-12;
    }

    @Test
    void everyFigureOfAYearIsThatOfItsDerivation() {
        for (PlanResult plan : result.plans()) {
            for (int year = 0; year < study.years(); year++) {
                for (Pollutant pollutant : Pollutant.values()) {
                    for (EmissionSource source : EmissionSource.values()) {
                        Derivation derived = why.source(plan, year, source, pollutant);
                        double kg = plan.air().get(year).emissions().of(source).kg(pollutant);
                        assertTrue(same(kg, derived.value()), source + " " + pollutant + ": " + kg + ", " + derived.value());
                    }
                    double total = plan.air().get(year).emissions().total().kg(pollutant);
                    assertTrue(same(total, why.total(plan, year, pollutant).value()), pollutant + " " + total);
                }
            }
        }
    }

    @Test
    void aDerivationEndsInInputsOrInActivitiesThatSayWhatTheyAre() {
        for (Pollutant pollutant : List.of(Pollutant.NOX, Pollutant.CO2E, Pollutant.PM25)) {
            List<Derivation> leaves = tree(why.total(result.plans().get(1), 3, pollutant)).filter(d -> d.parts().isEmpty())
                    .toList();
            assertTrue(leaves.stream().anyMatch(d -> d.input().isPresent()));
            assertTrue(leaves.stream().allMatch(d -> d.input().isPresent() || !d.rule().isEmpty()));
        }
    }

    @Test
    void productsAndSumsAreWhatTheySay() {
        tree(why.total(result.plans().get(1), 3, Pollutant.CO2E)).filter(d -> !d.parts().isEmpty()).forEach(d -> {
            double product = d.parts().stream().mapToDouble(Derivation::value).reduce(1, (a, b) -> a * b);
            double sum = d.parts().stream().mapToDouble(Derivation::value).sum();
            if ("product".equals(d.rule())) {
                assertTrue(same(product, d.value()), d.name());
            } else if ("sum".equals(d.rule())) {
                assertTrue(same(sum, d.value()), d.name());
            }
        });
    }

    @Test
    void noxOfABusIsItsDistanceByTheFactorOfItsEngine() {
        VehicleYear bus = result.baseline().fleet().inYear(0).get(1);
        Derivation nox = why.bus(bus, EmissionSource.DRIVING, Pollutant.NOX);
        assertEquals("distance × NOx factor ÷ 1,000, in kilograms", nox.rule());
        assertEquals(bus.use().km(), nox.parts().get(0).value());
        assertEquals("g/km", nox.parts().get(1).unit());
        assertFalse(nox.parts().get(1).input().isEmpty());
    }

    @Test
    void measuresOfAGrantComeFromBeforeAndAfter() {
        BenefitWhy benefit = new BenefitWhy(result);
        List<ReplacedBus> buses = ReplacedBuses.of(result, 1);
        for (ReplacedBus bus : buses) {
            Derivation life = benefit.lifetime(bus, Pollutant.NOX);
            assertEquals(bus.lifetimeExhaust().kg(Pollutant.NOX), life.value(), 1e-9);
            Derivation reduced = life.parts().get(0);
            assertEquals(reduced.parts().get(0).value() - reduced.parts().get(1).value(), reduced.value(), 1e-9);
        }
        Derivation cost = ProjectCost.of(result, result.plans().get(1), buses).whyCapital();
        double kg = ReplacedBuses.reducedInLife(buses).kg(Pollutant.NOX);
        assertEquals(GrantTerms.perShortTon(cost.value(), kg), benefit.perShortTon(buses, Pollutant.NOX, "capital", cost).value(),
                1e-6);
        assertEquals(study.air().grants().recovered(cost.value(), ReplacedBuses.reducedPerYear(buses)).orElseThrow().costPerUnit(),
                benefit.recovered(buses, cost).orElseThrow().value(), 1e-6);
    }
}
