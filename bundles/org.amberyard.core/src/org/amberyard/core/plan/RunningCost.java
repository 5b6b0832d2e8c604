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
    private final YearOfDriving driving;
    private final BusValues values;
    private final BusWear wear;
    private final UpkeepCalibrations calibrations;
    private final YardPrices prices;

    RunningCost(StudyInput study, YearOfDriving driving, UpkeepCalibrations calibrations) {
        this.study = study;
        this.driving = driving;
        this.values = new BusValues(study);
        this.wear = new BusWear(study.duty());
        this.calibrations = calibrations;
        this.prices = new YardPrices(study.depot().metering());
    }

    /** Mean cost of a bus over a number of years from the start of a year. */
    double perYear(int year, int place, Vehicle bus, double years) {
        VehicleYear driven = driving.of(year, place, bus).record();
        return energy(year, bus, driven) + kept(year, place, bus, driven.use(), years);
    }

    private double energy(int year, Vehicle bus, VehicleYear driven) {
        EnergyUse use = driven.use();
        double charged = study.types().get(bus.type()).electric().isPresent() ? use.batteryKwh() + use.gridKwh() : 0;
        double energy = charged / study.depot().meanEfficiency() * prices.nightPerKwh()
                * index(PriceDeck.Subject.ELECTRIC_ENERGY, year, CostCategory.ELECTRIC_ENERGY);
        double heater = fuel(FuelKind.DIESEL, driven.use().heaterFuelL(), year);
        return energy + heater + study.types().get(bus.type()).engine().map(engine -> fuel(engine.fuel(),
                driven.use().fuelL(), year) + driven.use().fuelL() * engine.exhaustFluidShare()
                        * study.prices().exhaustFluid().at(year, time(CostCategory.EXHAUST_FLUID, year))).orElse(0.0);
    }

    private double fuel(FuelKind kind, double litres, int year) {
        return litres > 0 ? litres * study.prices().fuels().get(kind).at(year, time(CostCategory.FUEL, year)) : 0;
    }

    /** Upkeep, insurance and fees in the middle of the years. */
    private double kept(int year, int place, Vehicle bus, EnergyUse use, double years) {
        VehicleTypeInput type = study.types().get(bus.type());
        BusInput where = study.buses().get(place);
        double middle = bus.ageYears(year) + years / 2;
        TypeUpkeep upkeep = new TypeUpkeep(type, study.rules().upkeep());
        double shop = calibrations.of(bus.type()).factor()
                * upkeep.meanPerYear(wear.of(upkeep, use, where.idleHoursPerYear(), where.route()), middle);
        double insured = values.ofBus(bus, middle, year, CostCategory.UPKEEP) * study.rules().insuranceShare();
        return (shop + insured + type.prices().registrationPerYear())
                * index(PriceDeck.Subject.UPKEEP, year, CostCategory.UPKEEP);
    }

    private double index(PriceDeck.Subject subject, int year, CostCategory category) {
        return study.prices().index(subject, year, time(category, year));
    }

    private double time(CostCategory category, int year) {
        return study.money().time(category, year);
    }
}
