package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.battery.PackReplacement;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.DiscountFactor;

/**
 * The rule that retires a bus when its pack is due in its last years, in which it would not use up another pack. What the bus
 * costs per year if it gets another pack and stays for the years that it has left, but no longer than the study, is compared
 * with what the bus that would take its place costs per year over the same years; the cheaper of the two is done (replacement
 * analysis with its values at the end; common practice, no source).
 *
 * <p>In both: the money tied up at the start, what is left at the end, running costs as {@link RunningCost} has them. The old bus
 * ties up what its sale would bring now and what the fleet pays for the pack. Grants and charging demand are left out: a grant
 * needs a step of the plan, and the demand is the yard's.
 */
final class RetireInstead {
    private final StudyInput study;
    private final PriceBook book;
    private final YearOfDriving driving;
    private final RunningCost running;
    private final BusValues values;
    private final RetirementMarks marks;

    RetireInstead(PriceBook book, YearOfDriving driving, StudyFigures figures) {
        this.study = book.study();
        this.book = book;
        this.driving = driving;
        this.running = new RunningCost(study, driving, figures);
        this.values = new BusValues(study);
        this.marks = new RetirementMarks(study);
    }

    /**
     * The two yearly costs, constant money.
     *
     * @param kept that of the old bus with another pack
     * @param next that of the next bus
     * @param keptPerYear the first at the prices of the study
     * @param nextPerYear the second
     */
    record Choice(Amount kept, Amount next, double keptPerYear, double nextPerYear) {

        boolean retires() {
            return keptPerYear > nextPerYear;
        }

        /** Kept less next; the bus retires where it is above zero. */
        Amount difference() {
            return new Amount.Sum("kept less next", List.of(kept, new Amount.Credit(next)));
        }
    }

    /**
     * The choice at the start of the year after that in which the pack came due; none where the bus would use up the next pack
     * too, because then it is not in its last years.
     *
     * @param worn the bus with its old pack
     * @param renewed the bus with its next pack
     * @param paid what the fleet pays for that
     */
    Optional<Choice> of(int year, int place, Vehicle worn, Vehicle renewed, Amount paid) {
        double left = Math.max(1, yearsLeft(year, place, worn));
        if (usedUp(year, place, driven(year, place, renewed, left))) {
            return Optional.empty();
        }
        double years = Math.min(left, study.years() - (double) year);
        Amount keptAtEnd = left > years ? atStudyEnd(year, place, renewed, years)
                : sale(driven(year, place, renewed, years), worn.ageYears(year) + years, end(year, years));
        int type = study.types().get(worn.type()).successor();
        Vehicle next = new Vehicle(worn.unit(), type, year, 0, Vehicle.Pack.FIRST, 1);
        Amount price = new Amount.PaidIn(year, CostCategory.BUS_PURCHASE,
                Amount.of(1, PriceKind.NEW_BUS.of(type), "the next bus", ""));
        return Optional.of(choice(
                perYear(List.of(paid, sale(worn, worn.ageYears(year), year)), keptAtEnd, years,
                        running.perYear(year, place, renewed, years)),
                perYear(List.of(price), atStudyEnd(year, place, next, years), years, running.perYear(year, place, next, years))));
    }

    private Choice choice(Amount kept, Amount next) {
        return new Choice(kept, next, kept.at(book, 0, CostCategory.BUS_PURCHASE), next.at(book, 0, CostCategory.BUS_PURCHASE));
    }

    private boolean usedUp(int year, int place, Vehicle bus) {
        return PackReplacement.due(study.types().get(bus.type()).electric().orElseThrow().battery(), bus.pack().wear(),
                driving.leastHealth(year, place, bus.type())).isPresent();
    }

    private Amount perYear(List<Amount> tiedUp, Amount atEnd, double years, Amount run) {
        double rate = study.money().rates().real();
        List<Amount> tied = new ArrayList<>(tiedUp);
        tied.add(new Amount.Times("left at the end, discounted", -DiscountFactor.single(rate, years), atEnd));
        return new Amount.Sum("cost per year", List.of(new Amount.Times("capital recovery",
                DiscountFactor.capitalRecovery(rate, years), new Amount.Sum("tied up", tied)), run));
    }

    private Amount sale(Vehicle bus, double ageYears, int year) {
        return new Amount.PaidIn(year, CostCategory.BUS_SALE, values.sold(bus, ageYears));
    }

    /** What a bus that stays in service and its pack are worth after some years, as the study credits it at its own end. */
    private Amount atStudyEnd(int year, int place, Vehicle bus, double years) {
        int last = end(year, years) - 1;
        double age = bus.ageYears(year) + years;
        Vehicle then = driven(year, place, bus, years);
        return new Amount.Sum("worth of " + bus.unit() + " at the end", List.of(
                new Amount.PaidIn(last, CostCategory.BUS_VALUE_LEFT, values.bus(then, age)),
                new Amount.PaidIn(last, CostCategory.PACK_LIFE_LEFT, values.pack(then, age))));
    }

    private static int end(int year, double years) {
        return year + (int) Math.ceil(years);
    }

    private Vehicle driven(int year, int place, Vehicle bus, double years) {
        if (study.types().get(bus.type()).electric().isEmpty()) {
            return bus;
        }
        VehicleYear driven = driving.of(year, place, bus).record();
        PackWear wear = bus.pack().wear().after(driving.packYear(year, place, bus.type(), driven.fullCycles()).rate(),
                driven.fullCycles(), years);
        return bus.driven(driven.use().km() * years, wear);
    }

    /** Years that the bus would still serve from the start of a year. */
    private double yearsLeft(int year, int place, Vehicle vehicle) {
        BusInput bus = study.buses().get(place);
        OptionalInt marked = marks.after(year, vehicle);
        if (marked.isPresent()) {
            return (double) marked.getAsInt() - year;
        }
        double age = vehicle.ageYears(year);
        double kmPerYear = vehicle.odometerKm() / Math.max(1, age);
        return study.types().get(vehicle.type()).prices().yearsLeft(age, vehicle.odometerKm(), kmPerYear, bus.role());
    }
}
