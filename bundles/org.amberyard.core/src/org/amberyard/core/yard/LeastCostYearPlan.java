package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.charging.LeastCost;
import org.amberyard.core.charging.LeastCostMonth;
import org.amberyard.core.charging.LeastCostSessions;
import org.amberyard.core.charging.MonthProblem;
import org.amberyard.core.charging.StretchProblem;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.MarginalPrices;
import org.amberyard.core.tariff.MeterMonth;
import org.amberyard.core.tariff.PeakHistory;

/**
 * Schedules the charging of a year at least cost: each month by the prices of energy and demand at its hours, above the demand
 * that days without charging and the building make anyway.
 */
final class LeastCostYearPlan {
    private static final int DAY_MIN = 1440;

    private final YardInput yard;
    private final List<MonthLoad> months;

    LeastCostYearPlan(YardInput yard, List<MonthLoad> atFullPower) {
        this.yard = yard;
        this.months = atFullPower;
    }

    List<MonthLoad> scheduled() {
        return months.stream().map(this::scheduled).toList();
    }

    private MonthLoad scheduled(MonthLoad month) {
        boolean shared = yard.metering().shared();
        MeterMonth expected = month.metered(shared);
        MarginalPrices prices = new MarginalPrices(
                yard.metering().tariff().inForce(month.month(), yard.contractYear()), expected, PeakHistory.NONE);
        List<LeastCostSessions> sessions = month.stretches().stream().map(s -> new LeastCostSessions(s.charging())).toList();
        List<StretchProblem> problems = new ArrayList<>();
        for (int place = 0; place < sessions.size(); place++) {
            StretchLoad load = month.stretches().get(place);
            problems.add(problem(sessions.get(place), load.baseKw(shared), load.kind(), prices));
        }
        double[] demandPrices = Arrays.stream(prices.demandPrices()).map(p -> p * yard.demandIndex()).toArray();
        LeastCostMonth solved = LeastCost.of(new MonthProblem(problems, demandPrices, floorsKw(month, prices, shared),
                yard.siteLimitKw()));
        List<StretchLoad> loads = new ArrayList<>();
        for (int place = 0; place < sessions.size(); place++) {
            loads.add(month.stretches().get(place).with(sessions.get(place).schedule(solved.schedule().kw().get(place))));
        }
        return new MonthLoad(month.month(), loads, month.idle(), solved.gap());
    }

    private StretchProblem problem(LeastCostSessions sessions, double[] baseKw, StretchKind kind, MarginalPrices prices) {
        double[] pricePerKwh = new double[baseKw.length];
        int[] demandSets = new int[baseKw.length];
        for (int step = 0; step < baseKw.length; step++) {
            double minute = (step + 0.5) * yard.stepMin();
            DayClass day = kind.days().get((int) (minute / DAY_MIN));
            pricePerKwh[step] = prices.pricePerKwhAt(day, minute % DAY_MIN);
            demandSets[step] = prices.demandSetAt(day, minute % DAY_MIN);
        }
        return sessions.problem(baseKw, pricePerKwh, demandSets);
    }

    /** Demand that each charge bills however the buses are charged. */
    private double[] floorsKw(MonthLoad month, MarginalPrices prices, boolean shared) {
        double[] floors = prices.demandFloorsKw(PeakHistory.NONE);
        for (MonthLoad.IdleDay day : month.idle()) {
            double[] kw = day.loadKw(shared);
            for (int step = 0; step < kw.length; step++) {
                int counted = prices.demandSetAt(day.dayClass(), (step + 0.5) * yard.stepMin());
                for (int charge = 0; charge < floors.length; charge++) {
                    floors[charge] = (counted >> charge & 1) == 1 ? Math.max(floors[charge], kw[step]) : floors[charge];
                }
            }
        }
        return floors;
    }
}
