package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SampleAir;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.Warranty;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.SampleProgramme;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.why.Derivation;
import org.junit.jupiter.api.Test;

/** Buses bought used, worked by hand with the figures of {@link TinyDistrict}. */
class UsedBusTest {
    private static final double CENT = 0.005;
    private static final double KM_PER_YEAR = 0.95 * 180 * 2 * 24;
    private static final SecondHand DIESEL = new SecondHand(6, 120_000, 62_000, 1);
    private static final SecondHand ELECTRIC = new SecondHand(4, 60_000, 180_000, 0.9);

    private final StudyInput study = TinyDistrict.study();

    private static PlanInput.Replacement step(int place, int type, SecondHand used, Integer... programmes) {
        return new PlanInput.Replacement(1, place, OptionalInt.of(type), OptionalInt.empty(), List.of(programmes), Optional.of(used));
    }

    private static PlanInput plan(PlanInput.Replacement... steps) {
        return new PlanInput("Used", List.of(steps), List.of(new PlanInput.PortPurchase(1, 0, 2, List.of())), List.of(), List.of());
    }

    private static PlanResult evaluated(StudyInput study, PlanInput.Replacement... steps) {
        StudyInput both = TinyDistrict.withPlans(study, TinyDistrict.dieselPlan(), plan(steps));
        return TinyDistrict.evaluated(both, DutyTable.of(both.duty()), 1);
    }

    @Test
    void aDieselOfSixYearsCostsItsPriceAndIsWornAsItIs() {
        PlanResult result = evaluated(study, step(0, TinyDistrict.DIESEL, DIESEL));
        CostLedger ledger = result.ledger();
        assertEquals(62_000, ledger.amount(0, 1, CostCategory.BUS_PURCHASE), CENT);
        assertEquals(KM_PER_YEAR * (0.26 + 6 * 0.026), ledger.amount(0, 1, CostCategory.UPKEEP), CENT);
        assertEquals(KM_PER_YEAR * (0.26 + 8 * 0.026), ledger.amount(0, 3, CostCategory.UPKEEP), CENT);
        assertEquals(0.01 * 62_000, ledger.amount(0, 1, CostCategory.INSURANCE), CENT);
        Vehicle atEnd = result.fleet().fleetAtEnd().get(0).orElseThrow();
        assertEquals(120_000 + 3 * KM_PER_YEAR, atEnd.odometerKm(), 1e-6);
        assertEquals(9, atEnd.ageYears(4), 0);
    }

    /** Three of the nine years that it had left are gone: more than its distance says. */
    @Test
    void itsValueFallsOverTheYearsThatItHadLeft() {
        CostLedger ledger = evaluated(study, step(0, TinyDistrict.DIESEL, DIESEL)).ledger();
        double byAge = 1 - 3 / 9.0;
        assertTrue(1 - 3 * KM_PER_YEAR / 280_000 > byAge);
        assertEquals(-(byAge * 62_000 + (1 - byAge) * 3500), ledger.amount(0, 3, CostCategory.BUS_VALUE_LEFT), CENT);
    }

    @Test
    void itsValueFallsByOdometerWhereThatIsNearer() {
        SecondHand worn = new SecondHand(6, 360_000, 40_000, 1);
        CostLedger ledger = evaluated(study, step(0, TinyDistrict.DIESEL, worn)).ledger();
        double left = 1 - 3 * KM_PER_YEAR / 40_000;
        assertEquals(-(left * 40_000 + (1 - left) * 3500), ledger.amount(0, 3, CostCategory.BUS_VALUE_LEFT), CENT);
    }

    @Test
    void aBusIsNeverWorthMoreThanWasPaid() {
        SecondHand cheap = new SecondHand(14, 120_000, 2000, 1);
        CostLedger ledger = evaluated(study, step(2, TinyDistrict.DIESEL, cheap)).ledger();
        assertEquals(-2000, ledger.amount(2, 3, CostCategory.BUS_VALUE_LEFT), CENT);
    }

    @Test
    void ageAndOdometerRetireIt() {
        PlanResult old = evaluated(study, step(0, TinyDistrict.DIESEL, new SecondHand(13, 120_000, 9000, 1)));
        assertEquals(List.of(1, 3), bought(old, 0), "fifteen years old at the start of year 3");
        SecondHand driven = new SecondHand(2, 400_000 - 0.5 * KM_PER_YEAR, 9000, 1);
        assertEquals(List.of(1, 2), bought(evaluated(study, step(0, TinyDistrict.DIESEL, driven)), 0));
    }

    private static List<Integer> bought(PlanResult result, int place) {
        return result.fleet().events().stream().filter(e -> e instanceof FleetEvent.Bought && e.place() == place)
                .map(FleetEvent::year).toList();
    }

    @Test
    void itsEngineIsOfTheYearInWhichItWasNew() {
        AirInput whole = SampleAir.whole();
        StudyInput airy = TinyDistrict.withPlans(TinyDistrict.withAir(study, new AirInput(whole.factors(),
                Map.of("1", 2018, "2", 2018, "3", 2018), whole.social(), whole.health(), whole.grants())), TinyDistrict.dieselPlan(),
                plan(step(0, TinyDistrict.DIESEL, new SecondHand(20, 120_000, 9000, 1))));
        StudyResult result = StudyEvaluation.of(airy, DutyTable.of(airy.duty()));
        VehicleYear bus = result.plans().get(1).fleet().inYear(1).get(0);
        assertEquals(2027 - 20, EngineModelYear.of(airy, bus.vehicle()));
        assertEquals(bus.use().km() * 6.0 / 1000,
                new BusAir(airy, result.duty()).of(bus).of(EmissionSource.DRIVING).kg(Pollutant.NOX), 1e-9, "grams of an engine of 2007");
    }

    @Test
    void thePriceOfAUsedElectricBusMovesAsThatOfNewOnes() {
        CostLedger ledger = evaluated(study, step(0, TinyDistrict.ELECTRIC, ELECTRIC)).ledger();
        assertEquals(180_000 * 0.99, ledger.amount(0, 1, CostCategory.BUS_PURCHASE), CENT);
    }

    @Test
    void itsPackGoesOnFromTheCapacityThatIsLeft() {
        PlanResult result = evaluated(study, step(0, TinyDistrict.ELECTRIC, ELECTRIC));
        VehicleYear first = result.fleet().inYear(1).get(0);
        assertEquals(0.9, first.vehicle().health(), 1e-12);
        assertEquals(4, first.vehicle().packYears(), 1e-12);
        double perKmKwh = DutyTable.of(study.duty()).perKm(TinyDistrict.ELECTRIC).dischargedKwh();
        assertEquals(60_000 * perKmKwh / 150, first.vehicle().packCycles(), 1e-9);
        double fade = 0.012 + first.fullCycles() * 0.15 / 2000;
        assertEquals(0.9 - fade, first.healthEnd(), 1e-9);
    }

    /** Of eight years and 300,000 km, five years and less of the distance are gone when the pack is due. */
    @Test
    void theWarrantyCoversWhatIsLeftOfIt() {
        StudyInput warranted = TinyPacks.withPackPrices(TinyPacks.withPack(study,
                SampleBus.battery(150, 0.004, 20_000, 0.88, new LinearFade(0.03, 0))),
                new PackPrices(0, 0, new Warranty(8, 300_000, 0.9), Optional.empty()));
        PlanResult result = evaluated(warranted, step(0, TinyDistrict.ELECTRIC, ELECTRIC));
        FleetEvent.PackReplaced replaced = result.fleet().events().stream().filter(FleetEvent.PackReplaced.class::isInstance)
                .map(FleetEvent.PackReplaced.class::cast).findFirst().orElseThrow();
        assertEquals(1, replaced.year());
        assertEquals(1 - 5 / 8.0, replaced.makerShare(), 1e-12);
        assertEquals(150 * 250 * 5 / 8.0, result.ledger().amount(0, 1, CostCategory.BATTERY_REPLACEMENT), CENT);
    }

    @Test
    void aProgrammeForNewBusesRefusesIt() {
        Conditions newOnly = new Conditions(true, false, false, false, false, OptionalInt.empty(), false, 0);
        Award refused = award(newOnly);
        assertEquals(0, refused.paid(), 0);
        assertEquals("it is bought used and the programme pays for new buses only", refused.bite().orElseThrow().words());
        assertEquals(50_000, award(Conditions.NONE).paid(), CENT);
    }

    private Award award(Conditions conditions) {
        StudyInput funded = TinyDistrict.withFunding(study, FundingInput.of(List.of(
                SampleProgramme.named("P").forBuses(new BusAward(50_000, 0, 0, 50_000)).conditions(conditions).built())));
        return evaluated(funded, step(0, TinyDistrict.ELECTRIC, ELECTRIC, 0)).funding().awards().lines().stream()
                .filter(l -> l.purchase().name().equals("1-2, Electric, used")).findFirst().orElseThrow().awards().get(0);
    }

    @Test
    void thePurchaseTellsItsOwnPrice() {
        Derivation why = evaluated(study, step(0, TinyDistrict.ELECTRIC, ELECTRIC)).costs().why(0, 1, CostCategory.BUS_PURCHASE);
        assertEquals(180_000 * 0.99, why.value(), CENT);
        Derivation price = why.parts().get(0);
        assertEquals(180_000, price.value(), 0);
        assertEquals("Replacement Used / 2027 1 usedPrice", price.input().map(i -> i.kind() + " " + i.element() + " " + i.field())
                .orElseThrow());
    }

    @Test
    void aPriceEditIsCostedAsTheWholeStudyIs() {
        StudyInput both = TinyDistrict.withPlans(study, TinyDistrict.dieselPlan(), plan(step(0, TinyDistrict.ELECTRIC, ELECTRIC),
                step(1, TinyDistrict.DIESEL, DIESEL)));
        StudyResult before = StudyEvaluation.of(both, DutyTable.of(both.duty()));
        StudyInput edited = PriceLever.of(both).stream().filter(l -> l.name().equals("price of electric buses")).findFirst()
                .orElseThrow().set().apply(both, 1.3);
        assertEquals(StudyEvaluation.of(edited, before.duty()).plans().get(1).ledger().presentValue(),
                StudyRecosting.of(edited, before).orElseThrow().plans().get(1).ledger().presentValue(), 1e-6);
    }
}
