package org.amberyard.core.plan;

import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.StraightLine;

/** Prices of new buses, and what is left of buses and their packs, constant money. */
final class BusValues {
    private final StudyInput study;

    BusValues(StudyInput study) {
        this.study = study;
    }

    /** Price of a new bus of a type at the start of a year. */
    double price(int type, int year) {
        return study.types().get(type).prices().purchase() * index(type, year, CostCategory.BUS_PURCHASE);
    }

    /** Value of a bus at an age, at the prices of a year at the time of a category. */
    double ofBus(Vehicle vehicle, double ageYears, int year, CostCategory category) {
        return study.types().get(vehicle.type()).prices().value(ageYears) * index(vehicle.type(), year, category);
    }

    private double index(int type, int year, CostCategory category) {
        PriceDeck.Subject subject = study.types().get(type).electric().isPresent() ? PriceDeck.Subject.ELECTRIC_BUS
                : PriceDeck.Subject.ENGINE_BUS;
        return study.prices().index(subject, year, study.money().time(category, year));
    }

    /**
     * What the pack of a bus of an age makes the bus worth more than {@link #ofBus} says, at the price of a new pack then; below
     * zero where it makes it worth less. The straight line of the bus holds a pack as old as the bus: a replacement counts by
     * what it is ahead of that or behind it, the pack that the bus came with only where it has worn faster than the bus.
     */
    double ofPack(Vehicle vehicle, double ageYears, int year, CostCategory category) {
        double held = StraightLine.lifeLeft(ageYears, study.types().get(vehicle.type()).prices().lifeYears());
        double share = vehicle.pack().priceShare();
        return study.types().get(vehicle.type()).electric().map(ElectricSpec::battery).map(battery -> {
            double left = PackReplacement.lifeLeft(battery, vehicle.pack().wear());
            return newPack(battery, year, category) * (share > 0 ? share * left - held : Math.min(0, left - held));
        }).orElse(0.0);
    }

    /** What the sale of a bus brings at the start of a year. */
    double sale(Vehicle vehicle, int year) {
        return sale(vehicle, vehicle.ageYears(year), year);
    }

    /**
     * What the sale of a bus at an age brings, at the prices of the start of a year. A pack that is ahead of the bus brings no
     * more than an old pack sold by itself.
     */
    double sale(Vehicle vehicle, double ageYears, int year) {
        return ofBus(vehicle, ageYears, year, CostCategory.BUS_SALE)
                + Math.min(ofPack(vehicle, ageYears, year, CostCategory.BUS_SALE), oldPack(vehicle, year, CostCategory.BUS_SALE));
    }

    /** What the pack of a bus brings by itself; it follows the price path of packs. */
    double oldPack(Vehicle vehicle, int year, CostCategory category) {
        double perKwh = study.types().get(vehicle.type()).prices().packs().resalePerKwh()
                * study.prices().pack().path().factor(year, study.money().time(category, year));
        return study.types().get(vehicle.type()).electric()
                .map(e -> e.battery().nominalKwh() * vehicle.health() * perKwh).orElse(0.0);
    }

    private double newPack(BatterySpec battery, int year, CostCategory category) {
        return battery.nominalKwh() * study.prices().pack().at(year, study.money().time(category, year));
    }
}
