package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Emissions;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.air.SampleAir;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.Heater;
import org.junit.jupiter.api.Test;

class BusAirTest {
    private static final double IDLE_L_PER_H = 1.8;

    private final AirInput whole = SampleAir.whole();
    private final StudyInput study = TinyDistrict.withAir(TinyDistrict.study(), new AirInput(whole.factors(),
            Map.of("1", 2007, "2", 2018, "3", 2006), whole.social(), whole.health(), whole.grants()));
    private final StudyResult result = StudyEvaluation.of(study, DutyTable.of(study.duty()));
    private final PlanResult electric = result.plans().get(1);
    private final BusAir air = new BusAir(study, result.duty());

    private static VehicleYear record(PlanResult plan, int year, int place) {
        return plan.fleet().inYear(year).stream().filter(r -> r.place() == place).findFirst().orElseThrow();
    }

    @Test
    void engineModelYearsDecideTheFactors() {
        VehicleYear old = record(result.baseline(), 0, 0);
        VehicleYear recent = record(result.baseline(), 0, 1);
        assertEquals(old.use().km() * 6.0 / 1000, kg(old, EmissionSource.DRIVING, Pollutant.NOX), 1e-9);
        assertEquals(recent.use().km() * 0.8 / 1000, kg(recent, EmissionSource.DRIVING, Pollutant.NOX), 1e-9);
        assertEquals(2027, EngineModelYear.of(study, record(result.baseline(), 2, 0).vehicle()), "bought in 2027");
    }

    private double kg(VehicleYear record, EmissionSource source, Pollutant pollutant) {
        return air.of(record).of(source).kg(pollutant);
    }

    @Test
    void idlingInTheYardCountsByTheHour() {
        VehicleYear old = record(result.baseline(), 0, 0);
        assertEquals(100 * 8 * 6.0 / 1000, kg(old, EmissionSource.IDLING, Pollutant.NOX), 1e-9);
        assertEquals(100 * IDLE_L_PER_H * SampleAir.CO2_KG_PER_L, kg(old, EmissionSource.IDLING, Pollutant.CO2), 1e-9);
        double both = kg(old, EmissionSource.IDLING, Pollutant.CO2) + kg(old, EmissionSource.DRIVING, Pollutant.CO2);
        assertEquals(old.use().fuelL() * SampleAir.CO2_KG_PER_L, both, 1e-9);
    }

    @Test
    void electricBusesHaveNoTailpipeButDust() {
        VehicleYear bus = record(electric, 3, 0);
        Emissions emissions = air.of(bus);
        assertEquals(Masses.NONE, emissions.of(EmissionSource.DRIVING));
        assertEquals(Masses.NONE, emissions.exhaust());
        assertTrue(emissions.of(EmissionSource.GRID).kg(Pollutant.CO2E) > 0);
        assertTrue(emissions.of(EmissionSource.TYRES).kg(Pollutant.PM25) > 0);
        double engine = kg(record(result.baseline(), 3, 0), EmissionSource.BRAKES, Pollutant.PM25);
        double recovering = emissions.of(EmissionSource.BRAKES).kg(Pollutant.PM25);
        assertTrue(recovering > 0 && recovering < 0.5 * engine, recovering + " of " + engine);
        assertEquals(bus.use().causes().frictionBrakeKwh() / 0.33 * 0.013 / 1000, recovering, 1e-12);
    }

    @Test
    void aBusThatStandsStillEmitsNothing() {
        BusInput spare = study.buses().get(2);
        StudyInput still = TinyDistrict.withBuses(study, List.of(study.buses().get(0), study.buses().get(1),
                new BusInput("3", Role.SPARE, spare.type(), spare.route(), spare.inServiceYear(), spare.odometerKm(), 0, 0,
                        spare.measuredKmPerL(), spare.retirementYear())));
        StudyResult parked = StudyEvaluation.of(still, result.duty());
        Emissions emissions = new BusAir(still, parked.duty()).of(record(parked.baseline(), 0, 2));
        assertEquals(Masses.NONE, emissions.total());
        assertEquals(Masses.NONE, emissions.of(EmissionSource.UPSTREAM));
    }

    @Test
    void aYearIsTheSumOfItsBusesAndPortsAtRest() {
        for (int year = 0; year < study.years(); year++) {
            Emissions buses = electric.fleet().inYear(year).stream().map(air::of).reduce(Emissions.NONE, Emissions::plus);
            Emissions all = electric.air().get(year).emissions();
            for (EmissionSource source : EmissionSource.values()) {
                for (Pollutant pollutant : Pollutant.values()) {
                    if (source != EmissionSource.GRID) {
                        assertEquals(buses.of(source).kg(pollutant), all.of(source).kg(pollutant), 1e-9);
                    }
                }
            }
            double atRest = electric.yards().get(year).neededKwh()
                    - electric.fleet().inYear(year).stream().mapToDouble(VehicleYear::meterKwh).sum();
            double perKwh = SampleAir.GRID_KG_PER_KWH * Math.pow(0.98, year) / 0.95;
            assertEquals(atRest * perKwh, all.of(EmissionSource.GRID).kg(Pollutant.CO2E)
                    - buses.of(EmissionSource.GRID).kg(Pollutant.CO2E), 1e-6);
        }
    }

    @Test
    void theOtherBasisAndUpstreamStandBesideTheTotal() {
        AirYear year = electric.air().get(3);
        assertEquals(year.gridKg() * 0.6 / SampleAir.GRID_KG_PER_KWH, year.otherGrid().orElseThrow().kg(Pollutant.CO2E), 1e-6);
        double fuelL = electric.fleet().inYear(3).stream().mapToDouble(r -> r.use().fuelL()).sum();
        assertEquals(0.6 * fuelL, year.emissions().of(EmissionSource.UPSTREAM).kg(Pollutant.CO2E), 1e-9);
        assertEquals(year.totalKg(), year.emissions().total().kg(Pollutant.CO2E), 1e-9);
    }

    /** Its heater burns diesel, which counts in the air and upstream of it: 0.6 kg a litre; that of an engine bus adds to its engine's. */
    @Test
    void aFuelFiredHeaterEmitsAndItsFuelCountsUpstream() {
        StudyInput fired = TinyPacks.withHeater(study, new Heater(Heater.Source.FUEL_FIRED, 20, 2.2, 0.05, 0.8));
        StudyResult heated = StudyEvaluation.of(fired, DutyTable.of(fired.duty()));
        BusAir buses = new BusAir(fired, heated.duty());
        VehicleYear bus = record(heated.plans().get(1), 3, 0);
        double litres = bus.use().heaterFuelL();
        assertTrue(litres > 0);
        Emissions emissions = buses.of(bus);
        assertEquals(0.6 * litres, emissions.of(EmissionSource.UPSTREAM).kg(Pollutant.CO2E), 1e-9);
        assertEquals(SampleAir.CO2_KG_PER_L * litres, emissions.of(EmissionSource.HEATER).kg(Pollutant.CO2), 1e-9);
        VehicleYear old = record(heated.baseline(), 0, 0);
        assertEquals(0.6 * (old.use().fuelL() + old.use().heaterFuelL()), buses.of(old).of(EmissionSource.UPSTREAM).kg(Pollutant.CO2E), 1e-9);
    }

    @Test
    void missingFactorsMakeTheTotalUnknownNotSmaller() {
        AirYear bare = StudyEvaluation.of(TinyDistrict.study(), result.duty()).baseline().air().get(0);
        assertFalse(bare.emissions().total().known(Pollutant.NOX));
        assertTrue(bare.emissions().total().known(Pollutant.CO2E));
    }
}
