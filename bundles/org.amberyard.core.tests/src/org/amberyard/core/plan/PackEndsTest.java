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
import org.amberyard.core.duty.SampleBus;
import org.junit.jupiter.api.Test;

/** How packs come to their end in a plan, and who pays; the district is invented. */
class PackEndsTest {
    private static final Warranty TEN_YEARS = new Warranty(10, 1_000_000, 0.8);
    private final StudyInput study = TinyDistrict.study();

    @Test
    void aWornPackUnderWarrantyIsPaidProRata() {
        FleetEvent.PackReplaced replaced = firstPack(packs(new LinearFade(0.15, 0), 2000,
                new PackPrices(3000, 20, TEN_YEARS, Optional.empty())));
        assertEquals(PackReplacement.Cause.CAPACITY, replaced.cause());
        assertEquals(2, replaced.year(), "bought in year 1, at 70 % after two years");
        PackBill bill = replaced.bill();
        assertEquals(150 * 250, bill.price(), 1e-9);
        assertEquals(0.8 * 150 * 250, bill.makerPays(), 1e-9, "two of ten years are used up");
        assertEquals(0.2 * 20 * 150 * 0.7, bill.resale(), 1e-9, "the maker takes its part of the old pack");
        assertEquals(bill.price() - bill.makerPays() + bill.labour() - bill.resale(), bill.paid(), 1e-9);
    }

    @Test
    void aRefurbishedPackIsCheaperAndNotNew() {
        StudyInput refurbished = packs(new LinearFade(0.15, 0), 2000,
                new PackPrices(0, 0, Warranty.NONE, Optional.of(new PackPrices.Refurbished(0.5, 0.85))));
        assertEquals(0.5 * 150 * 250, firstPack(refurbished).bill().paid(), 1e-9);
        assertEquals(0.85, roll(refurbished).inYear(3).get(0).vehicle().health(), 1e-12);
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

    @Test
    void aBusNearItsEndRetiresInstead() {
        StudyInput electric = today(packs(new LinearFade(0.03, 0), 2000, PackPrices.NONE), -13, Optional.empty());
        List<FleetEvent> events = roll(electric, 0).events();
        FleetEvent.RetiredForPack retired = events.stream().filter(FleetEvent.RetiredForPack.class::isInstance)
                .map(FleetEvent.RetiredForPack.class::cast).findFirst().orElseThrow();
        assertEquals(0, retired.year());
        assertTrue(retired.packPerYear() > retired.busPerYear());
        assertTrue(events.stream().anyMatch(e -> e instanceof FleetEvent.Sold && e.place() == 0 && e.year() == 1));
        assertTrue(events.stream().noneMatch(e -> e instanceof FleetEvent.PackReplaced && e.place() == 0));
    }

    @Test
    void aMeasuredHealthReanchorsABusOfToday() {
        StudyInput electric = packs(new LinearFade(0.02, 0), 2000, PackPrices.NONE);
        assertEquals(0.9, health(today(electric, -5, Optional.empty())), 1e-12);
        assertEquals(0.8, health(today(electric, -5, Optional.of(new MeasuredPack(0, 0.8)))), 1e-12);
        assertEquals(0.76, health(today(electric, -5, Optional.of(new MeasuredPack(-2, 0.8)))), 1e-12);
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
