package org.amberyard.study;

import java.util.OptionalDouble;
import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.Cabin;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.VehicleBody;
import org.amberyard.core.plan.PackPrices;
import org.amberyard.core.plan.VehiclePrices;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.upkeep.UpkeepRate;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.VehicleType;

/** Compiles vehicle types. */
final class VehicleCompiler {
    /** Heat over fuel energy of a small fuel-fired heater; common practice, no source. */
    private static final double AUXILIARY_HEATER_EFFICIENCY = 0.8;

    private VehicleCompiler() {
    }

    static VehicleTypeInput compile(VehicleType type, int successor) {
        if (type instanceof ElectricType electric) {
            return new VehicleTypeInput(electricSpec(electric), prices(type), electric.getAcAcceptanceKw(),
                    electric.getDcAcceptanceKw(), successor, type.getDeliveryMonths());
        }
        return new VehicleTypeInput(engineSpec((CombustionType) type), prices(type), 0, 0, successor,
                type.getDeliveryMonths());
    }

    static FuelKind fuel(Fuel fuel) {
        return switch (fuel) {
            case DIESEL -> FuelKind.DIESEL;
            case GASOLINE -> FuelKind.GASOLINE;
            case PROPANE -> FuelKind.PROPANE;
        };
    }

    private static EngineSpec engineSpec(CombustionType type) {
        Heater heater = new Heater(Heater.Source.FUEL_FIRED, type.getAuxiliaryHeaterKw(), 1, 0, AUXILIARY_HEATER_EFFICIENCY);
        VehicleBody body = body(type, DrivelineLoss.mechanical(type.getDrivelineEfficiency()));
        return new EngineSpec(type.getName(), body, fuel(type.getFuel()), type.getIndicatedEfficiency(),
                type.getIdleFuelLPerH(), type.getExhaustFluidShare(), type.getCoolantHeatShare(), heater);
    }

    private static ElectricSpec electricSpec(ElectricType type) {
        BrakeRecovery recovery = new BrakeRecovery(type.getRecoveryPowerKw(), type.getRecoveryCutoffKmh(),
                type.getRecoveryDecelerationMps2());
        Heater heater = new Heater(heatSource(type), type.getHeaterKw(), type.getHeatPumpCopAtFreezing(),
                type.getHeatPumpCopRisePerK(), type.getHeaterFuelEfficiency());
        DrivelineLoss driveline = DrivelineLoss.electric(type.getDrivelineEfficiency(), type.getMotorPowerKw(),
                type.getBaseSpeedKmh());
        return new ElectricSpec(type.getName(), body(type, driveline), recovery, heater, BatteryCompiler.battery(type),
                CurveCompiler.curve(type));
    }

    private static Heater.Source heatSource(ElectricType type) {
        return switch (type.getHeatSource()) {
            case RESISTANCE -> Heater.Source.RESISTANCE;
            case HEAT_PUMP -> Heater.Source.HEAT_PUMP;
            case FUEL_FIRED -> Heater.Source.FUEL_FIRED;
        };
    }

    private static VehicleBody body(VehicleType type, DrivelineLoss driveline) {
        Cabin cabin = new Cabin(type.getCabinSetpointC(), type.getCabinLossKwPerK(), type.getFreshAirM3PerH(),
                type.getDoorLossKwhPerK(), type.getSoakKwhPerK(), type.getSunApertureM2(), type.getCoolingThresholdC(),
                type.getCoolingCop(), type.getCoolingCapKw());
        return new VehicleBody(type.getBodyType().getLiteral(), type.getCurbMassKg(), type.getRollingResistance(),
                type.getDragCoefficient() * type.getFrontalAreaM2(), type.getRotatingMassFactor(), driveline,
                type.getAuxiliaryKw(), cabin);
    }

    private static VehiclePrices prices(VehicleType type) {
        return new VehiclePrices(type.getPurchasePrice(), type.getLifeYears(), type.getLifeKm(),
                type.getSpareExtraYears(), type.getValueAtRetirement(),
                new UpkeepRate(type.getUpkeepPerKm(), type.getUpkeepRisePerKmYear()), type.getRegistrationPerYear(),
                fuelFiredHeater(type), type instanceof ElectricType electric ? BatteryCompiler.prices(electric) : PackPrices.NONE);
    }

    private static OptionalDouble fuelFiredHeater(VehicleType type) {
        return type instanceof ElectricType electric && electric.getFuelFiredHeaterPrice() > 0
                ? OptionalDouble.of(electric.getFuelFiredHeaterPrice()) : OptionalDouble.empty();
    }
}
