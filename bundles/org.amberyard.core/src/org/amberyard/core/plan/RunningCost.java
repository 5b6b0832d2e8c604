package org.amberyard.core.plan;

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
    private final PriceBook book;
    private final YearOfDriving driving;
    private final BusValues values;
    private final StudyFigures figures;

    RunningCost(PriceBook book, YearOfDriving driving, StudyFigures figures) {
        this.study = book.study();
        this.book = book;
        this.driving = driving;
        this.values = new BusValues(book);
        this.figures = figures;
    }

    /** Mean cost of a bus over a number of years from the start of a year. */
    double perYear(int year, int place, Vehicle bus, double years) {
        EnergyUse use = driving.of(year, place, bus).record().use();
        return energy(year, bus, use) + kept(year, place, bus, use, years);
    }

    private double energy(int year, Vehicle bus, EnergyUse use) {
        double charged = study.types().get(bus.type()).electric().isPresent() ? use.batteryKwh() + use.gridKwh() : 0;
        double energy = charged / study.depot().meanEfficiency() * figures.prices().nightPerKwh()
                * book.at(PriceKind.ENERGY_CHARGES.one(), year, CostCategory.ELECTRIC_ENERGY);
        double heater = fuel(FuelKind.DIESEL, use.heaterFuelL(), year);
        return energy + heater + study.types().get(bus.type()).engine().map(engine -> fuel(engine.fuel(), use.fuelL(), year)
                + use.fuelL() * engine.exhaustFluidShare()
                        * book.at(PriceKind.EXHAUST_FLUID.one(), year, CostCategory.EXHAUST_FLUID)).orElse(0.0);
    }

    private double fuel(FuelKind kind, double litres, int year) {
        return litres > 0 ? litres * book.at(PriceKind.FUEL.of(kind.ordinal()), year, CostCategory.FUEL) : 0;
    }

    /** Upkeep, insurance and fees in the middle of the years. */
    private double kept(int year, int place, Vehicle bus, EnergyUse use, double years) {
        VehicleTypeInput type = study.types().get(bus.type());
        BusInput where = study.buses().get(place);
        double middle = bus.ageYears(year) + years / 2;
        TypeUpkeep upkeep = new TypeUpkeep(type, study.rules().upkeep());
        double shop = figures.calibrations().of(bus.type()).factor()
                * upkeep.meanPerYear(figures.wear().of(upkeep, use, where.idleHoursPerYear(), where.route()), middle);
        double insured = new Amount.Premium(values.insured(bus, middle)).at(book, year, CostCategory.INSURANCE);
        return shop * book.at(PriceKind.UPKEEP.one(), year, CostCategory.UPKEEP) + insured
                + book.at(PriceKind.REGISTRATION.of(bus.type()), year, CostCategory.REGISTRATION);
    }
}
