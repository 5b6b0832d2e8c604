package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargeSchedule;
import org.amberyard.core.charging.LeastCost;
import org.amberyard.core.charging.LeastCostMonth;
import org.amberyard.core.charging.LeastCostSessions;
import org.amberyard.core.charging.LeastCostYear;
import org.amberyard.core.charging.MonthProblem;
import org.amberyard.core.charging.MonthSchedule;
import org.amberyard.core.charging.RollingCharge;
import org.amberyard.core.charging.SpareKw;
import org.amberyard.core.charging.StretchProblem;

/**
 * Schedules the charging of a year at least cost, above the demand that days without charging and the building make anyway:
 * each month by itself, or, where the tariff remembers earlier demands, all months together.
 */
final class LeastCostYearPlan {
    private static final double ROUNDING_KW = 1e-3;

    private final YardInput yard;
    private final List<MonthLoad> months;
    private final YearPrices prices;
    private final List<List<LeastCostSessions>> sessions;
    private final List<MonthProblem> problems;
    private List<LeastCostMonth> solved = List.of();

    /**
     * @param yard the yard
     * @param atFullPower loads of the months when every bus charges at full power
     * @param prices prices to schedule for
     */
    LeastCostYearPlan(YardInput yard, List<MonthLoad> atFullPower, YearPrices prices) {
        this.yard = yard;
        this.months = atFullPower;
        this.prices = prices;
        this.sessions = months.stream()
                .map(m -> m.stretches().stream().map(s -> new LeastCostSessions(s.charging())).toList()).toList();
        this.problems = IntStream.range(0, months.size()).mapToObj(m -> problem(months.get(m), sessions.get(m))).toList();
    }

    /** With all of a month, or of a year, known beforehand. */
    List<MonthLoad> withForesight() {
        solved = prices.remembers() ? LeastCostYear.of(problems, prices.ratchetShares()).months()
                : problems.stream().map(LeastCost::of).toList();
        List<List<ChargeSchedule>> schedules = schedules(solved.stream().map(LeastCostMonth::schedule).toList());
        List<OptionalDouble> gaps = gaps(schedules);
        return IntStream.range(0, months.size()).mapToObj(m -> scheduled(m, schedules.get(m), gaps.get(m))).toList();
    }

    private List<OptionalDouble> gaps(List<List<ChargeSchedule>> schedules) {
        if (!prices.support()) {
            return Collections.nCopies(months.size(), OptionalDouble.empty());
        }
        List<MonthSchedule> taken = LeastCostYear.billed(problems, prices.ratchetShares(),
                IntStream.range(0, months.size()).mapToObj(m -> sessionKw(m, schedules.get(m))).toList());
        return IntStream.range(0, months.size()).mapToObj(m -> gap(solved.get(m), taken.get(m))).toList();
    }

    /** The bound is that of the energy that the programme brings. */
    private static OptionalDouble gap(LeastCostMonth least, MonthSchedule taken) {
        boolean brought = least.schedule().chargingKw() - taken.chargingKw() < ROUNDING_KW;
        return brought ? OptionalDouble.of(taken.cost() - least.lowerBound()) : OptionalDouble.empty();
    }

    /** How far the load of a month, with the buses at the same plugs, lies above the least cost found at these prices, money. */
    double aboveBound(int month, MonthLoad load) {
        List<double[][]> kw = sessionKw(month, load.stretches().stream().map(StretchLoad::schedule).toList());
        return MonthSchedule.of(problems.get(month), kw).cost() - solved.get(month).lowerBound();
    }

    /** With one day known at a time. */
    List<MonthLoad> dayByDay() {
        List<List<ChargeSchedule>> schedules = schedules(RollingCharge.ofYear(problems, prices.ratchetShares()));
        return IntStream.range(0, months.size()).mapToObj(m -> scheduled(m, schedules.get(m), OptionalDouble.empty())).toList();
    }

    /** One month of it, which remembers no demand of another. */
    MonthLoad dayByDay(int month) {
        return scheduled(month, schedules(month, RollingCharge.of(problems.get(month))), OptionalDouble.empty());
    }

    private List<List<ChargeSchedule>> schedules(List<MonthSchedule> planned) {
        return IntStream.range(0, months.size()).mapToObj(m -> schedules(m, planned.get(m))).toList();
    }

    private List<ChargeSchedule> schedules(int month, MonthSchedule planned) {
        List<LeastCostSessions> ofMonth = sessions.get(month);
        return IntStream.range(0, ofMonth.size()).mapToObj(place -> ofMonth.get(place).schedule(planned.kw().get(place),
                SpareKw.of(problems.get(month), planned, place))).toList();
    }

    private List<double[][]> sessionKw(int month, List<ChargeSchedule> schedules) {
        List<LeastCostSessions> ofMonth = sessions.get(month);
        return IntStream.range(0, ofMonth.size()).mapToObj(place -> ofMonth.get(place).sessionKw(schedules.get(place))).toList();
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

    private MonthLoad scheduled(int month, List<ChargeSchedule> schedules, OptionalDouble costGap) {
        MonthLoad load = months.get(month);
        List<StretchLoad> loads = IntStream.range(0, schedules.size())
                .mapToObj(place -> load.stretches().get(place).with(schedules.get(place))).toList();
        return new MonthLoad(load.month(), loads, load.idle(), costGap);
    }
}
