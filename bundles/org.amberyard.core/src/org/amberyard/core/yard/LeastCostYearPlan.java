package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.LeastCost;
import org.amberyard.core.charging.LeastCostMonth;
import org.amberyard.core.charging.LeastCostSessions;
import org.amberyard.core.charging.LeastCostYear;
import org.amberyard.core.charging.MonthProblem;
import org.amberyard.core.charging.MonthSchedule;
import org.amberyard.core.charging.RollingCharge;
import org.amberyard.core.charging.StretchProblem;

/**
 * Schedules the charging of a year at least cost, above the demand that days without charging and the building make anyway:
 * each month by itself, or, where the tariff remembers earlier demands, all months together.
 */
final class LeastCostYearPlan {
    private final YardInput yard;
    private final List<MonthLoad> months;
    private final YearPrices prices;
    private final List<List<LeastCostSessions>> sessions;
    private final List<MonthProblem> problems;

    /**
     * @param yard the yard
     * @param atFullPower loads of the months when every bus charges at full power
     */
    LeastCostYearPlan(YardInput yard, List<MonthLoad> atFullPower) {
        this.yard = yard;
        this.months = atFullPower;
        this.prices = new YearPrices(yard, atFullPower);
        this.sessions = months.stream()
                .map(m -> m.stretches().stream().map(s -> new LeastCostSessions(s.charging())).toList()).toList();
        this.problems = IntStream.range(0, months.size()).mapToObj(m -> problem(months.get(m), sessions.get(m))).toList();
    }

    /** With all of a month, or of a year, known beforehand. */
    List<MonthLoad> withForesight() {
        List<LeastCostMonth> solved = prices.remembers() ? LeastCostYear.of(problems, prices.ratchetShares()).months()
                : problems.stream().map(LeastCost::of).toList();
        return IntStream.range(0, months.size())
                .mapToObj(m -> scheduled(m, solved.get(m).schedule(), solved.get(m).gap())).toList();
    }

    /** With one day known at a time. */
    List<MonthLoad> dayByDay() {
        List<MonthSchedule> solved = RollingCharge.ofYear(problems, prices.ratchetShares());
        return IntStream.range(0, months.size()).mapToObj(m -> scheduled(m, solved.get(m), 0)).toList();
    }

    private MonthProblem problem(MonthLoad month, List<LeastCostSessions> ofMonth) {
        List<StretchProblem> stretches = new ArrayList<>();
        for (int place = 0; place < ofMonth.size(); place++) {
            StretchLoad load = month.stretches().get(place);
            stretches.add(ofMonth.get(place).problem(load.baseKw(yard.metering().shared()),
                    prices.perKwh(month.month(), load.kind()), prices.demandSets(month.month(), load.kind())));
        }
        return new MonthProblem(stretches, prices.demandPrices(month.month()), prices.floorsKw(month), yard.siteLimitKw());
    }

    private MonthLoad scheduled(int month, MonthSchedule solved, double costGap) {
        MonthLoad load = months.get(month);
        List<StretchLoad> loads = new ArrayList<>();
        for (int place = 0; place < load.stretches().size(); place++) {
            loads.add(load.stretches().get(place).with(sessions.get(month).get(place).schedule(solved.kw().get(place))));
        }
        return new MonthLoad(load.month(), loads, load.idle(), costGap);
    }
}
