package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.CostCategory;

/**
 * Mean cost of running a bus in a place over some years, at the prices of the first of them, constant money per year: fuel or
 * energy at the cheapest price of the night, upkeep, insurance and fees.
 *
 * <p>Charging demand is left out, because it belongs to the yard.
 */
final class RunningCost {
    private final StudyInput study;
    private final YearOfDriving driving;
    private final BusValues values;
    private final StudyFigures figures;

    RunningCost(StudyInput study, YearOfDriving driving, StudyFigures figures) {
        this.study = study;
        this.driving = driving;
        this.values = new BusValues(study);
        this.figures = figures;
    }

    /** Mean cost of a bus over a number of years from the start of a year. */
    Amount perYear(int year, int place, Vehicle bus, double years) {
        EnergyUse use = driving.of(year, place, bus).record().use();
        List<Amount> parts = new ArrayList<>(energy(year, bus, use));
        parts.addAll(kept(year, place, bus, use, years));
        return new Amount.Sum("running cost of " + bus.unit(), parts);
    }

    private List<Amount> energy(int year, Vehicle bus, EnergyUse use) {
        List<Amount> parts = new ArrayList<>();
        if (study.types().get(bus.type()).electric().isPresent()) {
            parts.add(paid(year, CostCategory.ELECTRIC_ENERGY, (use.batteryKwh() + use.gridKwh()) / study.depot().meanEfficiency()
                    * figures.prices().nightPerKwh(), PriceKind.ENERGY_CHARGES.one(), "energy at the price of the night"));
        }
        addFuel(FuelKind.DIESEL, use.heaterFuelL(), year, parts);
        study.types().get(bus.type()).engine().ifPresent(engine -> {
            addFuel(engine.fuel(), use.fuelL(), year, parts);
            parts.add(paid(year, CostCategory.EXHAUST_FLUID, use.fuelL() * engine.exhaustFluidShare(),
                    PriceKind.EXHAUST_FLUID.one(), "exhaust fluid"));
        });
        return parts;
    }

    private static void addFuel(FuelKind kind, double litres, int year, List<Amount> parts) {
        if (litres > 0) {
            parts.add(paid(year, CostCategory.FUEL, litres, PriceKind.FUEL.of(kind.ordinal()), "fuel"));
        }
    }

    private static Amount paid(int year, CostCategory category, double quantity, UnitPrice price, String name) {
        return new Amount.PaidIn(year, category, Amount.of(quantity, price, name, ""));
    }

    /** Upkeep, insurance and fees in the middle of the years. */
    private List<Amount> kept(int year, int place, Vehicle bus, EnergyUse use, double years) {
        VehicleTypeInput type = study.types().get(bus.type());
        BusInput where = study.buses().get(place);
        double middle = bus.ageYears(year) + years / 2;
        TypeUpkeep upkeep = new TypeUpkeep(type, study.rules().upkeep());
        double shop = figures.calibrations().of(bus.type()).factor()
                * upkeep.meanPerYear(figures.wear().of(upkeep, use, where.idleHoursPerYear(), where.route()), middle);
        return List.of(paid(year, CostCategory.UPKEEP, shop, PriceKind.UPKEEP.one(), "upkeep"),
                new Amount.PaidIn(year, CostCategory.INSURANCE, new Amount.Premium(values.insured(bus, middle))),
                paid(year, CostCategory.REGISTRATION, 1, PriceKind.REGISTRATION.of(bus.type()), "registration and fees"));
    }
}
