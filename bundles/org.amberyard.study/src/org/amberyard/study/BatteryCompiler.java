package org.amberyard.study;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.ChargeAcceptance;
import org.amberyard.core.battery.PackHeat;
import org.amberyard.core.battery.PackResistance;
import org.amberyard.model.vehicles.ElectricType;

/** Compiles the battery of an electric type. */
final class BatteryCompiler {
    private BatteryCompiler() {
    }

    static BatterySpec battery(ElectricType type) {
        LinearFade fade = new LinearFade(type.getCalendarFadePerYear(), type.getCycleFadeAtLimit() / type.getCycleLimit());
        return new BatterySpec(type.getBatteryKwh(), type.getUsableShare(), type.getColdUsableLossPerK(),
                new PackResistance(type.getPackLossShare()), acceptance(type), heat(type), type.getCycleLimit(),
                type.getEndOfLifeShare(), fade);
    }

    private static ChargeAcceptance acceptance(ElectricType type) {
        return new ChargeAcceptance(type.getAcceptancePerHour(), type.getAcceptanceFullC(), type.getAcceptanceNoneC(),
                type.getTaperFromShare());
    }

    private static PackHeat heat(ElectricType type) {
        return new PackHeat(type.getPackTimeConstantH(), type.getPackHeatedToC(), type.getPackHeaterKw(),
                type.getPackCooledToC(), type.getPackCoolerKw());
    }
}
