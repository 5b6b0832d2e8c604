package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.finance.Lease;
import org.amberyard.core.finance.TaxRules;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;

/** What an edit of prices costs anew is what the whole evaluation finds, to the last bit. */
class StudyRecostingTest {
    private static final MoneyRules NOMINAL = new MoneyRules(new MoneyRates(0.02, 0.025), MoneyBasis.NOMINAL, true);

    private final StudyInput study = study();
    private final StudyResult before = StudyEvaluation.of(study, DutyTable.of(study.duty()));

    /** One bus of today is electric, 13 years old and its pack at its end: with a pack at 250 per kWh it retires. */
    private static StudyInput study() {
        StudyInput tiny = TinyPacks.withPack(TinyDistrict.study(), SampleBus.battery(150, 0.004, 2000, 0.7, new LinearFade(0.03, 0)));
        List<BusInput> buses = new ArrayList<>(tiny.buses());
        buses.set(0, new BusInput("1", Role.ROUTE, TinyDistrict.ELECTRIC, OptionalInt.of(0), -13, 50_000, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty()));
        return TinyDistrict.withBuses(tiny, buses);
    }

    private static StudyInput with(StudyInput study, MoneyRules money, PriceDeck prices, FleetRules rules) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), money, study.duty(), study.types(),
                study.buses(), study.depot(), prices, study.funding(), study.air(), rules, study.plans(), study.baseline(),
                study.trips());
    }

    private static PriceDeck prices(StudyInput study, double fuelFactor, double packPrice, double demandRise) {
        PriceDeck deck = study.prices();
        Map<FuelKind, PriceDeck.Price> fuels = new EnumMap<>(FuelKind.class);
        deck.fuels().forEach((kind, price) -> fuels.put(kind, new PriceDeck.Price(fuelFactor * price.base(), price.path())));
        Map<PriceDeck.Subject, PricePath> paths = new EnumMap<>(PriceDeck.Subject.class);
        paths.putAll(deck.indices());
        paths.put(PriceDeck.Subject.ELECTRIC_DEMAND, new PricePath(demandRise, List.of()));
        return new PriceDeck(fuels, deck.exhaustFluid(), new PriceDeck.Price(packPrice, deck.pack().path()), paths);
    }

    private void assertSameAsWhole(StudyInput edited) {
        StudyResult recosted = StudyRecosting.of(edited, before).orElseThrow();
        StudyResult whole = StudyEvaluation.of(edited, DutyTable.of(edited.duty()));
        for (int plan = 0; plan < whole.plans().size(); plan++) {
            PlanResult expected = whole.plans().get(plan);
            PlanResult found = recosted.plans().get(plan);
            assertEquals(expected.measures(), found.measures());
            assertEquals(expected.plan(), found.plan());
            assertEquals(expected.finance().budget(), found.finance().budget());
            assertEquals(expected.presentCostAfterFinancing(), found.presentCostAfterFinancing(), 0);
            assertEquals(expected.fleet().events(), found.fleet().events());
            for (CostCategory category : CostCategory.values()) {
                for (int row = 0; row < expected.ledger().rows().size(); row++) {
                    assertEquals(expected.ledger().amount(row, 2, category), found.ledger().amount(row, 2, category), 0,
                            category + " in row " + row);
                }
            }
        }
        assertEquals(whole.comparisons(), recosted.comparisons());
        assertEquals(whole.outlooks(), recosted.outlooks());
    }

    @Test
    void pricesAreCostedAnew() {
        assertSameAsWhole(with(study, study.money(), prices(study, 1.7, 250, 0), study.rules()));
        assertSameAsWhole(with(study, study.money(), prices(study, 1, 240, 0), study.rules()));
        assertSameAsWhole(with(study, NOMINAL, study.prices(), study.rules()));
        FleetRules insured = new FleetRules(study.rules().spareCoverShare(), 0.03, study.rules().reserveShare(),
                study.rules().upkeep());
        assertSameAsWhole(with(study, study.money(), study.prices(), insured));
    }

    @Test
    void paymentAndTaxesAreCostedAnew() {
        PaymentPlan lease = TinyFinance.borrowing(Financing.Covers.ALL, 0.8, new Lease(0.05, 10, 4, true, 0.1, 0.01));
        StudyInput leased = TinyDistrict.withPlans(study, study.plans().get(0), study.plans().get(1).paid(lease));
        assertSameAsWhole(leased);
        FleetRules old = study.rules();
        TaxRules taxes = new TaxRules(0.21, TaxRules.NONE.buses(), TaxRules.NONE.infrastructure());
        assertSameAsWhole(TinyDistrict.withRules(leased, new FleetRules(old.spareCoverShare(), old.insuranceShare(),
                old.reserveShare(), old.upkeep(), taxes)));
    }

    @Test
    void anEditThatReachesFurtherIsLeftToTheWholeEvaluation() {
        FleetRules reserve = new FleetRules(study.rules().spareCoverShare(), 0.01, 0.3, study.rules().upkeep());
        assertEquals(Optional.empty(), StudyRecosting.of(with(study, study.money(), study.prices(), reserve), before));
        assertEquals(Optional.empty(), StudyRecosting.of(with(study, study.money(), prices(study, 1, 250, 0.2), study.rules()),
                before), "a least-cost yard would see another proportion of demand to energy prices");
        assertEquals(Optional.empty(), StudyRecosting.of(TinyDistrict.withPlans(study, TinyDistrict.dieselPlan()), before));
    }

    /** With packs for nearly nothing the bus would stay. */
    @Test
    void aDecisionThatWouldComeOutOtherwiseIsNotKept() {
        assertTrue(before.plans().get(0).fleet().decisions().stream().anyMatch(PackDecision::retires));
        assertEquals(Optional.empty(),
                StudyRecosting.of(with(study, study.money(), prices(study, 1, 1, 0), study.rules()), before));
    }

    @Test
    void everyCellSaysHowItComesAbout() {
        for (MoneyRules money : List.of(study.money(), NOMINAL)) {
            StudyResult result = StudyRecosting.of(with(study, money, study.prices(), study.rules()), before).orElseThrow();
            for (PlanResult plan : result.plans()) {
                for (int row = 0; row < plan.ledger().rows().size(); row++) {
                    for (int year = 0; year < study.years(); year++) {
                        assertCellsSay(plan, row, year);
                    }
                }
            }
        }
    }

    private static void assertCellsSay(PlanResult plan, int row, int year) {
        for (CostCategory category : CostCategory.values()) {
            double amount = plan.ledger().amount(row, year, category);
            if (category != CostCategory.FUNDING) {
                Derivation why = plan.costs().why(row, year, category);
                assertEquals(amount, why.value(), 1e-9 * Math.max(1, Math.abs(amount)), category + " of row " + row);
                assertFollows(why);
            }
        }
    }

    /** Sums and products are those of the parts, at every step. */
    private static void assertFollows(Derivation why) {
        double parts = switch (why.rule()) {
            case "sum" -> why.parts().stream().mapToDouble(Derivation::value).sum();
            case "product" -> why.parts().stream().mapToDouble(Derivation::value).reduce(1, (a, b) -> a * b);
            default -> why.value();
        };
        assertEquals(why.value(), parts, 1e-9 * Math.max(1, Math.abs(parts)), why.name());
        why.parts().forEach(StudyRecostingTest::assertFollows);
    }
}
