package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.RouteDuty;

/**
 * Days of a year on which an electric bus cannot do a route: each month's operated days stand in order from the coldest to the
 * hottest with the normal day in the middle, and the days that fail at either end are counted by driving them.
 *
 * @param byMonth failing days from January to December
 */
public record FailingDays(List<Integer> byMonth) {
    private static final double LEAST_USE_C = 20;

    /** No day fails. */
    public static final FailingDays NONE = new FailingDays(Collections.nCopies(Climate.MONTHS, 0));

    public FailingDays {
        byMonth = List.copyOf(byMonth);
    }

    /** Failing days of the year. */
    public int total() {
        return byMonth.stream().mapToInt(Integer::intValue).sum();
    }

    /**
     * Failing days under the study's charging habit.
     *
     * @param fit the route and the type, with the charging power to count on
     * @param health present over nominal capacity of the pack
     */
    static FailingDays of(StudyInput study, DutyTable duty, RouteFit fit, double health) {
        BlockCheck check = RouteFitting.check(study, fit.batteryKw(), study.middayCharging());
        ElectricSpec electric = study.types().get(fit.type()).electric().orElseThrow();
        Count count = new Count(study, duty.duty(fit.route(), fit.type()), electric, check, health);
        List<Integer> months = new ArrayList<>();
        for (int month = 0; month < Climate.MONTHS; month++) {
            months.add(count.days(month, false) + count.days(month, true));
        }
        return new FailingDays(months);
    }

    /** Counts the days of one bus on one route. */
    private record Count(StudyInput study, RouteDuty duty, ElectricSpec electric, BlockCheck check, double health) {

        int days(int month, boolean extendedYear) {
            int days = duty.days(month, extendedYear);
            if (days == 0) {
                return 0;
            }
            if (days == 1) {
                return fails(month, extendedYear, 0) || fails(month, extendedYear, 1) ? 1 : 0;
            }
            IntPredicate fails = day -> fails(month, extendedYear, day / (days - 1.0));
            int mildest = mildest(month, days);
            int cold = leading(mildest + 1, fails);
            int hot = leading(days - mildest - 1, day -> fails.test(days - 1 - day));
            return cold + hot;
        }

        /** The day nearest to the temperature at which buses use least; consumption rises to both sides of it. */
        private int mildest(int month, int days) {
            Climate.MonthWeather weather = study.duty().climate().months().get(month);
            return IntStream.range(0, days).boxed().min(Comparator.comparingDouble(
                    day -> Math.abs(weather.inOrder(day / (days - 1.0)).meanAirC() - LEAST_USE_C))).orElseThrow();
        }

        /** How many of the first days fail, when those that fail come first. */
        private static int leading(int days, IntPredicate fails) {
            int fail = 0;
            int pass = days;
            while (fail < pass) {
                int probe = fail == 0 ? 0 : (fail + pass) / 2;
                if (fails.test(probe)) {
                    fail = probe + 1;
                } else {
                    pass = probe;
                }
            }
            return fail;
        }

        private boolean fails(int month, boolean extendedYear, double place) {
            Climate.MonthWeather weather = study.duty().climate().months().get(month);
            DayBlock block = duty.block(month, extendedYear, weather.inOrder(place), study.duty().habit());
            return !check.of(block, electric.battery(), health).passes();
        }
    }
}
