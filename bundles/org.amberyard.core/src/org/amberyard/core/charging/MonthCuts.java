package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The linear programme of a month in its demand levels and in the energy drawn at each price or below, with the cuts found so
 * far. See {@link LeastCostSolver} for the method.
 */
final class MonthCuts {
    private static final double RELATIVE_TOLERANCE = 1e-11;

    private final DeliverableMonth month;
    private final int[] firstValue;
    private final int firstHighestRow;
    private final CutProgram program;
    private final double[] levelsKw;
    private double energyPriceFactor;

    /**
     * A row that the demand levels must satisfy for all sessions to be ready: Σ slopeHoursₖ·levelₖ ≥ kwh.
     *
     * @param slopeHours hours by demand charge, h
     * @param kwh energy, kWh
     * @param ofKwh energy of all sessions, whose rounding it carries, kWh
     */
    record ReadyRow(double[] slopeHours, double kwh, double ofKwh) {
    }

    MonthCuts(DeliverableMonth month) {
        this.month = month;
        int charges = month.levels().lowestKw().length;
        levelsKw = new double[charges];
        firstValue = new int[month.flows().size() + 1];
        List<Double> highestKwh = new ArrayList<>();
        for (int place = 0; place < month.flows().size(); place++) {
            ReducedStretch stretch = month.flows().get(place).stretch();
            for (int price = 0; price < stretch.prices() - 1; price++) {
                highestKwh.add(stretch.kwh());
            }
            firstValue[place + 1] = highestKwh.size();
        }
        program = new CutProgram(month.levels().lowestKw(), highestKwh.stream().mapToDouble(Double::doubleValue).toArray());
        firstHighestRow = charges + highestKwh.size();
        for (int charge = 0; charge < charges; charge++) {
            double[] slope = new double[charges];
            slope[charge] = -1;
            program.addRow(slope, CutRows.NO_VALUE, Double.NEGATIVE_INFINITY);
        }
    }

    /**
     * Finds the levels of least cost; false when no levels within the bounds have every session ready.
     *
     * @param prices price of each demand level, money/kW
     * @param lowestKw lower bound of each level, kW
     * @param highestKw upper bound of each level, kW; may be infinite
     * @param factor factor on all prices of energy
     */
    boolean solve(double[] prices, double[] lowestKw, double[] highestKw, double factor) {
        energyPriceFactor = factor;
        for (int charge = 0; charge < levelsKw.length; charge++) {
            program.setPrice(charge, prices[charge]);
            program.setBound(charge, Math.max(lowestKw[charge], month.levels().lowestKw()[charge]));
            program.setBound(firstHighestRow + charge, -highestKw[charge]);
        }
        for (int place = 0; place < month.flows().size(); place++) {
            for (int value = firstValue[place]; value < firstValue[place + 1]; value++) {
                program.setWeight(value, factor * saving(place, value - firstValue[place]));
            }
        }
        do {
            if (!program.solve()) {
                return false;
            }
            Arrays.setAll(levelsKw, program::level);
        } while (cut());
        return true;
    }

    /** What a kWh saves in a month when it is drawn at a price instead of the next. */
    private double saving(int place, int price) {
        ReducedStretch stretch = month.flows().get(place).stretch();
        return month.problem().stretches().get(place).times() * (stretch.pricePerKwh(price + 1) - stretch.pricePerKwh(price));
    }

    private boolean cut() {
        boolean any = false;
        for (int place = 0; place < month.flows().size(); place++) {
            StretchFlow flow = month.flows().get(place);
            flow.evaluate(levelsKw);
            double kwh = flow.stretch().kwh();
            int last = flow.stretch().prices() - 1;
            for (int price = 0; price <= last; price++) {
                int value = price < last ? firstValue[place] + price : CutRows.NO_VALUE;
                double boundKwh = (price < last ? 0 : kwh) - flow.constantKwh(price);
                any |= program.cut(flow.slopeHours(price), value, boundKwh, kwh);
            }
        }
        return any;
    }

    /** The levels found, kW. */
    double[] levelsKw() {
        return levelsKw.clone();
    }

    /** Cost below which energy and levels do not come, money. */
    double lowerBound() {
        return program.cost() + energyPriceFactor * dearestCost();
    }

    /** Lowest cost of energy within the levels found, money. */
    double energyCost() {
        double cost = dearestCost();
        for (int place = 0; place < month.flows().size(); place++) {
            for (int value = firstValue[place]; value < firstValue[place + 1]; value++) {
                int price = value - firstValue[place];
                cost -= saving(place, price) * month.flows().get(place).boundKwh(price, levelsKw);
            }
        }
        return energyPriceFactor * cost;
    }

    /** Energy cost if all sessions charged at the highest price of their stretch. */
    private double dearestCost() {
        double cost = 0;
        for (int place = 0; place < month.flows().size(); place++) {
            StretchProblem stretch = month.problem().stretches().get(place);
            ReducedStretch reduced = month.flows().get(place).stretch();
            double chargingCost = reduced.prices() == 0 ? 0 : reduced.kwh() * reduced.pricePerKwh(reduced.prices() - 1);
            cost += stretch.times() * (stretch.energyCost(stretch.baseKw()) + chargingCost);
        }
        return cost;
    }

    /** How much the cost rises with the lower bound of a level, money/kW. */
    double costOfLowest(int charge) {
        return program.dual(charge);
    }

    /** How much the cost falls with the upper bound of a level, money/kW. */
    double savingByHighest(int charge) {
        return program.dual(firstHighestRow + charge);
    }

    /** Rows that levels violate because some session could not be ready within them. */
    List<ReadyRow> violated(double[] levels) {
        List<ReadyRow> rows = new ArrayList<>();
        for (StretchFlow flow : month.flows()) {
            flow.evaluate(levels);
            int last = flow.stretch().prices() - 1;
            if (last >= 0 && flow.boundKwh(last, levels) < flow.stretch().kwh() * (1 - RELATIVE_TOLERANCE)) {
                double kwh = flow.stretch().kwh();
                rows.add(new ReadyRow(flow.slopeHours(last).clone(), kwh - flow.constantKwh(last), kwh));
            }
        }
        return rows;
    }
}
