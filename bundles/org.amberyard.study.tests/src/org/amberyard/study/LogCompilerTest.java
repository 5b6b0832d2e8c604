package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.consumption.LogEntry;
import org.amberyard.core.duty.MeasuredUse;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.LogMonth;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class LogCompilerTest {
    private final ConsumptionLog log = FleetFactory.eINSTANCE.createConsumptionLog();
    private Study study;

    @BeforeEach
    void addLog() throws Exception {
        study = ExampleStudy.load();
        study.getConsumptionLogs().clear();
        log.setType(study.getVehicleTypes().stream().filter(ElectricType.class::isInstance).findFirst().orElseThrow());
        log.setDistanceKm(120);
        log.setHours(4.5);
        log.setEnergyKwh(140);
        study.getConsumptionLogs().add(log);
    }

    @Test
    void aMeasuredTemperatureGoesBeforeTheMonths() {
        log.setMonth(LogMonth.JANUARY);
        log.setOutsideC(-3.0);
        assertEquals(Optional.of(new LogEntry(120, 4.5, 140, -3)), LogCompiler.entry(log, study.getSite()));
    }

    @Test
    void theMonthsMeanStandsInForATemperature() {
        log.setMonth(LogMonth.JANUARY);
        var january = study.getSite().getClimate().get(0);
        double meanC = (january.getMeanLowC() + january.getMeanHighC()) / 2;
        assertEquals(meanC, LogCompiler.entry(log, study.getSite()).orElseThrow().outsideC(), 1e-12);
        study.getSite().getClimate().remove(0);
        assertEquals(Optional.empty(), LogCompiler.entry(log, study.getSite()));
    }

    @Test
    void aLogWithoutTemperatureOrEnergyIsNoEntry() {
        assertEquals(Optional.empty(), LogCompiler.entry(log, study.getSite()));
        log.setOutsideC(4.0);
        log.setEnergyKwh(0);
        assertEquals(Optional.empty(), LogCompiler.entry(log, study.getSite()));
    }

    @Test
    void logsOnARouteReachTheDutyInput() {
        assertEquals(List.of(), StudyCompiler.compile(study).duty().measured());
        log.setRoute(study.getRoutes().get(2));
        log.setMonth(LogMonth.MARCH);
        addDieselLog();
        int electric = study.getVehicleTypes().indexOf(log.getType());
        assertEquals(List.of(
                new MeasuredUse(2, electric, OptionalInt.of(2), OptionalDouble.empty(), 120, 140),
                new MeasuredUse(0, 0, OptionalInt.empty(), OptionalDouble.of(11), 500, 160)),
                StudyCompiler.compile(study).duty().measured());
    }

    private void addDieselLog() {
        VehicleType diesel = study.getVehicleTypes().get(0);
        ConsumptionLog fuel = FleetFactory.eINSTANCE.createConsumptionLog();
        fuel.setType(diesel);
        fuel.setRoute(study.getRoutes().get(0));
        fuel.setDistanceKm(500);
        fuel.setFuelL(160);
        fuel.setOutsideC(11.0);
        study.getConsumptionLogs().add(fuel);
    }
}
