package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Random;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.funding.Budget;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.EnergyCredit;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.yard.YardMemory;
import org.junit.jupiter.api.Test;

/** A study laid out for many prices comes to what its whole evaluation does, at prices drawn at random. */
class PriceSweepTest {
    private static final MoneyRules NOMINAL = new MoneyRules(new MoneyRates(0.02, 0.025), MoneyBasis.NOMINAL, true);
    private static final int DRAWS = 25;
    private static final double PACK_PRICE_NEAR_THE_CHOICE = 80;
    private static final double CLOSE = 1e-9;

    private static StudyInput indexed(StudyInput study) {
        Map<PriceDeck.Subject, PricePath> paths = new EnumMap<>(PriceDeck.Subject.class);
        for (PriceDeck.Subject subject : PriceDeck.Subject.values()) {
            paths.put(subject, new PricePath(0.01, List.of()));
        }
        PriceDeck deck = study.prices();
        return study.at(new PriceDeck(deck.fuels(), deck.exhaustFluid(), deck.pack(), paths));
    }

    private static double drawn(PriceField field, double value, Random random) {
        boolean rise = field.kind().name().endsWith("RISE");
        return rise ? value - 0.03 + 0.06 * random.nextDouble() : value * (0.4 + 1.4 * random.nextDouble());
    }

    /** Number of draws at which prices decide otherwise. */
    private static int compare(StudyInput study) {
        DutyTable duty = DutyTable.of(study.duty());
        StudyResult base = StudyEvaluation.of(study, duty);
        List<PriceField> fields = PriceField.all(study);
        PriceSweep sweep = PriceSweep.of(base, fields, new YardMemory()).orElseThrow();
        PriceSweep.Evaluation evaluation = sweep.evaluation();
        Random random = new Random(7);
        int left = 0;
        for (int draw = 0; draw < DRAWS; draw++) {
            double[] values = fields.stream().mapToDouble(f -> drawn(f, f.in(study), random)).toArray();
            StudyResult whole = StudyEvaluation.of(PriceFields.at(study, f -> values[fields.indexOf(f)]), duty);
            double[] results = new double[sweep.results()];
            if (evaluation.at(values, results)) {
                assertSame(whole, results);
            } else {
                assertTrue(whole.plans().stream().anyMatch(p -> !p.fleet().decisions().equals(
                        base.plans().get(whole.plans().indexOf(p)).fleet().decisions())), "nothing is decided otherwise");
                left++;
            }
        }
        return left;
    }

    private static void assertSame(StudyResult whole, double[] results) {
        int perPlan = results.length / whole.plans().size();
        for (int plan = 0; plan < whole.plans().size(); plan++) {
            PlanOutcome outcome = PlanOutcome.of(whole.plans().get(plan));
            assertClose(outcome.presentCost(), results[plan * perPlan]);
            assertClose(outcome.co2eKg(), results[plan * perPlan + 1]);
            for (int year = 0; year < whole.input().years(); year++) {
                assertClose(outcome.appropriations().get(year), results[plan * perPlan + 2 + year]);
            }
        }
    }

    private static void assertClose(double expected, double found) {
        assertEquals(expected, found, CLOSE * Math.max(1000, Math.abs(expected)));
    }

    @Test
    void constantAndNominalMoney() {
        assertEquals(0, compare(indexed(TinyDistrict.study())));
        assertEquals(0, compare(indexed(TinyDistrict.study(NOMINAL))));
    }

    @Test
    void leastCostChargingUnderAMinimumBillWithCredits() {
        StudyInput tiny = indexed(TinyDistrict.study());
        Tariff flat = Tariff.flat("Flat", 100, 0.10, 0.005, 9, 0);
        Tariff lifted = new Tariff(flat.name(), flat.customer(), MinimumBill.ofCharges(900), flat.energy(), flat.demand(),
                flat.riders(), flat.taxes(), flat.lossFactor());
        DepotInput depot = tiny.depot();
        ChargingRules rules = depot.charging();
        StudyInput least = TinyDistrict.withDepot(tiny, new DepotInput(depot.ports(), depot.works(), depot.service(), depot.window(),
                Metering.own(lifted), List.of(), new ChargingRules(ChargeRule.of(ChargePolicy.LEAST_COST), rules.stepMin(),
                        rules.building(), rules.swaps(), 5, rules.battery())));
        FundingInput funding = least.funding();
        assertEquals(0, compare(TinyDistrict.withFunding(least, new FundingInput(funding.programmes(), funding.exclusions(),
                List.of(new EnergyCredit("Credit", 1, 2, 0.06, new PricePath(-0.03, List.of()))), List.of(), funding.declared()))));
    }

    @Test
    void aBusBoughtUsedKeepsNoMoreThanItsPrice() {
        PlanInput electric = TinyDistrict.electricPlan();
        PlanInput.Replacement used = new PlanInput.Replacement(1, 0, OptionalInt.of(TinyDistrict.ELECTRIC), OptionalInt.empty(),
                List.of(), Optional.of(new SecondHand(4, 60_000, 4000, 0.9)));
        assertEquals(0, compare(indexed(TinyDistrict.withPlans(TinyDistrict.study(), TinyDistrict.dieselPlan(),
                new PlanInput(electric.name(), List.of(used), electric.ports(), electric.works(), electric.oneOffs())))));
    }

    /** One bus of today is electric, 13 years old and its pack at its end: prices decide whether it retires. */
    @Test
    void whatPricesDecideOtherwiseIsLeftToTheWholeEvaluation() {
        StudyInput tiny = TinyPacks.withPack(TinyDistrict.study(), SampleBus.battery(150, 0.004, 2000, 0.7, new LinearFade(0.03, 0)));
        List<BusInput> buses = new ArrayList<>(tiny.buses());
        buses.set(0, new BusInput("1", Role.ROUTE, TinyDistrict.ELECTRIC, OptionalInt.of(0), -13, 50_000, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        StudyInput close = PriceFields.at(indexed(TinyDistrict.withBuses(tiny, buses)),
                f -> f.kind() == PriceField.Kind.PACK_PRICE ? PACK_PRICE_NEAR_THE_CHOICE : f.in(tiny));
        int left = compare(close);
        assertTrue(left > 0 && left < DRAWS, left + " of " + DRAWS);
    }

    /** Awards that come late, are owed for years of service and lower taxes; one bus leaves before its time. */
    @Test
    void lateAwardsAreWithheldOrPaidBack() {
        for (Payout payout : List.of(new Payout(1, Optional.empty()), new Payout(3, Optional.empty()),
                new Payout(1, Optional.of(new Payout.Tax(20_000, 2))))) {
            StudyInput tiny = indexed(TinyDistrict.study());
            Programme grant = tiny.funding().programmes().get(0);
            Conditions conditions = new Conditions(false, true, false, false, false, OptionalInt.empty(), false, 5);
            Programme late = new Programme(grant.name(), grant.kind(), 1, 0, 3, 1, grant.offer(), new Budget(2, 90_000, 80_000),
                    grant.match(), conditions, payout);
            PlanInput electric = TinyDistrict.electricPlan();
            List<PlanInput.Replacement> steps = new ArrayList<>(electric.replacements());
            steps.add(new PlanInput.Replacement(3, 0, OptionalInt.of(TinyDistrict.DIESEL), OptionalInt.empty(), List.of()));
            assertEquals(0, compare(TinyDistrict.withPlans(TinyDistrict.withFunding(tiny, FundingInput.of(List.of(late))),
                    TinyDistrict.dieselPlan(), new PlanInput(electric.name(), steps, electric.ports(), electric.works(),
                            electric.oneOffs()))));
        }
    }

    @Test
    void debtsAreCostedAnew() {
        StudyInput study = TinyDistrict.study();
        PaymentPlan lease = TinyFinance.borrowing(Financing.Covers.ALL, 0.8, new Lease(0.05, 10, 4, true, 0.1, 0.01));
        StudyInput leased = TinyDistrict.withPlans(study, study.plans().get(0), study.plans().get(1).paid(lease));
        StudyResult result = StudyEvaluation.of(leased, DutyTable.of(leased.duty()));
        assertEquals(Optional.empty(), PriceSweep.of(result, PriceField.all(leased), new YardMemory()));
    }

    @Test
    void onlyPricesAreFields() {
        StudyInput study = indexed(TinyDistrict.study());
        assertTrue(PriceFields.alone(study, PriceFields.at(study, f -> 1.1 * f.in(study))));
        assertFalse(PriceFields.alone(study, TinyDistrict.withBuses(study, study.buses().subList(0, 2))));
        assertFalse(PriceFields.alone(study, study.at(NOMINAL)));
    }
}
