package org.amberyard.core.yard;

import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;

/**
 * Sets the least-cost schedule of a year beside the schedules of the policies without prices and takes the cheapest of those that
 * leave least energy missing and keep to the limit of the site. The programme schedules energy at given plugs; the other policies
 * may share plugs otherwise, charge more between runs or happen on what a full pack takes. Day by day nobody knows which will be
 * the cheapest: there another is taken only where it leaves less missing.
 */
final class PolicyChoice {
    /** Money of a year that decides nothing. */
    private static final double ROUNDING_MONEY = 0.01;
    private static final double ROUNDING_KW = 1e-6;

    private final YardInput yard;
    private final LoadMemory loads;
    private final Function<YardInput, YardYear> years;
    private final MonthCost cost;

    /**
     * @param yard a yard whose policy goes by prices
     * @param loads loads before prices schedule anything
     * @param years years of the same yard under other policies
     */
    PolicyChoice(YardInput yard, LoadMemory loads, Function<YardInput, YardYear> years) {
        this.yard = yard;
        this.loads = loads;
        this.years = years;
        this.cost = new MonthCost(yard);
    }

    /** The months of the programme's schedule, or of the cheaper one of another policy. */
    List<MonthLoad> cheapest(List<MonthLoad> scheduled) {
        YardYear own = YardYear.of(yard, scheduled);
        boolean foresight = yard.rule().policy() == ChargePolicy.LEAST_COST;
        YardYear best = own;
        for (YardInput input : foresight || wholeMissingKwh(own) > 0 ? others(own) : List.<YardInput>of()) {
            YardYear other = years.apply(input);
            double lessKwh = wholeMissingKwh(best) - wholeMissingKwh(other);
            double cheaper = cost.of(best.parts()) - cost.of(other.parts());
            boolean better = lessKwh > 0 || lessKwh == 0 && foresight && cheaper > ROUNDING_MONEY;
            best = better && withinLimit(other) ? other : best;
        }
        return best == own ? scheduled : withGaps(best, own, scheduled);
    }

    /** The yard under those other policies that may be cheaper. */
    private List<YardInput> others(YardYear own) {
        return ChargePolicy.plain().stream().map(p -> yard.under(p))
                .filter(other -> !boundHolds(other, own) || mayBeCheaper(other, own)).toList();
    }

    /** Where each bus has a plug and power of its own and the same needs, no policy comes below the bound of any month. */
    private boolean boundHolds(YardInput other, YardYear own) {
        boolean ownPlugs = yard.ownPlugs() && yard.ports().stream().allMatch(u -> u.plugs() == 1);
        boolean sameNeeds = !yard.midday() || other.rule().managed();
        return ownPlugs && sameNeeds && !yard.metering().tariff().remembers() && wholeMissingKwh(own) == 0
                && own.months().stream().allMatch(m -> m.costGap().isPresent());
    }

    /** False where a policy is dearer in one month by more than it could be cheaper in all. */
    private boolean mayBeCheaper(YardInput other, YardYear own) {
        double gap = own.months().stream().mapToDouble(m -> m.costGap().orElseThrow()).sum();
        if (gap < ROUNDING_MONEY) {
            return false;
        }
        int month = own.months().stream().max(Comparator.comparingDouble(YardYear.Month::yardKwh)).orElseThrow().month();
        return cost.of(loads.month(other, month).metered()) - cost.of(own.bills().bills().get(month).parts()) < gap;
    }

    /** Missing energy in whole kWh, so that rounding does not decide. */
    private static double wholeMissingKwh(YardYear year) {
        return Math.rint(year.totalMissingKwh());
    }

    private boolean withinLimit(YardYear year) {
        double peakKw = yard.metering().shared() ? year.servicePeakKw() : year.yardPeakKw();
        return peakKw <= yard.siteLimitKw() + ROUNDING_KW;
    }

    /** The loads of another policy; the bound of the programme holds for them where the buses stand at the same plugs. */
    private List<MonthLoad> withGaps(YardYear other, YardYear own, List<MonthLoad> scheduled) {
        List<MonthLoad> taken = loads.unscheduled(other.input()).year();
        return IntStream.range(0, taken.size()).mapToObj(m -> {
            double dearer = cost.of(other.bills().bills().get(m).parts()) - cost.of(own.bills().bills().get(m).parts());
            OptionalDouble gap = scheduled.get(m).costGap();
            return taken.get(m).withGap(gap.isPresent() && taken.get(m).standsAs(scheduled.get(m))
                    ? OptionalDouble.of(gap.getAsDouble() + dearer) : OptionalDouble.empty());
        }).toList();
    }
}
