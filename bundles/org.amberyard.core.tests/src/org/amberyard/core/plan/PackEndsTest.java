package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.battery.FadeLaw;
import org.amberyard.core.battery.LfpFade;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.NmcFade;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.battery.Warranty;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

/** How packs come to their end in a plan, and who pays; the district is invented. */
class PackEndsTest {
    private static final Warranty TEN_YEARS = new Warranty(10, 1_000_000, 0.8);
    private final StudyInput study = TinyDistrict.study();

    @Test
    void aWornPackUnderWarrantyIsPaidProRata() {
        StudyInput warranted = packs(new LinearFade(0.15, 0), 2000, new PackPrices(3000, 20, TEN_YEARS, Optional.empty()));
        FleetEvent.PackReplaced replaced = firstPack(warranted);
        assertEquals(PackReplacement.Cause.CAPACITY, replaced.cause());
        assertEquals(2, replaced.year(), "bought in year 1, at 70 % after two years");
        PackBill bill = PackBill.of(warranted, replaced);
        assertEquals(150 * 250, bill.price(), 1e-9);
        assertEquals(0.8 * 150 * 250, bill.makerPays(), 1e-9, "two of ten years are used up");
        assertEquals(0.2 * 20 * 150 * 0.7, bill.resale(), 1e-9, "the maker takes its part of the old pack");
        assertEquals(bill.price() - bill.makerPays() + bill.labour() - bill.resale(), bill.paid(), 1e-9);
    }

    @Test
    void aRefurbishedPackIsCheaperAndNotNew() {
        StudyInput refurbished = packs(new LinearFade(0.15, 0), 2000,
                new PackPrices(0, 0, Warranty.NONE, Optional.of(new PackPrices.Refurbished(0.5, 0.85))));
        assertEquals(0.5 * 150 * 250, PackBill.of(refurbished, firstPack(refurbished)).paid(), 1e-9);
        Vehicle bus = roll(refurbished).inYear(3).get(0).vehicle();
        assertEquals(0.85, bus.health(), 1e-12);
        assertEquals(0.5 * 150 * 250 - 150 * 250 * 0.8, new BusValues(refurbished).pack(bus, 3).at(new PriceBook(refurbished), 3, CostCategory.PACK_LIFE_LEFT),
                1e-6, "worth what it cost, in place of the pack that a bus of three years holds");
    }

    /** A pack that loses two fifths a year becomes too small for its route before it reaches a tenth. */
    @Test
    void aRouteTooLongForTheWornPackIsACause() {
        StudyInput small = TinyPacks.withPack(study, SampleBus.battery(150, 0.004, 2000, 0.1, new LinearFade(0.4, 0)));
        DutyTable duty = DutyTable.of(small.duty());
        double least = duty.packYears().leastHealth(duty.use(0, TinyDistrict.ELECTRIC).orElseThrow(),
                small.types().get(TinyDistrict.ELECTRIC).electric().orElseThrow().battery(),
                RouteFitting.check(small, 19.2 * 0.88, small.middayCharging()));
        assertTrue(least > 0.2 && least < 0.99, "least health " + least);
        FleetEvent.PackReplaced replaced = firstPack(small);
        assertEquals(PackReplacement.Cause.DUTY, replaced.cause());
        assertTrue(replaced.vehicle().health() < least);
    }

    /** At 58 % after 14 years, with one year to go: the next bus loses a fifteenth of its price, the pack all that it costs. */
    @Test
    void aBusNearItsEndRetiresInstead() {
        StudyInput electric = today(packs(new LinearFade(0.03, 0), 2000, PackPrices.NONE), -13, Optional.empty());
        List<FleetEvent> events = roll(electric, 0).events();
        FleetEvent.RetiredForPack retired = events.stream().filter(FleetEvent.RetiredForPack.class::isInstance)
                .map(FleetEvent.RetiredForPack.class::cast).findFirst().orElseThrow();
        assertEquals(0, retired.year());
        assertTrue(events.stream().anyMatch(e -> e instanceof FleetEvent.Sold && e.place() == 0 && e.year() == 1));
        assertTrue(events.stream().noneMatch(e -> e instanceof FleetEvent.PackReplaced && e.place() == 0));
        EnergyUse route = DutyTable.of(electric.duty()).use(0, TinyDistrict.ELECTRIC).orElseThrow().year().times(0.95);
        double energy = (route.batteryKwh() + route.gridKwh()) / 0.88 * 0.105;
        double perBus = (330_000 - 3500) / 15.0;
        double soldNow = (3500 + perBus) * 0.99 - 150 * 250 / 15.0;
        double kept = (150 * 250 + soldNow) * 1.02 - 3500 * 0.99 * 0.99 + energy + route.km() * (0.22 + 0.016 * 14.5)
                + 0.01 * (3500 + perBus / 2) * 0.99 * 0.99 + 120;
        assertEquals(kept, retired.keptPerYear(), 1e-6);
        double next = 330_000 * 0.99 * 1.02 - (330_000 - perBus) * 0.99 * 0.99 + energy + route.km() * (0.22 + 0.016 * 0.5)
                + 0.01 * (330_000 - perBus / 2) * 0.99 * 0.99 + 120 + 150 * 250 * (0.1 - 1 / 15.0);
        assertEquals(next, retired.nextPerYear(), 1e-6);
    }

    /** A buyer pays for what the old pack is worth by itself, and that tips the scale. */
    @Test
    void aPackThatSellsWellIsWorthItEvenLate() {
        StudyInput electric = today(packs(new LinearFade(0.03, 0), 2000,
                new PackPrices(0, 200, Warranty.NONE, Optional.empty())), -13, Optional.empty());
        List<FleetEvent> events = roll(electric, 0).events();
        assertTrue(events.stream().noneMatch(FleetEvent.RetiredForPack.class::isInstance));
        FleetEvent.Sold sold = events.stream().filter(FleetEvent.Sold.class::isInstance).map(FleetEvent.Sold.class::cast)
                .filter(s -> s.place() == 0).findFirst().orElseThrow();
        assertEquals(3500 * 0.98010 + 200 * 150 * 0.97, new BusValues(electric).sold(sold.vehicle(), sold.vehicle().ageYears(2))
                .at(new PriceBook(electric), 2, CostCategory.BUS_SALE), 1e-6);
    }

    /** A young bus uses up another pack, so it is not asked whether to retire it. */
    @Test
    void aYoungBusGetsAnotherPackWhateverItCosts() {
        StudyInput electric = packs(new LinearFade(0.15, 0), 2000, new PackPrices(500_000, 0, Warranty.NONE, Optional.empty()));
        assertEquals(500_000, PackBill.of(electric, firstPack(electric)).labour(), 1e-9);
    }

    @Test
    void aMeasuredHealthReanchorsABusOfToday() {
        StudyInput electric = packs(new LinearFade(0.02, 0), 2000, PackPrices.NONE);
        assertEquals(0.9, health(today(electric, -5, Optional.empty())), 1e-12);
        assertEquals(0.8, health(today(electric, -5, Optional.of(new MeasuredPack(0, 0.8)))), 1e-12);
        assertEquals(0.76, health(today(electric, -5, Optional.of(new MeasuredPack(-2, 0.8)))), 1e-12);
    }

    /** Where the odometer stands for more cycles than a pack is good for, the present pack is younger than the bus. */
    @Test
    void aBusThatHasUsedUpAPackHasAYoungerOne() {
        StudyInput electric = today(packs(new LinearFade(0.02, 0), 2000, PackPrices.NONE), -10, Optional.empty());
        double cycles = roll(electric, 0).inYear(0).get(0).vehicle().packCycles();
        StudyInput limited = today(packs(new LinearFade(0.02, 0), 0.8 * cycles, PackPrices.NONE), -10, Optional.empty());
        Vehicle bus = roll(limited, 0).inYear(0).get(0).vehicle();
        assertEquals(0.2 * cycles, bus.packCycles(), 1e-9);
        assertEquals(2, bus.packYears(), 1e-9);
        assertEquals(0.2 * 50_000, bus.pack().km(), 1e-9);
        assertEquals(0.96, bus.health(), 1e-9);
    }

    @Test
    void aMeasuredHealthCountsForABusOfTheBaseYear() {
        StudyInput electric = packs(new LinearFade(0.02, 0), 2000, PackPrices.NONE);
        assertEquals(0.97, health(today(electric, 0, Optional.of(new MeasuredPack(0, 0.97)))), 1e-12);
    }

    /** A published law wears a pack over the years; calendar and cycles both count. */
    @Test
    void publishedLawsWearThePack() {
        for (FadeLaw law : List.of(new LfpFade(), new NmcFade())) {
            FleetHistory fleet = roll(packs(law, 2000, PackPrices.NONE));
            Vehicle end = fleet.fleetAtEnd().get(0).orElseThrow();
            assertTrue(end.pack().wear().fade().calendarLoss() > 0 && end.pack().wear().fade().cycleLoss() > 0);
            assertTrue(end.health() > 0.8 && end.health() < 0.97, law + " " + end.health());
            assertTrue(fleet.inYear(3).get(0).healthEnd() < fleet.inYear(2).get(0).healthEnd());
        }
    }

    private StudyInput packs(FadeLaw law, double cycleLimit, PackPrices prices) {
        return TinyPacks.withPackPrices(TinyPacks.withPack(study, SampleBus.battery(150, 0.004, cycleLimit, 0.7, law)), prices);
    }

    private static StudyInput today(StudyInput study, int inService, Optional<MeasuredPack> measured) {
        List<BusInput> buses = new ArrayList<>(study.buses());
        buses.set(0, new BusInput("1", Role.ROUTE, TinyDistrict.ELECTRIC, OptionalInt.of(0), inService, 50_000, 0, 0,
                OptionalDouble.empty(), OptionalInt.empty(), measured));
        return TinyDistrict.withBuses(study, buses);
    }

    private static double health(StudyInput study) {
        return roll(study, 0).inYear(0).get(0).vehicle().health();
    }

    private static FleetHistory roll(StudyInput study) {
        return roll(study, 1);
    }

    private static FleetHistory roll(StudyInput study, int plan) {
        PlanInput input = study.plans().get(plan);
        return FleetRollForward.of(study, input, DutyTable.of(study.duty()), new PortFleet(study.depot(), input.ports()));
    }

    private static FleetEvent.PackReplaced firstPack(StudyInput study) {
        return roll(study).events().stream().filter(FleetEvent.PackReplaced.class::isInstance)
                .map(FleetEvent.PackReplaced.class::cast).findFirst().orElseThrow();
    }
}
