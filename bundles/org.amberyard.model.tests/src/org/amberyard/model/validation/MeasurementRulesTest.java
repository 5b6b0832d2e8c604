package org.amberyard.model.validation;

import org.amberyard.model.SmallStudy;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.LogMonth;
import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.vehicles.HeatSource;
import org.junit.jupiter.api.Test;

class MeasurementRulesTest {
    private final SmallStudy small = new SmallStudy();
    private final ConsumptionLog log = small.addLog();

    @Test
    void anElectricLogTellsItsEnergy() {
        log.setEnergyKwh(0);
        Said.of(small, "ERROR: Consumption log no. 1: energy is 0 kWh; enter what C electric took, or delete the log.");
    }

    @Test
    void anElectricBusBurnsNothingButInAFuelFiredHeater() {
        log.setFuelL(3);
        Said.of(small, "ERROR: Consumption log no. 1: fuel is 3 L but C electric takes none; clear it or choose another "
                + "vehicle type.");
        small.electric.setHeatSource(HeatSource.FUEL_FIRED);
        Said.of(small);
    }

    @Test
    void anEngineLogTellsItsFuelAndNothingElse() {
        log.setType(small.diesel);
        Said.of(small, "ERROR: Consumption log no. 1: fuel is 0 L; enter what C diesel took, or delete the log.",
                "ERROR: Consumption log no. 1: energy is 110 kWh but C diesel takes none; clear it or choose another "
                        + "vehicle type.");
        log.setEnergyKwh(0);
        log.setFuelL(30);
        Said.of(small);
    }

    @Test
    void consumptionIsThatOfASchoolBus() {
        log.setEnergyKwh(900);
        Said.of(small, "WARNING: Consumption log no. 1: it comes to 9 kWh/km, which no school bus does; check energy and "
                + "distance.");
        log.setType(small.diesel);
        log.setEnergyKwh(0);
        log.setFuelL(2);
        Said.of(small, "WARNING: Consumption log no. 1: it comes to 50 km/L, which no school bus does; check energy and "
                + "distance.");
    }

    @Test
    void anElectricLogTellsItsTemperatureOrMonth() {
        log.setOutsideC(null);
        Said.of(small, "WARNING: Consumption log no. 1: it tells neither outside temperature nor month, so it cannot serve "
                + "a consumption curve; enter one.");
        log.setMonth(LogMonth.JANUARY);
        Said.of(small);
    }

    @Test
    void outsideTemperatureHasLimits() {
        log.setOutsideC(70.0);
        Said.of(small, "ERROR: Consumption log no. 1: outside temperature is 70 degC; it must be at most 55 degC.");
    }

    @Test
    void theMeanSpeedIsOneOfARoadBus() {
        log.setHours(0.5);
        Said.of(small, "WARNING: Consumption log no. 1: time in service is 0.5 h for 100 km, a mean speed of 200 km/h; "
                + "check both.");
    }

    @Test
    void theTypeFitsTheRoute() {
        log.setRoute(small.route);
        Said.of(small);
        log.setType(small.addDiesel("A diesel", BodyType.A));
        log.setEnergyKwh(0);
        log.setFuelL(30);
        Said.of(small, "ERROR: Consumption log no. 1: route R01 needs a type C bus but A diesel is a type A bus; change one "
                + "of them.");
    }

    @Test
    void aLogNamesItsType() {
        log.setType(null);
        Said.of(small, "ERROR: Consumption log no. 1: vehicle type is missing; choose one.");
    }

    @Test
    void aCurveDoesNotHeatAndCoolAtOnce() {
        small.electric.setCurveBaseKwhPerKm(0.8);
        small.electric.setCurveHeatKwPerK(0.3);
        small.electric.setCurveCoolFromC(15);
        Said.of(small, "ERROR: Electric bus type C electric: curve: cooling starts at is 15 degC, below the curve: mild "
                + "temperature of 18 degC, so it would heat and cool at once; raise the one or lower the other.");
        small.electric.setCurveBaseKwhPerKm(0);
        Said.of(small);
    }

    @Test
    void aCurveKnowsTheCold() {
        small.electric.setCurveBaseKwhPerKm(0.8);
        Said.of(small, "WARNING: Electric bus type C electric: its consumption curve knows no cold, so winter looks like "
                + "spring; enter heating and rise in the cold, or fit the curve to logs.");
        small.electric.setHeatSource(HeatSource.FUEL_FIRED);
        Said.of(small);
    }

    @Test
    void aRouteByCurveHasATypeWithOne() {
        small.route.setEnergyModel(EnergyModel.CURVE);
        Said.of(small, "WARNING: Route R01: energy model is consumption curve but no electric type C bus has one, so it "
                + "stays with the physics; fit or enter a curve, or choose the physics.");
        small.electric.setCurveBaseKwhPerKm(0.8);
        small.electric.setCurveRisePerK(0.005);
        Said.of(small);
    }
}
