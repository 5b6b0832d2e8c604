package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.depot.ChargeWindow;
import org.junit.jupiter.api.Test;

/** Three runs of an hour, at 6, 10 and 14, with a pack of 90 kWh usable. */
class LeastLayoverChargeTest {
    private static final BatterySpec PACK = SampleBus.battery(100, 0, 2000, 0.7, new LinearFade(0.01, 0));

    private static DayBlock day(double... kwh) {
        return dayAt(15, kwh);
    }

    private static DayBlock dayAt(double packC, double... kwh) {
        List<DayBlock.Leg> legs = new ArrayList<>();
        for (int place = 0; place < kwh.length; place++) {
            double departureMin = 360 + 240.0 * place;
            legs.add(new DayBlock.Leg("Run " + place, departureMin, departureMin + 60, true, 15,
                    new EnergyUse(20, 1, kwh[place], 0, EnergyCauses.ZERO, 0, 0, 0, 0), packC, 0));
        }
        return new DayBlock(legs, 15);
    }

    private static List<LayoverCharge> of(DayBlock day, double batteryKw) {
        return new LeastLayoverCharge(day, PACK, 1, 0.1).at(batteryKw);
    }

    @Test
    void nothingIsTakenWhereTheNightIsEnough() {
        assertEquals(List.of(), of(day(20, 20, 41), 20));
    }

    @Test
    void whatIsMissingIsTakenAtTheLatestStand() {
        assertEquals(List.of(new LayoverCharge(660, 840, 10)), of(day(20, 30, 41), 20));
    }

    /** At -10 °C four thousandths of the 90 kWh for each of 25 degrees, 9 kWh, cannot be drawn, and lie above the reserve. */
    @Test
    void whatColdLocksUpIsTakenToo() {
        BatterySpec cold = SampleBus.battery(100, 0.004, 2000, 0.7, new LinearFade(0.01, 0));
        List<LayoverCharge> charges = new LeastLayoverCharge(dayAt(-10, 20, 20, 41), cold, 1, 0.1).at(20);
        assertEquals(1, charges.size());
        assertEquals(9, charges.get(0).batteryKwh(), 1e-9);
        assertEquals(List.of(), new LeastLayoverCharge(dayAt(15, 20, 20, 41), cold, 1, 0.1).at(20));
    }

    @Test
    void whatDoesNotFitThereIsTakenBefore() {
        List<LayoverCharge> charges = of(day(60, 40, 60), 15);
        assertEquals(2, charges.size());
        assertEquals(45, charges.get(1).batteryKwh(), 1e-9);
        assertEquals(160 - 81 - 45, charges.get(0).batteryKwh(), 1e-9);
    }

    @Test
    void aPackIsNeverMoreThanFull() {
        List<LayoverCharge> charges = of(day(5, 80, 85), 100);
        assertEquals(5 + 80, charges.stream().mapToDouble(LayoverCharge::batteryKwh).sum(), 4.0001 + 1e-9);
        assertTrue(charges.get(0).batteryKwh() <= 5 + 1e-9);
    }

    @Property
    void noMoreIsTakenThanByChargingAtOnceAndTheReserveHoldsWhenItThenHolds(@ForAll @DoubleRange(min = 0, max = 80) double first,
            @ForAll @DoubleRange(min = 0, max = 80) double second, @ForAll @DoubleRange(min = 0, max = 80) double third,
            @ForAll @DoubleRange(min = 1, max = 40) double batteryKw) {
        DayBlock day = day(first, second, third);
        double least = of(day, batteryKw).stream().mapToDouble(LayoverCharge::batteryKwh).sum();
        BlockCheck atOnce = new BlockCheck(batteryKw, new ChargeWindow(0, 0), true, 0.1);
        double most = atOnce.layovers(day, PACK, 1).stream().mapToDouble(LayoverCharge::batteryKwh).sum();
        double lacking = first + second + third - 81;
        assertTrue(least <= Math.max(0, lacking) + first + second + 1e-9);
        if (atOnce.of(day, PACK, 1).marginKwh() >= 0) {
            assertTrue(least <= most + 1e-6, least + " " + most);
            assertTrue(least >= lacking - 1e-9);
        }
    }
}
