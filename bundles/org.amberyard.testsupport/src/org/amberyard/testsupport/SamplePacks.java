package org.amberyard.testsupport;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.battery.PackLife;
import org.amberyard.core.battery.Warranty;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.VehicleSpec;
import org.amberyard.core.plan.PackPrices;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.VehiclePrices;
import org.amberyard.core.plan.VehicleTypeInput;

/** Districts whose packs lose an eighth of their capacity each year and come to their end at 70 %, after three years. */
public final class SamplePacks {
    private static final PackLife SHORT = new PackLife(100_000, 0.7, 40, 1, new LinearFade(0.125, 0));
    private static final PackPrices PRICES = new PackPrices(2000, 20, new Warranty(6, 1_000_000, 0.7), Optional.empty());

    private SamplePacks() {
    }

    /** A study with such packs, under a warranty of six years, with labour of 2,000 and a resale of 20 per kWh. */
    public static StudyInput wearing(StudyInput study) {
        List<VehicleTypeInput> types = study.types().stream().map(SamplePacks::wearing).toList();
        List<VehicleSpec> specs = types.stream().map(VehicleTypeInput::spec).toList();
        DutyInput old = study.duty();
        DutyInput duty = new DutyInput(old.climate(), old.style(), old.riderMassKg(), old.routes(), specs, old.habit(),
                old.measured());
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), duty, types,
                study.buses(), study.depot(), study.prices(), study.funding(), study.air(), study.rules(), study.plans(),
                study.baseline(), study.trips());
    }

    private static VehicleTypeInput wearing(VehicleTypeInput type) {
        return type.electric().map(e -> {
            VehiclePrices p = type.prices();
            VehiclePrices prices = new VehiclePrices(p.purchase(), p.lifeYears(), p.lifeKm(), p.spareExtraYears(),
                    p.valueAtRetirement(), p.upkeep(), p.registrationPerYear(), p.fuelFiredHeater(), PRICES);
            BatterySpec b = e.battery();
            ElectricSpec spec = new ElectricSpec(e.name(), e.body(), e.recovery(), e.heater(), new BatterySpec(b.nominalKwh(),
                    b.usableShare(), b.coldUsableLossPerK(), b.resistance(), b.acceptance(), b.heat(), SHORT), e.curve());
            return new VehicleTypeInput(spec, prices, type.acAcceptanceKw(), type.dcAcceptanceKw(), type.successor());
        }).orElse(type);
    }
}
