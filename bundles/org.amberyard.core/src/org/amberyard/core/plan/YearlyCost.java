package org.amberyard.core.plan;

import java.util.OptionalInt;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.PackYears;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.duty.VehicleSpec;
import org.amberyard.core.money.DiscountFactor;

/**
 * What a bus on a route costs in a typical year at base-date prices, to compare remedies: capital recovery of its price over
 * its life, energy, upkeep at half its life, packs worn beyond the first.
 *
 * <p>Its charging demand counts in full, as if it fell together with the yard's peak, so a remedy that charges by day or heats
 * from the grid is not made to look cheap. Grants, ports and insurance are left out: they are alike for the remedies or not
 * theirs to decide.
 */
final class YearlyCost {
    private final StudyInput study;
    private final PackYears packYears;
    private final BusWear wear;
    private final UpkeepCalibrations calibrations;
    private final double efficiency;
    private final YardPrices yardPrices;

    YearlyCost(StudyInput study, DutyTable duty, StudyFigures figures, YardPrices yardPrices) {
        this.study = study;
        this.packYears = duty.packYears();
        this.wear = figures.wear();
        this.calibrations = figures.calibrations();
        this.efficiency = study.depot().meanEfficiency();
        this.yardPrices = yardPrices;
    }

    /** Cost of a type on a route, money per year; {@code spec} may differ from the type's own, as with another heater. */
    double of(VehicleTypeInput type, VehicleSpec spec, RouteUse use, BlockCheck check) {
        VehiclePrices prices = type.prices();
        double capital = (prices.purchase() - prices.endValue()
                * DiscountFactor.single(study.money().rates().real(), prices.lifeYears())) * recovery(prices);
        TypeUpkeep kept = new TypeUpkeep(type, study.rules().upkeep());
        double upkeep = calibrations.of(type).factor()
                * kept.meanPerYear(wear.of(kept, use.year(), 0, OptionalInt.empty()), prices.lifeYears() / 2);
        double heaterFuel = fuel(FuelKind.DIESEL, use.year().heaterFuelL());
        return capital + upkeep + heaterFuel
                + (spec instanceof ElectricSpec electric ? electric(electric.battery(), use, check, prices)
                        : engine((EngineSpec) spec, use));
    }

    /** Yearly cost of something fitted once for the life of a bus. */
    double ofPrice(double price, VehiclePrices prices) {
        return price * recovery(prices);
    }

    private double recovery(VehiclePrices prices) {
        return DiscountFactor.capitalRecovery(study.money().rates().real(), prices.lifeYears());
    }

    private double engine(EngineSpec engine, RouteUse use) {
        double litres = use.year().fuelL();
        return fuel(engine.fuel(), litres) + litres * engine.exhaustFluidShare() * study.prices().exhaustFluid().base();
    }

    /** True when the study prices a fuel. */
    boolean prices(FuelKind kind) {
        return study.prices().fuels().containsKey(kind);
    }

    private double fuel(FuelKind kind, double litres) {
        return litres > 0 ? litres * study.prices().fuels().get(kind).base() : 0;
    }

    private double electric(BatterySpec battery, RouteUse use, BlockCheck check, VehiclePrices prices) {
        return new BusBill(yardPrices, battery, check, efficiency).year(use) + packs(battery, use, check, prices);
    }

    private double packs(BatterySpec battery, RouteUse use, BlockCheck check, VehiclePrices prices) {
        double serviceYears = PackService.of(battery, packYears.of(use, battery, check), prices.lifeYears()).lastAge() + 1.0;
        double beyondFirst = Math.max(0, prices.lifeYears() / serviceYears - 1);
        return battery.nominalKwh() * study.prices().pack().base() * beyondFirst / prices.lifeYears();
    }
}
