package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The least-cost problem of a month, to be asked again with other demand prices, floors and a level of energy prices. What is
 * learnt about the month stays valid, so that a further answer takes microseconds.
 *
 * <p><b>Method.</b> Let D be a level for each demand charge, not below its floor, that no counted step may exceed. For a given D
 * each step has a limit, and prices depend on the step alone. Let c₁ &lt; … &lt; cₘ be a stretch's prices and Fⱼ(D) the largest
 * flow of energy to its sessions in steps of price cⱼ or below. Every schedule draws at most Fⱼ at cⱼ or below; a schedule that
 * draws exactly Fⱼ for every j exists, because a flow that is largest in the cheaper steps grows to a largest one without taking
 * energy out of them. Hence, with E the energy of the sessions, a stretch costs at least, and at best,
 *
 * <pre>cₘ·E − Σ (cⱼ₊₁ − cⱼ)·Fⱼ(D) over j &lt; m, where Fₘ(D) = E,</pre>
 *
 * (summing by parts), and D is feasible exactly where Fₘ(D) = E. By the theorem of max-flow and min-cut Fⱼ is the least of
 * finitely many functions linear in D: each cut of the flow is an upper bound whose slope is the length of the steps that it
 * holds back by their demand level. So the month is a linear programme in D and the Fⱼ alone. It is solved by cutting planes
 * (Kelley 1960): solve with the cuts known, find the flows at the levels found, add the cuts that are violated. That ends,
 * because cuts are finitely many, and what it ends with is a lower bound and a schedule that attains it.
 *
 * <p>Not safe for use by several threads.
 */
public final class LeastCostSolver {
    private static final double RELATIVE_TOLERANCE = 1e-11;

    private final MonthProblem problem;
    private final MonthLevels levels;
    private final List<SessionShortfall> shortfalls = new ArrayList<>();
    private final StretchFlow[] flows;
    private final int[] firstValue;
    private final int firstHighestRow;
    private final CutProgram program;

    /** Prepares a month; energy that no schedule can deliver is left out and stands in {@link #shortfalls}. */
    public LeastCostSolver(MonthProblem problem) {
        levels = MonthLevels.of(problem);
        int charges = problem.demandPrices().length;
        List<StretchProblem> stretches = new ArrayList<>();
        flows = new StretchFlow[problem.stretches().size()];
        firstValue = new int[flows.length + 1];
        List<Double> highestValues = new ArrayList<>();
        for (int place = 0; place < flows.length; place++) {
            StretchProblem stretch = problem.stretches().get(place);
            StretchFlow flow = new StretchFlow(stretch, ReducedStretch.of(stretch), problem.siteLimitKw(), charges);
            List<SessionShortfall> lacking = flow.shortfalls(place, stretch, levels.usefulKw());
            if (!lacking.isEmpty()) {
                shortfalls.addAll(lacking);
                stretch = stretch.without(lacking);
                flow = new StretchFlow(stretch, ReducedStretch.of(stretch), problem.siteLimitKw(), charges);
            }
            stretches.add(stretch);
            flows[place] = flow;
            for (int price = 0; price < flow.stretch().prices() - 1; price++) {
                highestValues.add(flow.stretch().kwh());
            }
            firstValue[place + 1] = highestValues.size();
        }
        this.problem = new MonthProblem(stretches, problem.demandPrices(), problem.demandFloorsKw(), problem.siteLimitKw());
        program = new CutProgram(levels.lowestKw(), highestValues.stream().mapToDouble(Double::doubleValue).toArray());
        firstHighestRow = charges + highestValues.size();
        for (int charge = 0; charge < charges; charge++) {
            double[] slope = new double[charges];
            slope[charge] = -1;
            program.addRow(slope, CutProgram.NO_VALUE, Double.NEGATIVE_INFINITY);
        }
    }

    /** Sessions that cannot be ready. */
    public List<SessionShortfall> shortfalls() {
        return List.copyOf(shortfalls);
    }

    /** Schedules the month at demand prices and floors. */
    public LeastCostMonth month(double[] demandPrices, double[] demandFloorsKw) {
        LeastCostBill bill = bill(demandPrices, demandFloorsKw, 1);
        MonthProblem asked = new MonthProblem(problem.stretches(), demandPrices, demandFloorsKw, problem.siteLimitKw());
        return new LeastCostMonth(MonthSchedule.of(asked, EvenSchedule.of(asked, bill.levelsKw())), bill.lowerBound(),
                shortfalls);
    }

    /**
     * Costs the month without making the schedule.
     *
     * @param demandPrices price of each demand charge, money/kW
     * @param demandFloorsKw demand that each charge bills at least, kW
     * @param energyPriceFactor factor on all prices of energy
     */
    public LeastCostBill bill(double[] demandPrices, double[] demandFloorsKw, double energyPriceFactor) {
        double[] lowestKw = levels.lowestKw().clone();
        double[] highestKw = new double[lowestKw.length];
        Arrays.fill(highestKw, Double.POSITIVE_INFINITY);
        for (int charge = 0; charge < lowestKw.length; charge++) {
            lowestKw[charge] = Math.max(lowestKw[charge], demandFloorsKw[charge]);
            if (demandPrices[charge] == 0) {
                lowestKw[charge] = Math.max(lowestKw[charge], levels.usefulKw()[charge]);
            }
        }
        return bill(demandPrices, lowestKw, highestKw, energyPriceFactor);
    }

    private LeastCostBill bill(double[] demandPrices, double[] lowestKw, double[] highestKw, double energyPriceFactor) {
        set(demandPrices, lowestKw, highestKw, energyPriceFactor);
        double[] levelsKw = new double[lowestKw.length];
        do {
            program.solve();
            for (int charge = 0; charge < levelsKw.length; charge++) {
                levelsKw[charge] = program.level(charge);
            }
        } while (cut(levelsKw));
        double demandCost = 0;
        for (int charge = 0; charge < levelsKw.length; charge++) {
            demandCost += demandPrices[charge] * levelsKw[charge];
        }
        return new LeastCostBill(levelsKw, energyPriceFactor * energyCost(levelsKw), demandCost,
                program.cost() + energyPriceFactor * dearestCost());
    }

    private void set(double[] demandPrices, double[] lowestKw, double[] highestKw, double energyPriceFactor) {
        for (int charge = 0; charge < lowestKw.length; charge++) {
            program.setPrice(charge, demandPrices[charge]);
            program.setBound(charge, lowestKw[charge]);
            program.setBound(firstHighestRow + charge, -highestKw[charge]);
        }
        for (int place = 0; place < flows.length; place++) {
            for (int value = firstValue[place]; value < firstValue[place + 1]; value++) {
                program.setWeight(value, energyPriceFactor * saving(place, value - firstValue[place]));
            }
        }
    }

    /** What a kWh saves in a month when it is drawn at a price instead of the next. */
    private double saving(int place, int price) {
        ReducedStretch stretch = flows[place].stretch();
        return problem.stretches().get(place).times() * (stretch.pricePerKwh(price + 1) - stretch.pricePerKwh(price));
    }

    private boolean cut(double[] levelsKw) {
        boolean any = false;
        for (int place = 0; place < flows.length; place++) {
            StretchFlow flow = flows[place];
            flow.evaluate(levelsKw);
            int last = flow.stretch().prices() - 1;
            double kwh = flow.stretch().kwh();
            for (int price = 0; price <= last; price++) {
                int value = price < last ? firstValue[place] + price : CutProgram.NO_VALUE;
                double assumedKwh = price < last ? program.value(value) : kwh;
                if (assumedKwh - flow.boundKwh(price, levelsKw) > RELATIVE_TOLERANCE * (1 + kwh)) {
                    program.addRow(flow.slopeHours(price), value, (price < last ? 0 : kwh) - flow.constantKwh(price));
                    any = true;
                }
            }
        }
        return any;
    }

    private double energyCost(double[] levelsKw) {
        double cost = dearestCost();
        for (int place = 0; place < flows.length; place++) {
            for (int value = firstValue[place]; value < firstValue[place + 1]; value++) {
                int price = value - firstValue[place];
                cost -= saving(place, price) * flows[place].boundKwh(price, levelsKw);
            }
        }
        return cost;
    }

    /** Energy cost if all sessions charged at the highest price of their stretch. */
    private double dearestCost() {
        double cost = 0;
        for (int place = 0; place < flows.length; place++) {
            StretchProblem stretch = problem.stretches().get(place);
            cost += stretch.times() * stretch.energyCost(stretch.baseKw());
            if (flows[place].stretch().prices() > 0) {
                cost += stretch.times() * flows[place].stretch().kwh()
                        * flows[place].stretch().pricePerKwh(flows[place].stretch().prices() - 1);
            }
        }
        return cost;
    }
}
