package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

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
                sessionsShort |= program.cut(row.slopeHours(), CutRows.NO_VALUE, row.kwh());
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
        return program.cut(slope, place, atNoPeak);
    }

    private static LeastCostYear billed(List<RatchetMonth> months, double lowerBound) {
        List<List<double[][]>> schedules = months.stream().map(RatchetMonth::kw).toList();
        double[] peaksKw = new double[months.get(0).lowestKw().length];
        for (int place = 0; place < months.size(); place++) {
            double[] demandKw = months.get(place).demandKw(schedules.get(place));
            Arrays.setAll(peaksKw, charge -> Math.max(peaksKw[charge], demandKw[charge]));
        }
        List<LeastCostMonth> billed = new ArrayList<>();
        for (int place = 0; place < months.size(); place++) {
            billed.add(months.get(place).billed(schedules.get(place), peaksKw));
        }
        return new LeastCostYear(billed, peaksKw, lowerBound);
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
