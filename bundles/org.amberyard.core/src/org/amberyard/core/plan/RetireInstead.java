package org.amberyard.core.plan;

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
    private final YearOfDriving driving;
    private final RunningCost running;
    private final BusValues values;
    private final RetirementMarks marks;

    RetireInstead(PriceBook book, YearOfDriving driving, StudyFigures figures) {
        this.study = book.study();
        this.driving = driving;
        this.running = new RunningCost(book, driving, figures);
        this.values = new BusValues(book);
        this.marks = new RetirementMarks(study);
    }

    /**
     * The two yearly costs, constant money.
     *
     * @param keptPerYear the old bus with another pack
     * @param nextPerYear the next bus
     */
    record Choice(double keptPerYear, double nextPerYear) {

        boolean retires() {
            return keptPerYear > nextPerYear;
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
    Optional<Choice> of(int year, int place, Vehicle worn, Vehicle renewed, double paid) {
        double left = Math.max(1, yearsLeft(year, place, worn));
        if (usedUp(year, place, driven(year, place, renewed, left))) {
            return Optional.empty();
        }
        double years = Math.min(left, study.years() - (double) year);
        double keptAtEnd = left > years ? atStudyEnd(year, place, renewed, years)
                : values.sale(driven(year, place, renewed, years), worn.ageYears(year) + years, end(year, years));
        int type = study.types().get(worn.type()).successor();
        Vehicle next = new Vehicle(worn.unit(), type, year, 0, Vehicle.Pack.FIRST, 1);
        return Optional.of(new Choice(
                perYear(paid + values.sale(worn, year), keptAtEnd, years) + running.perYear(year, place, renewed, years),
                perYear(values.price(type, year), atStudyEnd(year, place, next, years), years)
                        + running.perYear(year, place, next, years)));
    }

    private boolean usedUp(int year, int place, Vehicle bus) {
        return PackReplacement.due(study.types().get(bus.type()).electric().orElseThrow().battery(), bus.pack().wear(),
                driving.leastHealth(year, place, bus.type())).isPresent();
    }

    private double perYear(double tiedUp, double atEnd, double years) {
        double rate = study.money().rates().real();
        return (tiedUp - atEnd * DiscountFactor.single(rate, years)) * DiscountFactor.capitalRecovery(rate, years);
    }

    /** What a bus that stays in service and its pack are worth after some years, as the study credits it at its own end. */
    private double atStudyEnd(int year, int place, Vehicle bus, double years) {
        int last = end(year, years) - 1;
        double age = bus.ageYears(year) + years;
        Vehicle then = driven(year, place, bus, years);
        return values.ofBus(then, age, last, CostCategory.BUS_VALUE_LEFT) + values.ofPack(then, age, last, CostCategory.PACK_LIFE_LEFT);
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
