package org.amberyard.charts;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.MarginalPrices;
import org.amberyard.core.tariff.PeakHistory;
import org.amberyard.core.yard.MonthLoad;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.YardInput;

/**
 * Hours of a stretch of days between which the price of one more kWh changes, riders and taxes included.
 *
 * @param bands in order
 * @param demandPerKw what one more kW of the demand that is asked highest costs, money/kW
 */
record PriceBands(List<Band> bands, double demandPerKw) {
    private static final int DAY_MIN = 1440;
    private static final double SAME = 1e-9;

    /**
     * Hours of one price.
     *
     * @param fromMin start, minutes after the stretch's start
     * @param toMin end
     * @param perKwh price, money/kWh
     * @param demand true when a demand charge counts the hours
     */
    record Band(double fromMin, double toMin, double perKwh, boolean demand) {

        boolean like(Band other) {
            return Math.abs(perKwh - other.perKwh) < SAME && demand == other.demand;
        }
    }

    static PriceBands of(YardInput yard, MonthLoad month, StretchKind kind) {
        MarginalPrices prices = new MarginalPrices(yard.metering().tariff().inForce(month.month(), yard.contractYear()),
                month.metered(yard.metering().shared()), PeakHistory.NONE);
        double[] demand = prices.demandPrices();
        List<Band> bands = new ArrayList<>();
        for (int fromMin = 0; fromMin < kind.days().size() * DAY_MIN; fromMin += yard.stepMin()) {
            DayClass day = kind.days().get(fromMin / DAY_MIN);
            double startMin = fromMin % DAY_MIN;
            double endMin = startMin + yard.stepMin();
            add(new Band(fromMin, fromMin + yard.stepMin(), prices.pricePerKwh(day, startMin, endMin),
                    costs(prices.demandSet(day, startMin, endMin), demand)), bands);
        }
        return new PriceBands(bands, Arrays.stream(demand).max().orElse(0));
    }

    private static boolean costs(int set, double[] demandPrices) {
        double sum = 0;
        for (int charge = 0; charge < demandPrices.length; charge++) {
            sum += (set >> charge & 1) * demandPrices[charge];
        }
        return sum > 0;
    }

    private static void add(Band next, List<Band> to) {
        int last = to.size() - 1;
        if (last >= 0 && to.get(last).like(next)) {
            to.set(last, new Band(to.get(last).fromMin, next.toMin, next.perKwh, next.demand));
        } else {
            to.add(next);
        }
    }

    /** True when some hours count for demand and others do not. */
    boolean demandByHours() {
        return bands.stream().map(Band::demand).distinct().count() > 1;
    }

    /** Prices from the lowest. */
    List<Double> levels() {
        return bands.stream().map(Band::perKwh).distinct().sorted().toList();
    }
}
