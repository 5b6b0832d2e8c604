package org.amberyard.core.yard;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.MarginalPrices;
import org.amberyard.core.tariff.PeakHistory;
import org.amberyard.core.tariff.Ratchet;
import org.amberyard.core.tariff.TariffPeriod;

/**
 * What one more kWh and one more kW cost at a yard's meter through a year. Demand charges stand in one order for all months; in
 * a month without one its price is zero and it counts no hour.
 */
final class YearPrices {
    private static final int DAY_MIN = 1440;
    private static final int OTHER_MONTHS = 11;

    private final YardInput yard;
    private final List<MarginalPrices> months;
    private final List<String> charges;
    private final int[][] placeOfCharge;
    private final DayPrices[][] days;

    /** What steps of a kind of day cost, and which demand charges count them. */
    private record DayPrices(double[] perKwh, int[] demandSets) {
    }

    /** Prices around expected loads. */
    YearPrices(YardInput yard, List<MonthLoad> expected) {
        this(yard, expected, OptionalInt.empty());
    }

    /** Prices around expected loads, or of one block, counted from 0. */
    YearPrices(YardInput yard, List<MonthLoad> expected, OptionalInt block) {
        this.yard = yard;
        this.months = expected.stream().map(m -> new MarginalPrices(
                yard.metering().tariff().inForce(m.month(), yard.contractYear()), m.metered(yard.metering().shared()),
                PeakHistory.NONE, block)).toList();
        this.charges = months.stream().flatMap(m -> m.demandNames().stream()).distinct().toList();
        this.placeOfCharge = months.stream().map(m -> m.demandNames().stream().mapToInt(charges::indexOf).toArray())
                .toArray(int[][]::new);
        this.days = new DayPrices[expected.size()][DayClass.values().length];
    }

    /**
     * True when what is least at these prices is a bound of the bills of all months. It is none where a ratchet remembers other
     * hours than its charge bills, or not all of the year; nor where a minimum bill is filled up at other prices than the year's.
     */
    boolean support() {
        boolean minimum = yard.metering().tariff().minimum().amount() > 0 && yard.demandIndex() != 1;
        return !minimum && charges().allMatch(YearPrices::remembersItsOwnYear) && months.stream().allMatch(MarginalPrices::support);
    }

    private static boolean remembersItsOwnYear(DemandCharge charge) {
        Set<TariffPeriod> own = charge.rates().stream().map(ChargeRate::period).collect(Collectors.toSet());
        return charge.ratchet().stream().allMatch(r -> r.priorMonths() >= OTHER_MONTHS && Set.copyOf(r.counted()).equals(own));
    }

    private Stream<DemandCharge> charges() {
        return yard.metering().tariff().onDemand();
    }

    /** All prices of all months. */
    List<Double> figures() {
        return months.stream().flatMap(m -> m.figures().stream()).toList();
    }

    /** True when a demand charge bills a share of the demands of earlier months. */
    boolean remembers() {
        return Arrays.stream(ratchetShares()).anyMatch(share -> share > 0);
    }

    /** Share of the year's highest demand that each charge bills at least. */
    double[] ratchetShares() {
        return charges.stream().mapToDouble(this::ratchetShare).toArray();
    }

    private double ratchetShare(String charge) {
        return charges().filter(c -> c.name().equals(charge)).map(DemandCharge::ratchet)
                .flatMap(r -> r.stream()).mapToDouble(Ratchet::share).max().orElse(0);
    }

    /** Price of each demand charge in a month, in the proportion to energy of the yard's year. */
    double[] demandPrices(int month) {
        return byCharge(month, months.get(month).demandPrices(), yard.demandIndex());
    }

    private double[] byCharge(int month, double[] ofMonth, double factor) {
        double[] all = new double[charges.size()];
        for (int charge = 0; charge < ofMonth.length; charge++) {
            all[placeOfCharge[month][charge]] = factor * ofMonth[charge];
        }
        return all;
    }

    /** Price of energy through a stretch of days, money/kWh. */
    double[] perKwh(int month, StretchKind kind) {
        double[] prices = new double[kind.days().size() * steps()];
        for (int day = 0; day < kind.days().size(); day++) {
            System.arraycopy(of(month, kind.days().get(day)).perKwh, 0, prices, day * steps(), steps());
        }
        return prices;
    }

    /** Demand charges that count each step of a stretch of days. */
    int[] demandSets(int month, StretchKind kind) {
        int[] sets = new int[kind.days().size() * steps()];
        for (int day = 0; day < kind.days().size(); day++) {
            System.arraycopy(of(month, kind.days().get(day)).demandSets, 0, sets, day * steps(), steps());
        }
        return sets;
    }

    private DayPrices of(int month, DayClass day) {
        DayPrices known = days[month][day.ordinal()];
        if (known == null) {
            known = new DayPrices(IntStream.range(0, steps()).mapToDouble(step -> perKwh(month, day, step)).toArray(),
                    IntStream.range(0, steps()).map(step -> set(month, day, step)).toArray());
            days[month][day.ordinal()] = known;
        }
        return known;
    }

    private double perKwh(int month, DayClass day, int step) {
        return months.get(month).pricePerKwh(day, fromMin(step), fromMin(step) + yard.stepMin());
    }

    private int set(int month, DayClass day, int step) {
        int ofMonth = months.get(month).demandSet(day, fromMin(step), fromMin(step) + yard.stepMin());
        int set = 0;
        for (int charge = 0; charge < placeOfCharge[month].length; charge++) {
            set |= (ofMonth >> charge & 1) << placeOfCharge[month][charge];
        }
        return set;
    }

    /** Steps of a day. */
    private int steps() {
        return DAY_MIN / yard.stepMin();
    }

    /** Start of a step of a day, minutes after midnight. */
    private double fromMin(int step) {
        return step * yard.stepMin();
    }

    /** Demand that each charge bills in a month however the buses are charged, kW. */
    double[] floorsKw(MonthLoad month) {
        double[] floors = byCharge(month.month(), months.get(month.month()).demandFloorsKw(PeakHistory.NONE), 1);
        for (MonthLoad.IdleDay day : month.idle()) {
            double[] kw = day.loadKw(yard.metering().shared());
            for (int step = 0; step < kw.length; step++) {
                int counted = of(month.month(), day.dayClass()).demandSets[step];
                for (int charge = 0; charge < floors.length; charge++) {
                    floors[charge] = (counted >> charge & 1) == 1 ? Math.max(floors[charge], kw[step]) : floors[charge];
                }
            }
        }
        return floors;
    }
}
