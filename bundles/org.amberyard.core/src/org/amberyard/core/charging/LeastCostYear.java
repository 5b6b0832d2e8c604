package org.amberyard.core.charging;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A year charged at least cost under demand charges with a ratchet: each month bills at least a share of the highest demand of
 * the year. All years are alike, so that the highest demand of the months before is that of the year itself.
 *
 * @param months the months; their lower bounds hold at the year's peaks
 * @param peaksKw highest demand of the year that each demand charge counts, kW
 * @param lowerBound cost below which no schedules of the year come, money
 */
public record LeastCostYear(List<LeastCostMonth> months, double[] peaksKw, double lowerBound) {
    public LeastCostYear {
        months = List.copyOf(months);
    }

    /**
     * Schedules a year. The year's peaks are found as the levels of a month are, by cutting planes: each month is a convex
     * function of them.
     *
     * @param months the months, all with the same demand charges
     * @param ratchetShares share of the year's highest demand that each demand charge bills at least, 0 where it has no ratchet
     */
    public static LeastCostYear of(List<MonthProblem> months, double[] ratchetShares) {
        List<RatchetMonth> ratcheted = months.stream().map(month -> new RatchetMonth(month, ratchetShares)).toList();
        CutProgram program = program(ratcheted, ratchetShares.length);
        double[] peaksKw = new double[ratchetShares.length];
        do {
            if (!program.solve()) {
                throw new IllegalStateException("No peaks of the year have the sessions ready, though without any they are");
            }
            Arrays.setAll(peaksKw, program::level);
        } while (cut(ratcheted, program, peaksKw));
        return billed(ratcheted, program.cost());
    }

    private static CutProgram program(List<RatchetMonth> months, int charges) {
        double[] lowestKw = new double[charges];
        for (RatchetMonth month : months) {
            Arrays.setAll(lowestKw, charge -> Math.max(lowestKw[charge], month.lowestKw()[charge]));
        }
        CutProgram program = new CutProgram(lowestKw, months.stream().mapToDouble(month -> -month.leastCost()).toArray());
        for (int place = 0; place < months.size(); place++) {
            program.setWeight(place, 1);
        }
        return program;
    }

    private static boolean cut(List<RatchetMonth> months, CutProgram program, double[] peaksKw) {
        boolean any = false;
        for (int place = 0; place < months.size(); place++) {
            RatchetMonth month = months.get(place);
            boolean sessionsShort = false;
            for (MonthCuts.ReadyRow row : month.violated(peaksKw)) {
                sessionsShort |= program.cut(row.slopeHours(), CutRows.NO_VALUE, row.kwh(), row.ofKwh());
            }
            if (!sessionsShort) {
                month.solve(peaksKw);
            }
            any |= sessionsShort || cut(program, place, month, peaksKw);
        }
        return any;
    }

    private static boolean cut(CutProgram program, int place, RatchetMonth month, double[] peaksKw) {
        double[] slope = month.slope();
        double atNoPeak = month.cost();
        for (int charge = 0; charge < slope.length; charge++) {
            atNoPeak -= slope[charge] * peaksKw[charge];
            slope[charge] = -slope[charge];
        }
        return program.cut(slope, place, atNoPeak, month.cost());
    }

    private static LeastCostYear billed(List<RatchetMonth> months, double lowerBound) {
        List<List<double[][]>> kw = months.stream().map(RatchetMonth::kw).toList();
        List<MonthProblem> problems = months.stream().map(RatchetMonth::problem).toList();
        double[] peaksKw = peaksKw(problems, kw);
        List<MonthSchedule> schedules = billed(problems, months.get(0).shares(), kw, peaksKw);
        return new LeastCostYear(IntStream.range(0, months.size()).mapToObj(m -> new LeastCostMonth(schedules.get(m),
                months.get(m).cost(), months.get(m).shortfalls())).toList(), peaksKw, lowerBound);
    }

    /**
     * Bills schedules of a year.
     *
     * @param months the months, all with the same demand charges
     * @param ratchetShares share of the year's highest demand that each demand charge bills at least, 0 where it has no ratchet
     * @param kw power at the meter by month, stretch, session and step, kW
     */
    public static List<MonthSchedule> billed(List<MonthProblem> months, double[] ratchetShares, List<List<double[][]>> kw) {
        return billed(months, ratchetShares, kw, peaksKw(months, kw));
    }

    private static List<MonthSchedule> billed(List<MonthProblem> months, double[] ratchetShares, List<List<double[][]>> kw,
            double[] peaksKw) {
        return IntStream.range(0, months.size()).mapToObj(m -> {
            MonthProblem month = months.get(m);
            return MonthSchedule.of(month.with(month.demandPrices(), RatchetMonth.floorsKw(month, ratchetShares, peaksKw)), kw.get(m));
        }).toList();
    }

    private static double[] peaksKw(List<MonthProblem> months, List<List<double[][]>> kw) {
        double[] peaksKw = new double[months.get(0).demandPrices().length];
        for (int m = 0; m < months.size(); m++) {
            MonthProblem month = months.get(m);
            double[] demandKw = MonthSchedule.of(month.with(month.demandPrices(), new double[peaksKw.length]), kw.get(m)).demandKw();
            Arrays.setAll(peaksKw, charge -> Math.max(peaksKw[charge], demandKw[charge]));
        }
        return peaksKw;
    }

    /** Cost of energy and demand, money. */
    public double cost() {
        return months.stream().mapToDouble(month -> month.schedule().cost()).sum();
    }

    /** How much the bills lie above the lower bound, money: rounding. */
    public double gap() {
        return cost() - lowerBound;
    }
}
