package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.LeastCost;
import org.amberyard.core.charging.LeastCostMonth;
import org.amberyard.core.charging.LeastCostSessions;
import org.amberyard.core.charging.LeastCostYear;
import org.amberyard.core.charging.MonthProblem;
import org.amberyard.core.charging.StretchProblem;

/**
 * Schedules the charging of a year at least cost, above the demand that days without charging and the building make anyway:
 * each month by itself, or, where the tariff remembers earlier demands, all months together.
 */
final class LeastCostYearPlan {
    private final YardInput yard;
    private final List<MonthLoad> months;
    private final YearPrices prices;

    /**
     * @param yard the yard
     * @param atFullPower loads of the months when every bus charges at full power
     */
    LeastCostYearPlan(YardInput yard, List<MonthLoad> atFullPower) {
        this.yard = yard;
        this.months = atFullPower;
        this.prices = new YearPrices(yard, atFullPower);
    }

    List<MonthLoad> scheduled() {
        List<List<LeastCostSessions>> sessions = months.stream()
                .map(m -> m.stretches().stream().map(s -> new LeastCostSessions(s.charging())).toList()).toList();
        List<MonthProblem> problems = IntStream.range(0, months.size())
                .mapToObj(m -> problem(months.get(m), sessions.get(m))).toList();
        List<LeastCostMonth> solved = prices.remembers() ? LeastCostYear.of(problems, prices.ratchetShares()).months()
                : problems.stream().map(LeastCost::of).toList();
        return IntStream.range(0, months.size())
                .mapToObj(m -> scheduled(months.get(m), sessions.get(m), solved.get(m))).toList();
    }

    private MonthProblem problem(MonthLoad month, List<LeastCostSessions> sessions) {
        List<StretchProblem> problems = new ArrayList<>();
        for (int place = 0; place < sessions.size(); place++) {
            StretchLoad load = month.stretches().get(place);
            problems.add(sessions.get(place).problem(load.baseKw(yard.metering().shared()),
                    prices.perKwh(month.month(), load.kind()), prices.demandSets(month.month(), load.kind())));
        }
        return new MonthProblem(problems, prices.demandPrices(month.month()), prices.floorsKw(month), yard.siteLimitKw());
    }

    private static MonthLoad scheduled(MonthLoad month, List<LeastCostSessions> sessions, LeastCostMonth solved) {
        List<StretchLoad> loads = new ArrayList<>();
        for (int place = 0; place < sessions.size(); place++) {
            loads.add(month.stretches().get(place).with(sessions.get(place).schedule(solved.schedule().kw().get(place))));
        }
        return new MonthLoad(month.month(), loads, month.idle(), solved.gap());
    }
}
