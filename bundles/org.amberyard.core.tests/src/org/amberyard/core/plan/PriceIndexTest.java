package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.yard.Metering;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Every cost follows its own price path, at the time at which it is paid. */
class PriceIndexTest {
    private static final double RISE = 0.1;
    private static final StudyInput STUDY = TinyDistrict.study();
    private static final DutyTable DUTY = DutyTable.of(STUDY.duty());

    private static StudyInput with(PriceDeck prices) {
        return new StudyInput(STUDY.name(), STUDY.currency(), STUDY.baseYear(), STUDY.years(), STUDY.money(), STUDY.duty(),
                STUDY.types(), STUDY.buses(), STUDY.depot(), prices, STUDY.funding(), STUDY.air(), STUDY.rules(),
                STUDY.plans(), STUDY.baseline(), STUDY.trips());
    }

    private static PriceDeck deck(Map<PriceDeck.Subject, PricePath> indices) {
        return new PriceDeck(STUDY.prices().fuels(), STUDY.prices().exhaustFluid(), STUDY.prices().pack(), indices);
    }

    private static CostLedger ledger(Map<PriceDeck.Subject, PricePath> indices) {
        return TinyDistrict.evaluated(with(deck(indices)), DUTY, 1).ledger();
    }

    private static List<CostCategory> scaledBy(PriceDeck.Subject subject) {
        return switch (subject) {
            case ELECTRIC_ENERGY -> List.of(CostCategory.ELECTRIC_ENERGY);
            case ELECTRIC_DEMAND -> List.of(CostCategory.ELECTRIC_DEMAND);
            case ELECTRIC_FIXED -> List.of(CostCategory.ELECTRIC_FIXED);
            case ENGINE_BUS -> List.of(CostCategory.BUS_SALE);
            case ELECTRIC_BUS -> List.of(CostCategory.BUS_PURCHASE);
            case UPKEEP -> List.of(CostCategory.UPKEEP, CostCategory.REGISTRATION, CostCategory.PORT_FEES);
            case INFRASTRUCTURE -> List.of(CostCategory.PORTS, CostCategory.SITE_WORKS);
        };
    }

    @ParameterizedTest
    @EnumSource(PriceDeck.Subject.class)
    void aRiseScalesItsCostsByTheTimeOfPaymentAndNoOthers(PriceDeck.Subject subject) {
        CostLedger flat = ledger(Map.of());
        CostLedger rising = ledger(Map.of(subject, new PricePath(RISE, List.of())));
        for (CostCategory category : scaledBy(subject)) {
            boolean seen = false;
            for (int year = 0; year < STUDY.years(); year++) {
                double expected = flat.amount(year, category) * Math.pow(1 + RISE, category.time().years(year, false));
                assertEquals(expected, rising.amount(year, category), 1e-6 * Math.max(1, Math.abs(expected)), category + " " + year);
                seen |= expected != 0;
            }
            assertTrue(seen, category + " must occur");
        }
        assertEquals(flat.amount(CostCategory.FUEL), rising.amount(CostCategory.FUEL), 0);
    }

    @Test
    void whatIsLeftOfInfrastructureIsAtThePriceItWasBoughtFor() {
        CostLedger rising = ledger(Map.of(PriceDeck.Subject.INFRASTRUCTURE, new PricePath(RISE, List.of())));
        double works = (80_000 + 2 * 9000) * Math.pow(1 + RISE, 1) * 27 / 30.0;
        double hardware = 2 * 6000 * Math.pow(1 + RISE, 3) * 0.5;
        assertEquals(-works - hardware, rising.amount(CostCategory.INFRASTRUCTURE_LIFE_LEFT), 0.005);
    }

    @Test
    void indicesOfAllSubjectsAreIndependent() {
        Map<PriceDeck.Subject, PricePath> all = new EnumMap<>(PriceDeck.Subject.class);
        for (PriceDeck.Subject subject : PriceDeck.Subject.values()) {
            all.put(subject, new PricePath(RISE * (subject.ordinal() + 1), List.of()));
        }
        PriceDeck deck = deck(all);
        for (PriceDeck.Subject subject : PriceDeck.Subject.values()) {
            assertEquals(Math.pow(1 + RISE * (subject.ordinal() + 1), 2), deck.index(subject, 1, 2), 1e-12);
        }
    }

    /** Every month is lifted to 5,000: dearer energy pays less of the lift, and the bill stays 60,000. */
    @Test
    void aBillAtItsMinimumDoesNotRiseWithEnergy() {
        DepotInput depot = STUDY.depot();
        Tariff tariff = depot.metering().tariff();
        Tariff lifted = new Tariff(tariff.name(), tariff.customer(), MinimumBill.ofCharges(5000), tariff.energy(),
                tariff.demand(),
                tariff.riders(), tariff.taxes(), tariff.lossFactor());
        StudyInput study = TinyDistrict.withDepot(with(deck(Map.of(PriceDeck.Subject.ELECTRIC_ENERGY, new PricePath(1,
                List.of())))),
                new DepotInput(depot.ports(), depot.works(), depot.service(), depot.window(), Metering.own(lifted),
                        List.of(),
                        depot.charging()));
        PlanResult plan = TinyDistrict.evaluated(study, DUTY, 1);
        CostLedger ledger = plan.ledger();
        double bill = ledger.amount(3, CostCategory.ELECTRIC_ENERGY) + ledger.amount(3, CostCategory.ELECTRIC_DEMAND)
                + ledger.amount(3, CostCategory.ELECTRIC_FIXED);
        assertTrue(ledger.amount(3, CostCategory.ELECTRIC_ENERGY) > 1000);
        assertEquals(12 * 5000, bill, 1e-6);
        Derivation why = plan.costs().why(3, 3, CostCategory.ELECTRIC_FIXED);
        assertEquals(ledger.amount(3, CostCategory.ELECTRIC_FIXED), why.value(), 1e-6);
        Derivation months = named(why, "bills at the prices of the year");
        assertEquals(why.value(), months.value(), 1e-6);
        assertEquals(12, months.parts().size());
        assertEquals(months.parts().get(0).value(), named(months.parts().get(0), "Customer charge").value()
                + named(months.parts().get(0), "minimum bill").value(), 1e-6);
    }

    private static Derivation named(Derivation tree, String name) {
        return all(tree).filter(d -> d.name().equals(name)).findFirst().orElseThrow(() -> new AssertionError(name + " in " + all(tree)
                .map(Derivation::name).toList()));
    }

    private static Stream<Derivation> all(Derivation tree) {
        return Stream.concat(Stream.of(tree), tree.parts().stream().flatMap(PriceIndexTest::all));
    }
}
