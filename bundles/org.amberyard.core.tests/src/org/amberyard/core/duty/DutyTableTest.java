package org.amberyard.core.duty;

import static org.amberyard.core.duty.SampleBus.RECOVERY;
import static org.amberyard.core.duty.SampleBus.electric;
import static org.amberyard.core.duty.SampleBus.run;
import static org.amberyard.core.duty.SampleBus.year;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.junit.jupiter.api.Test;

class DutyTableTest {

    @Test
    void aYearIsDaysTimesADay() {
        EnergyUse one = year(electric(), WeatherDay.steady(5), run(1, 20));
        EnergyUse twenty = year(electric(), WeatherDay.steady(5), run(20, 20));
        assertEquals(20 * one.batteryKwh(), twenty.batteryKwh(), 1e-9);
        assertEquals(500, twenty.km(), 1e-9);
    }

    @Test
    void coldTakesHeatAndStiffensTyres() {
        EnergyUse cold = year(electric(), WeatherDay.steady(-20), run(1, 20));
        EnergyUse mild = year(electric(), WeatherDay.steady(20), run(1, 20));
        assertEquals(0, mild.causes().heatKwh(), 0);
        assertEquals(0, mild.causes().coolingKwh(), 0);
        assertTrue(cold.causes().heatKwh() > 8, "holding 16 °C at -20 °C for 70 minutes: " + cold.causes().heatKwh());
        assertTrue(cold.causes().rollingKwh() > 1.2 * mild.causes().rollingKwh());
        assertTrue(cold.causes().packKwh() > mild.causes().packKwh());
    }

    @Test
    void heatPumpDrawsLessAndFuelFiredNothing() {
        WeatherDay day = WeatherDay.steady(-5);
        double resistance = year(electric(), day, run(1, 20)).causes().heatKwh();
        EnergyUse pump = year(electric(Heater.Source.HEAT_PUMP, RECOVERY), day, run(1, 20));
        EnergyUse fired = year(electric(Heater.Source.FUEL_FIRED, RECOVERY), day, run(1, 20));
        assertEquals(resistance / (2.2 - 5 * 0.05), pump.causes().heatKwh(), 1e-9);
        assertEquals(0, fired.causes().heatKwh(), 0);
        assertEquals(resistance / 0.8 / FuelKind.DIESEL.kwhPerL(), fired.heaterFuelL(), 1e-9);
    }

    @Test
    void heaterBringsNoMoreThanItCanAndWhatIsMissingIsCounted() {
        EnergyUse deep = year(electric(), WeatherDay.steady(-60), run(1, 0));
        assertEquals(20 * deep.hours(), deep.causes().heatKwh(), 1e-9);
        double lossKwPerK = 0.2 + 400 * 1.2 * 1.006 / 3600 + 0.003 * 20 / deep.hours();
        assertEquals((76 * lossKwPerK - 20) * deep.hours(), deep.heatShortKwh(), 1e-9);
    }

    @Test
    void coolingRemovesWhatComesInAtSteadyHeat() {
        EnergyUse hot = year(electric(), WeatherDay.steady(35), run(1, 20));
        double lossKwPerK = 0.2 + 400 * 1.2 * 1.006 / 3600 + 0.003 * 20 / hot.hours();
        double holdKwh = (10 * lossKwPerK + 0.07 * 20) / 2.5 * hot.hours();
        double pullDownKwh = 0.12 * 10 / 2.5;
        assertTrue(hot.causes().coolingKwh() > holdKwh);
        assertTrue(hot.causes().coolingKwh() < holdKwh + pullDownKwh + 0.1, "the cabin is cooled down once");
        EnergyUse blazing = year(electric(), WeatherDay.steady(120), run(1, 20));
        assertEquals(8 * blazing.hours(), blazing.causes().coolingKwh(), 1e-9);
    }

    @Test
    void fuelIsIdleRatePlusWork() {
        EnergyUse use = year(SampleBus.diesel(), WeatherDay.steady(16), run(1, 20));
        assertEquals(1.8 * use.hours() + use.drawnKwh() / 0.4 / FuelKind.DIESEL.kwhPerL(), use.fuelL(), 1e-9);
        assertEquals(use.causes().totalKwh(), use.drawnKwh(), 1e-9);
        double milesPerGallon = use.km() / 1.609344 / (use.fuelL() / 3.785411784);
        assertTrue(milesPerGallon > 5 && milesPerGallon < 9, "a school bus goes 6 to 8 mpg (from memory): " + milesPerGallon);
    }

    @Test
    void coolantThatDoesNotReachLeavesTheCabinColdOrTheHeaterToBurn() {
        EngineSpec bare = SampleBus.diesel();
        EngineSpec heated = new EngineSpec(bare.name(), bare.body(), bare.fuel(), bare.indicatedEfficiency(),
                bare.idleFuelLPerH(), bare.exhaustFluidShare(), 0.05, new Heater(Heater.Source.FUEL_FIRED, 25, 1, 0, 0.8));
        EnergyUse deep = year(heated, WeatherDay.steady(-30), run(1, 0));
        assertTrue(deep.heaterFuelL() > 0);
        assertEquals(0, deep.heatShortKwh(), 0);
        EngineSpec poor = new EngineSpec(bare.name(), bare.body(), bare.fuel(), bare.indicatedEfficiency(),
                bare.idleFuelLPerH(), bare.exhaustFluidShare(), 0.05, bare.heater());
        assertTrue(year(poor, WeatherDay.steady(-30), run(1, 0)).heatShortKwh() > 0);
        assertEquals(0, year(bare, WeatherDay.steady(0), run(1, 0)).heaterFuelL(), 0);
    }

    @Test
    void ridersWeighAndWarm() {
        EnergyUse empty = year(electric(), WeatherDay.steady(-5), run(1, 0));
        EnergyUse full = year(electric(), WeatherDay.steady(-5), run(1, 60));
        assertTrue(full.causes().drivingKwh() > empty.causes().drivingKwh());
        assertTrue(full.causes().heatKwh() < empty.causes().heatKwh());
    }

    @Test
    void bodiesThatDoNotFitAreLeftOut() {
        DutyInput input = SampleBus.duty(SampleBus.diesel(), WeatherDay.steady(0), run(1, 2));
        DutyInput other = new DutyInput(input.climate(), input.style(), 55,
                List.of(new RouteInput("R", "A", List.of(run(1, 2)), EnergyModel.PHYSICS)), input.vehicles(), input.habit(),
                List.of());
        assertTrue(DutyTable.of(other).use(0, 0).isEmpty());
        assertEquals(EnergyUse.ZERO, DutyTable.of(other).perKm(0));
    }

    @Test
    void extendedYearDaysAreDaysOfTheirOwn() {
        RunInput summer = new RunInput("S", 480, 60, 10, 10, 20, 5, 64, 0, true, true, SampleBus.inJanuary(4),
                Optional.empty());
        RouteUse use = DutyTable.of(SampleBus.duty(electric(), WeatherDay.steady(15), run(4, 2), summer)).use(0, 0)
                .orElseThrow();
        assertEquals(List.of("AM", "S"), use.days(0, true, false).map(d -> d.legs().get(0).name()).toList());
        assertEquals(0, use.days(1, true, false).count());
        assertEquals(4 * 25 + 4 * 10, use.year().km(), 1e-9);
    }

    @Test
    void aRouteGoesByTheCurveOfItsTypeWhenAsked() {
        ConsumptionCurve curve = new ConsumptionCurve(0.8, 15, 0.005, 0.3, 20, 22, 0.1, 5);
        ElectricSpec physics = electric();
        ElectricSpec withCurve = new ElectricSpec("E", physics.body(), physics.recovery(), physics.heater(), physics.battery(),
                Optional.of(curve));
        DutyInput input = SampleBus.duty(withCurve, WeatherDay.steady(-5), run(1, 20));
        DutyInput byCurve = new DutyInput(input.climate(), input.style(), 55,
                List.of(new RouteInput("R", "C", List.of(run(1, 20)), EnergyModel.CURVE)), input.vehicles(), input.habit(),
                List.of());
        EnergyUse use = DutyTable.of(byCurve).use(0, 0).orElseThrow().year();
        assertEquals(curve.drivingKwh(25, -5) + curve.heatKwh(use.hours(), -5), use.batteryKwh(), 1e-9);
        assertEquals(DutyTable.of(SampleBus.duty(physics, WeatherDay.steady(-5), run(1, 20))).use(0, 0),
                DutyTable.of(input).use(0, 0), "a route that does not ask for it goes by physics");
    }

    @Test
    void measurementsScaleTheRoute() {
        DutyInput raw = SampleBus.duty(electric(), WeatherDay.steady(-5), run(10, 20));
        EnergyUse modelled = DutyTable.of(raw).use(0, 0).orElseThrow().year();
        double perKm = modelled.batteryKwh() / modelled.km();
        MeasuredUse measured = new MeasuredUse(0, 0, OptionalInt.of(0), OptionalDouble.empty(), 500, 500 * perKm * 1.2);
        DutyTable table = DutyTable.of(new DutyInput(raw.climate(), raw.style(), 55, raw.routes(), raw.vehicles(),
                raw.habit(), List.of(measured)));
        assertEquals(1.2, table.calibration(0).factor(raw.vehicles().get(0)), 1e-9);
        assertEquals(1, table.calibration(0).factor(SampleBus.diesel()), 0);
        EnergyUse calibrated = table.use(0, 0).orElseThrow().year();
        assertEquals(1.2 * modelled.batteryKwh(), calibrated.batteryKwh(), 0.02 * modelled.batteryKwh());
        assertEquals(calibrated.causes().totalKwh(), calibrated.batteryKwh(), 1e-9);
    }

    @Test
    void preconditioningTakesHeatFromTheYard() {
        DutyInput cold = SampleBus.duty(electric(), WeatherDay.steady(-15), run(1, 20));
        EnergyUse without = DutyTable.of(cold).use(0, 0).orElseThrow().year();
        EnergyUse with = DutyTable.of(cold.withHabit(new YardHabit(false, true, 17))).use(0, 0).orElseThrow().year();
        double soakKwh = 0.12 * 31;
        double savedKwh = without.causes().heatKwh() - with.causes().heatKwh();
        assertTrue(savedKwh > 0.5 * soakKwh && savedKwh < soakKwh, "a cabin that warms slowly also loses less: " + savedKwh);
        assertTrue(with.gridKwh() > without.gridKwh() + soakKwh);
        assertTrue(with.batteryKwh() < without.batteryKwh());
    }

    private static DutyTable measured(DutyInput raw, MeasuredUse... uses) {
        return DutyTable.of(new DutyInput(raw.climate(), raw.style(), 55, raw.routes(), raw.vehicles(), raw.habit(),
                List.of(uses)));
    }

    /** What was tanked holds the heater's diesel too; a log equal to the model's own total leaves the model as it is. */
    @Test
    void theHeatersDieselIsPartOfTheLog() {
        EngineSpec bare = SampleBus.diesel();
        EngineSpec heated = new EngineSpec(bare.name(), bare.body(), bare.fuel(), bare.indicatedEfficiency(),
                bare.idleFuelLPerH(), bare.exhaustFluidShare(), 0.05, new Heater(Heater.Source.FUEL_FIRED, 25, 1, 0, 0.8));
        DutyInput raw = SampleBus.duty(heated, WeatherDay.steady(-30), run(5, 0));
        EnergyUse own = DutyTable.of(raw).use(0, 0).orElseThrow().year();
        assertTrue(own.heaterFuelL() > 0);
        DutyTable table = measured(raw, new MeasuredUse(0, 0, OptionalInt.of(0), OptionalDouble.empty(), own.km(),
                own.fuelL() + own.heaterFuelL()));
        assertEquals(1, table.calibration(0).factor(heated), 1e-9);
    }

    @Test
    void aMonthsLogWeighsItsRunsByTheirDays() {
        RunInput often = SampleBus.run("AM", 390, 70, 25, 20, 20, 64, 60, SampleBus.inJanuary(20));
        RunInput seldom = SampleBus.run("Late", 960, 70, 40, 5, 5, 90, 300, SampleBus.inJanuary(2));
        DutyInput raw = SampleBus.duty(electric(), WeatherDay.steady(-5), often, seldom);
        EnergyUse own = DutyTable.of(raw).use(0, 0).orElseThrow().year();
        DutyTable table = measured(raw, new MeasuredUse(0, 0, OptionalInt.of(0), OptionalDouble.empty(), own.km(),
                own.batteryKwh()));
        assertEquals(1, table.calibration(0).factor(electric()), 1e-9);
    }

    @Test
    void aLogOfAMonthThatIsNotDrivenCountsByItsTemperatureOnly() {
        DutyInput raw = SampleBus.duty(electric(), WeatherDay.steady(-5), run(10, 20));
        assertEquals(1, measured(raw, new MeasuredUse(0, 0, OptionalInt.of(6), OptionalDouble.empty(), 100, 500))
                .calibration(0).factor(electric()), 0);
        assertTrue(measured(raw, new MeasuredUse(0, 0, OptionalInt.of(6), OptionalDouble.of(20), 100, 500))
                .calibration(0).factor(electric()) > 3);
    }

    @Test
    void aShortTraceOnALongScheduleStandsForTheRest() {
        RunInput summary = run(1, 20);
        SpeedTrace minute = SpeedTrace.level(new double[] {0, 20, 50, 60}, new double[] {0, 15, 15, 0});
        RunInput traced = new RunInput("AM", 390, 70, 5, 5, 20, 20, 64, 0, true, false, summary.daysByMonth(),
                Optional.of(minute));
        EnergyUse use = year(electric(), WeatherDay.steady(-10), traced);
        assertEquals(70.0 / 60, use.hours(), 1e-9);
        assertEquals(2 * use.hours(), use.causes().auxiliaryKwh(), 1e-9);
        assertTrue(Double.isFinite(use.batteryKwh()));
    }

    @Test
    void preheatingTakesNoMoreThanThePortGives() {
        DutyInput cold = SampleBus.duty(electric(), WeatherDay.steady(-25), run(1, 20));
        DayBlock weak = DutyTable.of(cold.withHabit(new YardHabit(false, true, 6))).use(0, 0).orElseThrow()
                .days(0, true, false).findFirst().orElseThrow();
        DayBlock strong = DutyTable.of(cold.withHabit(new YardHabit(false, true, 40))).use(0, 0).orElseThrow()
                .days(0, true, false).findFirst().orElseThrow();
        assertEquals(6, weak.preheatKw(), 1e-9);
        assertTrue(strong.preheatKw() > 15);
        assertTrue(strong.batteryKwh() < weak.batteryKwh());
    }
}
