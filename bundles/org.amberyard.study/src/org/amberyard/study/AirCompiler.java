package org.amberyard.study;

import java.util.Map;
import org.amberyard.core.air.GreenhouseGas;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.model.study.EmissionFactors;

/** Compiles emission factors. */
final class AirCompiler {
    private AirCompiler() {
    }

    static GreenhouseGas compile(EmissionFactors factors) {
        Map<FuelKind, Double> co2 = Map.of(FuelKind.DIESEL, factors.getDieselCo2KgPerL(), FuelKind.GASOLINE,
                factors.getGasolineCo2KgPerL(), FuelKind.PROPANE, factors.getPropaneCo2KgPerL());
        return new GreenhouseGas(co2, factors.getEngineCh4GPerKm(), factors.getEngineN2oGPerKm(), factors.getGwpCh4(),
                factors.getGwpN2o(), factors.getGridCo2eKgPerKwh(), factors.getGridTrendPerYear(),
                factors.getLineLossShare());
    }
}
