package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.LinearFade;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.duty.VehicleSpec;
import org.amberyard.core.duty.WeatherDay;
import org.amberyard.core.duty.YardHabit;

/** The tiny district with another pack or heater. */
final class TinyPacks {
    private TinyPacks() {
    }

    static StudyInput withCycleLimit(StudyInput study, double limit) {
        return withPack(study, SampleBus.battery(150, 0.004, limit, 0.5, new LinearFade(0.01, 0)));
    }

    static StudyInput withPack(StudyInput study, BatterySpec battery) {
        ElectricSpec old = study.types().get(TinyDistrict.ELECTRIC).electric().orElseThrow();
        return withSpec(study, new ElectricSpec(old.name(), old.body(), old.recovery(), old.heater(), battery, old.curve()));
    }

    static StudyInput withHeater(StudyInput study, Heater heater) {
        ElectricSpec old = study.types().get(TinyDistrict.ELECTRIC).electric().orElseThrow();
        return withSpec(study, new ElectricSpec(old.name(), old.body(), old.recovery(), heater, old.battery(), old.curve()));
    }

    static StudyInput withHabit(StudyInput study, YardHabit habit) {
        return with(study, study.types(), study.duty().withHabit(habit));
    }

    static StudyInput withClimate(StudyInput study, Climate normal, WeatherDay coldest, WeatherDay hottest) {
        List<Climate.MonthWeather> months = normal.months().stream()
                .map(m -> new Climate.MonthWeather(m.normal(), coldest, hottest)).toList();
        DutyInput duty = study.duty();
        return with(study, study.types(), new DutyInput(new Climate(normal.elevationM(), months), duty.style(),
                duty.riderMassKg(), duty.routes(), duty.vehicles(), duty.habit(), duty.measured()));
    }

    static StudyInput withPackPrices(StudyInput study, PackPrices packs) {
        VehicleTypeInput type = study.types().get(TinyDistrict.ELECTRIC);
        VehiclePrices p = type.prices();
        VehiclePrices prices = new VehiclePrices(p.purchase(), p.lifeYears(), p.lifeKm(), p.spareExtraYears(),
                p.valueAtRetirement(), p.upkeep(), p.registrationPerYear(), p.fuelFiredHeater(), packs);
        List<VehicleTypeInput> types = new ArrayList<>(study.types());
        types.set(TinyDistrict.ELECTRIC, new VehicleTypeInput(type.spec(), prices, type.acAcceptanceKw(),
                type.dcAcceptanceKw(), type.successor()));
        return with(study, types, study.duty());
    }

    private static StudyInput withSpec(StudyInput study, ElectricSpec spec) {
        VehicleTypeInput type = study.types().get(TinyDistrict.ELECTRIC);
        List<VehicleTypeInput> types = new ArrayList<>(study.types());
        types.set(TinyDistrict.ELECTRIC, new VehicleTypeInput(spec, type.prices(), type.acAcceptanceKw(),
                type.dcAcceptanceKw(), type.successor()));
        List<VehicleSpec> specs = types.stream().map(VehicleTypeInput::spec).toList();
        DutyInput old = study.duty();
        DutyInput duty = new DutyInput(old.climate(), old.style(), old.riderMassKg(), old.routes(), specs, old.habit(),
                old.measured());
        return with(study, types, duty);
    }

    private static StudyInput with(StudyInput study, List<VehicleTypeInput> types, DutyInput duty) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), duty, types,
                study.buses(), study.depot(), study.prices(), study.funding(), study.air(), study.rules(), study.plans(),
                study.baseline(), study.trips());
    }
}
