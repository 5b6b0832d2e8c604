package org.amberyard.study.begin;

import org.amberyard.model.common.BodyType;
import org.amberyard.model.common.Quality;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesFactory;

/** Vehicle types of which nothing is known but body and fuel: figures of their own body, marked as assumed. */
public final class AssumedTypes {
    /** Where the figures are from. */
    public static final String SOURCE = "figures usual for the body type; common practice, no source: enter the maker's";
    /** Gasoline and propane engines of such buses turn less of the fuel into work than diesel engines; common practice, no source. */
    private static final double SPARK_EFFICIENCY = 0.3;

    private AssumedTypes() {
    }

    /** An engine bus; it is replaced by one like it. */
    public static CombustionType engine(BodyType body, Fuel fuel) {
        BodyFigures figures = BodyFigures.of(body);
        CombustionType type = VehiclesFactory.eINSTANCE.createCombustionType();
        type.setFuel(fuel);
        type.setCurbMassKg(figures.engineKg());
        type.setIdleFuelLPerH(figures.idleFuelLPerH());
        type.setPurchasePrice(figures.engineBus());
        if (fuel != Fuel.DIESEL) {
            type.setIndicatedEfficiency(SPARK_EFFICIENCY);
            type.setExhaustFluidShare(0);
        }
        return common(type, capital(fuel.getLiteral()), body, figures);
    }

    /** An electric bus; it is replaced by one like it. */
    public static ElectricType electric(BodyType body) {
        BodyFigures figures = BodyFigures.of(body);
        ElectricType type = VehiclesFactory.eINSTANCE.createElectricType();
        type.setCurbMassKg(figures.electricKg());
        type.setBatteryKwh(figures.packKwh());
        type.setMotorPowerKw(figures.motorKw());
        type.setRecoveryPowerKw(figures.recoveryKw());
        type.setHeaterKw(figures.heaterKw());
        type.setPurchasePrice(figures.electricBus());
        return common(type, "Electric", body, figures);
    }

    private static <T extends VehicleType> T common(T type, String kind, BodyType body, BodyFigures figures) {
        type.setName(kind + " " + body.getLiteral());
        type.setBodyType(body);
        type.setFrontalAreaM2(figures.frontalAreaM2());
        type.setAuxiliaryKw(figures.auxiliaryKw());
        type.setCabinLossKwPerK(figures.cabinLossKwPerK());
        type.setFreshAirM3PerH(figures.freshAirM3PerH());
        type.setDoorLossKwhPerK(figures.doorLossKwhPerK());
        type.setSoakKwhPerK(figures.soakKwhPerK());
        type.setSunApertureM2(figures.sunApertureM2());
        type.setSuccessor(type);
        SourceNotes.put(type, SourceNotes.EVERY_FIELD, Quality.ASSUMED, SOURCE);
        return type;
    }

    private static String capital(String word) {
        return Character.toUpperCase(word.charAt(0)) + word.substring(1);
    }
}
