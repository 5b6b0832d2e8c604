package org.amberyard.testsupport;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.ChargeAcceptance;
import org.amberyard.core.battery.PackHeat;
import org.amberyard.core.battery.PackLife;
import org.amberyard.core.battery.PackResistance;
import org.amberyard.core.duty.BrakeRecovery;
import org.amberyard.core.duty.Cabin;
import org.amberyard.core.duty.DrivelineLoss;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.VehicleBody;
import org.amberyard.core.plan.VehiclePrices;
import org.amberyard.core.plan.PackPrices;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.upkeep.UpkeepRate;

/** Invented vehicle types: one diesel and two electric types of body type C. */
final class SampleTypes {
    static final int DIESEL = 0;
    static final int SMALL_PACK = 1;
    static final int LARGE_PACK = 2;

    private SampleTypes() {
    }

    static List<VehicleTypeInput> all() {
        return List.of(diesel(), electric("E150", 150, 338_000), electric("E226", 226, 389_000));
    }

    private static VehicleTypeInput diesel() {
        EngineSpec spec = new EngineSpec("Diesel C", body(7_400, DrivelineLoss.mechanical(0.86)), FuelKind.DIESEL, 0.4, 2.2,
                0.03, 0.2, new Heater(Heater.Source.FUEL_FIRED, 0, 1, 0, 0.8));
        VehiclePrices prices = new VehiclePrices(158_000, 12, 400_000, 3, 4_000, new UpkeepRate(0.35, 0.03), 120,
                OptionalDouble.empty(), PackPrices.NONE);
        return new VehicleTypeInput(spec, prices, 0, 0, DIESEL);
    }

    private static VehicleTypeInput electric(String name, double nominalKwh, double price) {
        BatterySpec battery = new BatterySpec(nominalKwh, 0.9, 0.006, new PackResistance(0.04),
                new ChargeAcceptance(1, 15, -10, 0.9), new PackHeat(12, 5, 4, 32, 2),
                new PackLife(3_000, 0.75, 40, 1, new LinearFade(0.015, 0.00003)));
        Heater heater = new Heater(Heater.Source.RESISTANCE, 20, 2, 0.03, 0.8);
        ElectricSpec spec = new ElectricSpec(name, body(8_200 + 6 * nominalKwh, DrivelineLoss.electric(0.88, 140, 50)),
                new BrakeRecovery(120, 8, 1.3), heater, battery, Optional.empty());
        VehiclePrices prices = new VehiclePrices(price, 15, 450_000, 3, 6_000, new UpkeepRate(0.22, 0.015), 180,
                OptionalDouble.of(5_000), PackPrices.NONE);
        return new VehicleTypeInput(spec, prices, 19.2, 60, DIESEL);
    }

    private static VehicleBody body(double massKg, DrivelineLoss driveline) {
        Cabin cabin = new Cabin(18, 0.2, 400, 0.006, 0.2, 3, 25, 2.5, 9);
        return new VehicleBody("C", massKg, 0.008, 5.4, 1.05, driveline, 2.2, cabin);
    }
}
