package org.amberyard.charts;

import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.FlowTime;

/**
 * Cumulative cost of a plan in stated money at the points in time at which the core looks for the payback: after what falls
 * at the start of each year and after its running costs. What is left at the end of the study is not in it.
 */
final class CumulativeCost {
    private final double[] times;
    private final double[] sums;

    CumulativeCost(CostLedger ledger) {
        times = new double[2 * ledger.years() + 1];
        sums = new double[times.length];
        for (int year = 0; year < ledger.years(); year++) {
            add(2 * year + 1, ledger, year, FlowTime.START);
            add(2 * year + 2, ledger, year, FlowTime.RUNNING);
        }
    }

    private void add(int point, CostLedger ledger, int year, FlowTime time) {
        times[point] = time.years(year, ledger.rules().midYear());
        sums[point] = sums[point - 1] + ledger.amount(year, time);
    }

    int points() {
        return times.length;
    }

    /** Years after the base date. */
    double time(int point) {
        return times[point];
    }

    /** Cumulative cost after the flows at the point. */
    double sum(int point) {
        return sums[point];
    }

    /** Cost at the end. */
    double last() {
        return sums[sums.length - 1];
    }

    /** Cost at a time after the base date, before any jump at that very time. */
    double at(double time) {
        int after = times.length - 1;
        while (after > 1 && times[after - 1] >= time) {
            after--;
        }
        double length = times[after] - times[after - 1];
        double share = length > 0 ? (time - times[after - 1]) / length : 1;
        return sums[after - 1] + share * (sums[after] - sums[after - 1]);
    }
}
