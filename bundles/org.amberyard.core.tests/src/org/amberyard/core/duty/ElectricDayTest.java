package org.amberyard.core.duty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackHeat;
import org.junit.jupiter.api.Test;

/** What must hold of any day of an electric bus. */
class ElectricDayTest {
    private static final List<Integer> DAY = SampleBus.inJanuary(1);

    private static RunInput morning(double km, int stops, double topKmh, double climbM) {
        return SampleBus.run("AM", 390, 240, km, stops, 20, topKmh, climbM, DAY);
    }

    private static RunInput afternoon(double km, int stops, double topKmh, double climbM) {
        return SampleBus.run("PM", 860, 240, km, stops, 20, topKmh, climbM, DAY);
    }

    private static EnergyUse day(VehicleSpec bus, double airC, RunInput... runs) {
        return SampleBus.year(bus, WeatherDay.steady(airC), runs);
    }

    private static double kwh(double massKg, double airC, double km, int stops, double topKmh, double climbM) {
        ElectricSpec bus = SampleBus.electric(massKg, Heater.Source.RESISTANCE, SampleBus.RECOVERY);
        return day(bus, airC, morning(km, stops, topKmh, climbM), afternoon(km, stops, topKmh, climbM)).batteryKwh();
    }

    /** What the battery gives is what the causes take, in any weather and over any land. */
    @Property(tries = 100)
    void energyIsConserved(@ForAll @DoubleRange(min = -40, max = 45) double airC,
            @ForAll @DoubleRange(min = 5, max = 50) double km, @ForAll @IntRange(min = 1, max = 40) int stops,
            @ForAll @DoubleRange(min = 0, max = 400) double climbM) {
        EnergyUse use = day(SampleBus.electric(), airC, morning(km, stops, 64, climbM), afternoon(km, stops, 64, climbM));
        assertEquals(use.causes().totalKwh(), use.batteryKwh(), 1e-9);
        assertEquals(0, use.causes().climbingKwh(), 1e-9);
    }

    /**
     * Stops lie far enough apart to reach cruising speed; where they do not, one more stop makes the whole drive slower. A
     * gentle hill slows the bus into half of its stops and so spares the brakes a little, hence the thousandth.
     */
    @Property(tries = 60)
    void moreNeverCostsLess(@ForAll @DoubleRange(min = -35, max = 30) double airC,
            @ForAll @DoubleRange(min = 20, max = 60) double km, @ForAll @IntRange(min = 2, max = 17) int stops,
            @ForAll @DoubleRange(min = 40, max = 65) double topKmh, @ForAll @DoubleRange(min = 0, max = 200) double climbM) {
        double base = kwh(9500, airC, km, stops, topKmh, climbM);
        assertTrue(kwh(10_500, airC, km, stops, topKmh, climbM) >= base, "mass");
        assertTrue(kwh(9500, airC, km, stops, topKmh + 8, climbM) >= base - 1e-9, "speed");
        assertTrue(kwh(9500, airC, km, stops + 2, topKmh, climbM) >= base, "stops");
        assertTrue(kwh(9500, airC, km, stops, topKmh, climbM + 80) >= base * 0.999, "climb");
    }

    @Property(tries = 60)
    void colderNeverCostsLess(@ForAll @DoubleRange(min = -35, max = 14) double airC,
            @ForAll @DoubleRange(min = 8, max = 40) double km, @ForAll @DoubleRange(min = 0.5, max = 15) double colderK) {
        assertTrue(kwh(9500, airC - colderK, km, 15, 64, 50) >= kwh(9500, airC, km, 15, 64, 50));
    }

    /** What more is recovered keeps the pack fuller, so a little later it takes less: hence the thousandth. */
    @Property(tries = 60)
    void aHigherRecoveryLimitNeverRaisesEnergy(@ForAll @DoubleRange(min = -30, max = 30) double airC,
            @ForAll @DoubleRange(min = 0, max = 140) double limitKw) {
        RunInput run = morning(30, 20, 70, 150);
        double weak = day(recovering(limitKw), airC, run).batteryKwh();
        assertTrue(day(recovering(limitKw + 15), airC, run).batteryKwh() <= 1.001 * weak);
    }

    private static ElectricSpec recovering(double limitKw) {
        return SampleBus.electric(Heater.Source.RESISTANCE, new BrakeRecovery(limitKw, 8, 1.3));
    }

    /**
     * A run cut in two at a stop takes what it took whole; doors are left shut because a cut adds a stop. What is left of the
     * warmth of the day before is reckoned run by run, hence the tolerance.
     */
    @Test
    void twoHalvesTakeWhatTheWholeTakes() {
        Cabin sample = SampleBus.CABIN;
        Cabin shut = new Cabin(sample.setpointC(), sample.shellKwPerK(), sample.freshAirM3PerH(), 0, sample.capacityKwhPerK(),
                0, sample.coolingFromC(), sample.coolingCop(), sample.coolingCapKw());
        ElectricSpec bus = SampleBus.electric();
        VehicleBody body = new VehicleBody("C", 9500, 0.008, 4.5, 1.05, SampleBus.DRIVELINE, 2, shut);
        ElectricSpec closed = new ElectricSpec("E", body, bus.recovery(), bus.heater(), bus.battery(), bus.curve());
        RunInput whole = SampleBus.run("AM", 390, 120, 40, 19, 20, 64, 0, DAY);
        RunInput first = SampleBus.run("AM 1", 390, 60, 20, 9, 20, 64, 0, DAY);
        RunInput second = SampleBus.run("AM 2", 450, 60, 20, 9, 20, 64, 0, DAY);
        for (double airC : new double[] {-25, -8, 10, 38}) {
            double one = day(closed, airC, whole).batteryKwh();
            assertEquals(one, day(closed, airC, first, second).batteryKwh(), 2e-4 * one, "at " + airC + " °C");
        }
    }

    @Test
    void aColdOrFullPackTakesLessOfTheBraking() {
        EnergyUse warm = day(SampleBus.electric(), 20, morning(30, 30, 64, 0));
        EnergyUse cold = day(unheated(SampleBus.electric()), -20, morning(30, 30, 64, 0));
        assertTrue(cold.recoveredKwh() < 0.7 * warm.recoveredKwh());
        assertTrue(cold.causes().frictionBrakeKwh() > 1.5 * warm.causes().frictionBrakeKwh());
        DutyInput twoRuns = SampleBus.duty(SampleBus.electric(), WeatherDay.steady(20), morning(30, 30, 64, 0),
                afternoon(30, 30, 64, 0));
        DayBlock block = RouteDuty.of(twoRuns, twoRuns.routes().get(0), SampleBus.electric(), 1)
                .block(0, false, WeatherDay.steady(20), twoRuns.habit());
        assertTrue(block.legs().get(0).use().recoveredKwh() < block.legs().get(1).use().recoveredKwh(),
                "the morning starts with a full pack");
    }

    /** A pack without a heater. */
    private static ElectricSpec unheated(ElectricSpec bus) {
        BatterySpec pack = bus.battery();
        BatterySpec bare = new BatterySpec(pack.nominalKwh(), pack.usableShare(), pack.coldUsableLossPerK(),
                pack.resistance(), pack.acceptance(), new PackHeat(12, -40, 0, 60, 0), pack.life());
        return new ElectricSpec("E", bus.body(), bus.recovery(), bus.heater(), bare, bus.curve());
    }

    /** An idle pack covers 63 % of the way to the air in its time constant. */
    @Test
    void packFollowsTheAirWithItsTimeConstant() {
        BusHeat heat = new BusHeat(unheated(SampleBus.electric()), WeatherDay.steady(20), 0);
        assertEquals(20, heat.packC(), 1e-12);
        BusHeat cooling = new BusHeat(unheated(SampleBus.electric()), WeatherDay.ofExtremes(-20, -20, new double[24]), 0);
        cooling.holdPack(-20, 0, 0.001);
        assertEquals(-20, cooling.packC(), 1e-9);
        heat.holdPack(-10, 0, 12);
        assertEquals(-10 + 30 * Math.exp(-1), heat.packC(), 1e-9);
    }

    @Test
    void unheatedPackIsColdOnAColdMorningAndAHeatedOneIsNot() {
        RunInput run = morning(30, 20, 64, 0);
        double bare = packC(unheated(SampleBus.electric()), run);
        double heated = packC(SampleBus.electric(), run);
        assertTrue(bare < -5, "it ends at " + bare);
        assertTrue(heated >= 5 - 1e-9, "it ends at " + heated);
    }

    private static double packC(ElectricSpec bus, RunInput run) {
        return DutyTable.of(SampleBus.duty(bus, WeatherDay.steady(-20), run)).use(0, 0).orElseThrow().days(0, true, false)
                .findFirst().orElseThrow().legs().get(0).packC();
    }

    @Test
    void hurriedDriversUseMore() {
        DriverStyle smooth = DriverStyle.of(0.7, 0.9, 0);
        DriverStyle hurried = DriverStyle.of(0.7, 0.9, 1);
        assertEquals(3, hurried.accelerationMps2() / smooth.accelerationMps2(), 1e-12);
        assertTrue(styled(hurried).causes().frictionBrakeKwh() > 1.2 * styled(smooth).causes().frictionBrakeKwh());
        assertTrue(styled(hurried).batteryKwh() > styled(smooth).batteryKwh());
    }

    private static EnergyUse styled(DriverStyle style) {
        DutyInput input = SampleBus.duty(SampleBus.electric(), WeatherDay.steady(18), morning(30, 25, 64, 60));
        return DutyTable.of(new DutyInput(input.climate(), style, 55, input.routes(), input.vehicles(), input.habit(),
                List.of())).use(0, 0).orElseThrow().year();
    }
}
