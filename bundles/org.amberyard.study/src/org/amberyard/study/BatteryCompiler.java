package org.amberyard.study;

import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.ChargeAcceptance;
import org.amberyard.core.battery.FadeLaw;
import org.amberyard.core.battery.LfpFade;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.NmcFade;
import org.amberyard.core.battery.PackHeat;
import org.amberyard.core.battery.PackLife;
import org.amberyard.core.battery.PackResistance;
import org.amberyard.core.battery.Warranty;
import org.amberyard.core.plan.PackPrices;
import org.amberyard.model.vehicles.ElectricType;

/** Compiles the battery of an electric type and what its replacement costs. */
final class BatteryCompiler {
    private BatteryCompiler() {
    }

    static BatterySpec battery(ElectricType type) {
        return new BatterySpec(type.getBatteryKwh(), type.getUsableShare(), type.getColdUsableLossPerK(),
                new PackResistance(type.getPackLossShare()), acceptance(type), heat(type), life(type));
    }

    private static PackLife life(ElectricType type) {
        return new PackLife(type.getCycleLimit(), type.getEndOfLifeShare(), type.getPackAgeLimitYears(),
                type.getStorageShare(), fade(type));
    }

    private static FadeLaw fade(ElectricType type) {
        return switch (type.getChemistry()) {
            case LINEAR -> new LinearFade(type.getCalendarFadePerYear(), type.getCycleFadeAtLimit() / type.getCycleLimit());
            case LFP -> new LfpFade();
            case NMC -> new NmcFade();
        };
    }

    static PackPrices prices(ElectricType type) {
        Optional<PackPrices.Refurbished> refurbished = type.getRefurbishedPriceShare() > 0
                ? Optional.of(new PackPrices.Refurbished(type.getRefurbishedPriceShare(), type.getRefurbishedHealth()))
                : Optional.empty();
        return new PackPrices(type.getReplacementLabour(), type.getPackResalePerKwh(),
                new Warranty(type.getWarrantyYears(), type.getWarrantyKm(), type.getWarrantyShare()), refurbished);
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
