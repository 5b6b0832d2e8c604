package org.amberyard.core.plan;

import java.util.OptionalInt;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.DiscountFactor;

/**
 * The rule that retires a bus when its pack is due late in its life: what the pack costs per year that the bus has left is
 * compared with the yearly capital recovery of the bus that would take its place; if the pack costs more, the bus goes.
 * Energy, upkeep and grants are left out, so the rule is plain to check (common practice, no source).
 */
final class RetireInstead {
    private final StudyInput study;

    RetireInstead(StudyInput study) {
        this.study = study;
    }

    /** The two yearly costs, constant money. */
    record Choice(double packPerYear, double busPerYear) {

        boolean retires() {
            return packPerYear > busPerYear;
        }
    }

    /** The choice at the end of a year in which the pack came due. */
    Choice of(int year, int place, Vehicle vehicle, double packCost) {
        VehicleTypeInput type = study.types().get(vehicle.type());
        VehicleTypeInput next = study.types().get(type.successor());
        PriceDeck.Subject subject = next.electric().isPresent() ? PriceDeck.Subject.ELECTRIC_BUS : PriceDeck.Subject.ENGINE_BUS;
        double index = study.prices().index(subject, year, study.money().time(CostCategory.BUS_PURCHASE, year));
        return new Choice(packCost / Math.max(1, yearsLeft(year + 1, place, vehicle)), capital(next.prices()) * index);
    }

    private double capital(VehiclePrices prices) {
        double rate = study.money().rates().real();
        double atEnd = prices.value(prices.lifeYears()) * DiscountFactor.single(rate, prices.lifeYears());
        return (prices.purchase() - atEnd) * DiscountFactor.capitalRecovery(rate, prices.lifeYears());
    }

    /** Years that the bus would still serve from the start of a year. */
    private double yearsLeft(int year, int place, Vehicle vehicle) {
        BusInput bus = study.buses().get(place);
        OptionalInt marked = bus.retirementYear();
        if (vehicle.unit().equals(bus.name()) && marked.isPresent()) {
            return (double) marked.getAsInt() - year;
        }
        double age = vehicle.ageYears(year);
        double kmPerYear = vehicle.odometerKm() / Math.max(1, age);
        return study.types().get(vehicle.type()).prices().yearsLeft(age, vehicle.odometerKm(), kmPerYear, bus.role());
    }
}
