package org.amberyard.report;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;
import org.amberyard.core.charging.ChargeShortfall;
import org.amberyard.core.charging.ChargeSpan;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.Plugged;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.StretchLoad;
import org.amberyard.core.yard.YardYear;
import org.amberyard.report.LastYears.LastYear;
import org.amberyard.report.ResultRows.OfYear;

/** What the rows of the tables of charging are made from. */
final class YardRows {
    private static final int HOURS = 24;
    /** Energy below which nothing was moved, kWh: rounding. */
    private static final double ROUNDING_KWH = 1e-6;

    private YardRows() {
    }

    /** Years of plans with electric buses or ports. */
    static List<OfYear> years(StudyResult result) {
        return OfYear.all(result).stream().filter(r -> LastYears.charges(yard(r))).toList();
    }

    static YardYear yard(OfYear row) {
        return row.plan().yards().get(row.year());
    }

    /** A month of a plan's year. */
    record OfMonth(OfYear at, YardYear.Month month) {
        static List<OfMonth> all(StudyResult result) {
            return years(result).stream().flatMap(y -> yard(y).months().stream().map(m -> new OfMonth(y, m))).toList();
        }

        double movedKwh() {
            return month.movedKwh() < ROUNDING_KWH ? 0 : month.movedKwh();
        }
    }

    /** An hour of a day of the month with the highest demand of charging; of several days that of the highest load. */
    record OfHour(LastYear at, StretchLoad stretch, int hour) {
        static List<OfHour> all(List<LastYear> years) {
            List<OfHour> rows = new ArrayList<>();
            for (LastYear year : years) {
                for (StretchLoad stretch : year.yard().peakStretches(StretchKind.COLDEST_DAY,
                        StretchKind.SERVICE_DAY)) {
                    for (int hour = 0; hour < HOURS; hour++) {
                        rows.add(new OfHour(year, stretch, hour));
                    }
                }
            }
            return rows;
        }

        String day() {
            return stretch.dayLabel(stretch.highestDay());
        }

        private DoubleStream steps(double[] kw) {
            int ofHour = kw.length / stretch.kind().days().size() / HOURS;
            int first = (stretch.highestDay() * HOURS + hour) * ofHour;
            return Arrays.stream(kw, first, first + ofHour);
        }

        double mean(double[] kw) {
            return steps(kw).average().orElseThrow();
        }

        double highest(double[] kw) {
            return steps(kw).max().orElseThrow();
        }
    }

    /**
     * A bus at a plug, or one that finds none, in the month with the highest demand of charging: on its coldest day
     * and where it
     * has that demand.
     */
    record OfPlug(LastYear at, StretchLoad stretch, PlugIn plugIn, Optional<Plugged> plugged) {
        static List<OfPlug> all(List<LastYear> years) {
            List<OfPlug> rows = new ArrayList<>();
            for (LastYear year : years) {
                year.yard().peakStretches(StretchKind.COLDEST_DAY).forEach(s -> addAll(year, s, rows));
            }
            return rows;
        }

        private static void addAll(LastYear year, StretchLoad stretch, List<OfPlug> rows) {
            stretch.plugged().stream().sorted(Comparator.comparingInt(Plugged::unit).thenComparingInt(Plugged::plug)
                    .thenComparingDouble(Plugged::fromMin))
                    .forEach(p -> rows.add(new OfPlug(year, stretch, p.plugIn(), Optional.of(p))));
            stretch.charging().assignment().withoutPlug()
                    .forEach(p -> rows.add(new OfPlug(year, stretch, p, Optional.empty())));
        }

        String port() {
            return plugged.map(p -> p.unit() + 1 + ", " + stretch.charging().units().get(p.unit()).port().name()).orElse("none");
        }

        String plug() {
            return plugged.map(p -> String.valueOf(p.plug() + 1)).orElse(null);
        }

        String from() {
            return plugged.map(p -> ClockWords.of(p.fromMin())).orElse(null);
        }

        String until() {
            return plugged.map(p -> ClockWords.of(p.toMin())).orElse(null);
        }

        String moved() {
            return plugged.map(p -> p.swap() ? "yes" : "no").orElse(null);
        }

        String charges() {
            return ClockWords.of(plugged.map(p -> ChargeSpan.of(stretch.schedule(), p)).orElse(List.of()));
        }

        double meterKwh() {
            return plugged.map(p -> stretch.schedule().meterKwh(p.place())).orElse(0.0);
        }

        OptionalDouble endShare() {
            return plugged.map(p -> OptionalDouble.of(stretch.schedule().endShares()[p.place()])).orElse(OptionalDouble.empty());
        }

        double missingKwh() {
            return stretch.schedule().shortfalls().stream().filter(s -> s.plugIn().equals(plugIn))
                    .mapToDouble(ChargeShortfall::shortKwh).sum();
        }
    }
}
