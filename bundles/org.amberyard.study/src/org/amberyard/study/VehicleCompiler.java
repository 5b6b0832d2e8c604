package org.amberyard.study;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.CapacityFade;
import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.Cabin;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.VehicleBody;
import org.amberyard.core.plan.VehiclePrices;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.upkeep.UpkeepRate;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.VehicleType;

/** Compiles vehicle types. */
final class VehicleCompiler {
    private VehicleCompiler() {
    }

    static VehicleTypeInput compile(VehicleType type, int successor) {
        if (type instanceof ElectricType electric) {
            return new VehicleTypeInput(electricSpec(electric), prices(type), electric.getAcAcceptanceKw(),
                    electric.getDcAcceptanceKw(), successor);
        }
        return new VehicleTypeInput(engineSpec((CombustionType) type), prices(type), 0, 0, successor);
    }

    static FuelKind fuel(Fuel fuel) {
        return switch (fuel) {
            case DIESEL -> FuelKind.DIESEL;
            case GASOLINE -> FuelKind.GASOLINE;
            case PROPANE -> FuelKind.PROPANE;
        };
    }

    private static EngineSpec engineSpec(CombustionType type) {
        return new EngineSpec(type.getName(), body(type), fuel(type.getFuel()), type.getIndicatedEfficiency(),
                type.getIdleFuelLPerH(), type.getExhaustFluidShare());
    }

    private static ElectricSpec electricSpec(ElectricType type) {
        BrakeRecovery recovery = new BrakeRecovery(type.getRecoveryPowerKw(), type.getRecoveryCutoffKmh(),
                type.getRecoveryEfficiency());
        Heater heater = new Heater(heatSource(type), type.getHeaterKw(), type.getHeatPumpCopAtFreezing(),
                type.getHeatPumpCopRisePerK(), type.getHeaterFuelEfficiency());
        return new ElectricSpec(type.getName(), body(type), recovery, heater, battery(type), CurveCompiler.curve(type));
    }

    private static Heater.Source heatSource(ElectricType type) {
        return switch (type.getHeatSource()) {
            case RESISTANCE -> Heater.Source.RESISTANCE;
            case HEAT_PUMP -> Heater.Source.HEAT_PUMP;
            case FUEL_FIRED -> Heater.Source.FUEL_FIRED;
        };
    }

    private static BatterySpec battery(ElectricType type) {
        CapacityFade fade = new CapacityFade(type.getCalendarFadePerYear(), type.getCycleFadeAtLimit() / type.getCycleLimit());
        return new BatterySpec(type.getBatteryKwh(), type.getUsableShare(), type.getColdUsableLossPerK(),
                type.getCycleLimit(), type.getEndOfLifeShare(), fade);
    }

    private static VehicleBody body(VehicleType type) {
        Cabin cabin = new Cabin(type.getCabinSetpointC(), type.getCabinLossKwPerK(), type.getDoorLossKwhPerK(),
                type.getSoakKwhPerK(), type.getCoolingThresholdC(), type.getCoolingKwPerK(), type.getCoolingCapKw());
        return new VehicleBody(type.getBodyType().getLiteral(), type.getCurbMassKg(), type.getRollingResistance(),
                type.getDragCoefficient() * type.getFrontalAreaM2(), type.getRotatingMassFactor(),
                type.getDrivelineEfficiency(), type.getAuxiliaryKw(), cabin);
    }

    private static VehiclePrices prices(VehicleType type) {
        return new VehiclePrices(type.getPurchasePrice(), type.getLifeYears(), type.getLifeKm(),
                type.getSpareExtraYears(), type.getValueAtRetirement(),
                new UpkeepRate(type.getUpkeepPerKm(), type.getUpkeepRisePerKmYear()), type.getRegistrationPerYear());
    }
}
