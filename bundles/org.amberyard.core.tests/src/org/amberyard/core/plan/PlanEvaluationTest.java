package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.duty.DriverStyle;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class PlanEvaluationTest {
    private final StudyInput study = TinyDistrict.study();
    private final DutyTable duty = DutyTable.of(study.duty());

    @Test
    void partsAddUpAtEveryLevel() {
        for (PlanResult plan : StudyEvaluation.of(study, duty).plans()) {
            CostLedger ledger = plan.ledger();
            double byYear = IntStream.range(0, ledger.years()).mapToDouble(ledger::yearTotal).sum();
            double byCategory = List.of(CostCategory.values()).stream().mapToDouble(ledger::amount).sum();
            double byRow = IntStream.range(0, ledger.rows().size()).mapToDouble(
                    r -> IntStream.range(0, ledger.years()).mapToDouble(y -> ledger.rowTotal(r, y)).sum()).sum();
            assertTrue(byYear > 0);
            assertEquals(byYear, byCategory, 1e-6);
            assertEquals(byYear, byRow, 1e-6);
        }
    }

    @ParameterizedTest
    @ValueSource(booleans = {false, true})
    void presentValueIsTheSameInConstantAndNominalMoney(boolean midYear) {
        MoneyRates rates = new MoneyRates(0.031, 0.027);
        StudyResult constant = evaluate(new MoneyRules(rates, MoneyBasis.CONSTANT, midYear));
        StudyResult nominal = evaluate(new MoneyRules(rates, MoneyBasis.NOMINAL, midYear));
        for (int plan = 0; plan < 2; plan++) {
            double expected = constant.plans().get(plan).measures().presentCost();
            assertEquals(expected, nominal.plans().get(plan).measures().presentCost(), Math.abs(expected) * 1e-9);
            double statedConstant = constant.plans().get(plan).ledger().yearTotal(0);
            assertTrue(nominal.plans().get(plan).ledger().yearTotal(0) > statedConstant, "inflation must show in the year");
        }
    }

    private StudyResult evaluate(MoneyRules money) {
        return StudyEvaluation.of(TinyDistrict.study(money), duty);
    }

    @Test
    void midYearRunningCostsWeighMore() {
        double end = evaluate(new MoneyRules(new MoneyRates(0.05, 0), MoneyBasis.CONSTANT, false)).baseline().ledger()
                .presentValue(CostCategory.UPKEEP);
        double mid = evaluate(new MoneyRules(new MoneyRates(0.05, 0), MoneyBasis.CONSTANT, true)).baseline().ledger()
                .presentValue(CostCategory.UPKEEP);
        assertEquals(Math.sqrt(1.05), mid / end, 1e-12);
    }

    @Test
    void annualEquivalentHasThePresentCost() {
        PlanMeasures measures = StudyEvaluation.of(study, duty).baseline().measures();
        assertEquals(measures.presentCost(), measures.annualEquivalent() * DiscountFactor.uniform(0.02, 4), 1e-6);
    }

    @Test
    void presentCostIsTheSumOfDiscountedCells() {
        CostLedger ledger = StudyEvaluation.of(study, duty).plans().get(1).ledger();
        double sum = 0;
        for (CostCategory category : CostCategory.values()) {
            for (int year = 0; year < ledger.years(); year++) {
                double time = category.time().years(year, false);
                sum += ledger.amount(year, category) / Math.pow(1.02, time);
            }
        }
        assertEquals(sum, ledger.presentValue(), 1e-6);
    }

    @Test
    void comparisonIsBaselineLessPlan() {
        StudyResult result = StudyEvaluation.of(study, duty);
        Comparison comparison = result.comparisons().get(0);
        assertEquals(1, result.comparisons().size());
        assertEquals(result.baseline().measures().presentCost() - result.plans().get(1).measures().presentCost(),
                comparison.presentSaving(), 1e-9);
        assertTrue(comparison.co2eSavingKg() > 0);
    }

    @Test
    void greenhouseGasFollowsFuelAndMeter() {
        PlanResult plan = StudyEvaluation.of(study, duty).plans().get(1);
        double fuelL = plan.fleet().inYear(2).stream().mapToDouble(v -> v.use().fuelL()).sum();
        double engineKm = plan.fleet().inYear(2).stream().filter(v -> v.use().fuelL() > 0).mapToDouble(v -> v.use().km()).sum();
        double meterKwh = plan.fleet().inYear(2).stream().mapToDouble(VehicleYear::meterKwh).sum() + 2 * 0.015 * 24 * 365;
        AirYear air = plan.air().get(2);
        assertEquals(fuelL * 2.6972 + engineKm * (0.0059 * 28 + 0.02678 * 265) / 1000, air.tailpipeKg(), 1e-6);
        assertEquals(meterKwh / 0.95 * 0.35 * 0.98 * 0.98, air.gridKg(), 1e-6);
    }

    @Test
    void serviceAddsBuildingAndPorts() {
        var service = StudyEvaluation.of(study, duty).plans().get(1).service();
        assertEquals(0, service.get(0).ports());
        assertEquals(2 * 19.2, service.get(1).connectedKw(), 1e-12);
        assertEquals((2 * 19.2 + 80) / 0.95, service.get(1).connectedKva(), 1e-9);
        assertTrue(service.get(1).demandKw() > 0 && service.get(1).demandKva() < service.get(1).connectedKva());
    }

    @Test
    void sameInputGivesSameBits() {
        StudyResult first = StudyEvaluation.of(study, duty);
        StudyResult second = StudyEvaluation.of(TinyDistrict.study(), DutyTable.of(TinyDistrict.duty()));
        for (int plan = 0; plan < 2; plan++) {
            assertEquals(first.plans().get(plan).measures(), second.plans().get(plan).measures());
            assertEquals(first.plans().get(plan).fleet(), second.plans().get(plan).fleet());
        }
        assertEquals(first.fits(), second.fits());
    }

    @Test
    void refusesTheTableOfAnotherDuty() {
        StudyInput other = TinyDistrict.withBuses(study, study.buses());
        DutyTable foreign = DutyTable.of(new DutyInput(TinyDistrict.climate(),
                new DriverStyle(1, 1, 1), 55, study.duty().routes(), study.duty().vehicles(), study.duty().habit(), List.of()));
        assertThrows(IllegalArgumentException.class, () -> StudyEvaluation.of(other, foreign));
    }
}
