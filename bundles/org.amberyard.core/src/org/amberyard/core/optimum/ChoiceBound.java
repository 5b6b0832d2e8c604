package org.amberyard.core.optimum;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.progress.Progress;

/**
 * A cost below which no choice within the limits lies. With a price on each resource the groups are independent: the sum of their
 * cheapest options, less the limits at their prices, is a bound whatever the prices (Lagrangian relaxation). The best prices are
 * looked for with a linear programme that knows only the options that were cheapest at some prices before; at its end the bound is
 * that of the problem with fractions of options allowed.
 *
 * @param cost the bound
 * @param prices price of each resource at the bound: what one unit more of its limit saves, about
 * @param picks the cheapest options at the prices on the way, those of the bound last; they need not keep the limits
 */
public record ChoiceBound(double cost, double[] prices, List<int[]> picks) {
    private static final int MOST_ROUNDS = 60;
    private static final int KEPT = 12;
    private static final double NEAR = 1e-7;

    public ChoiceBound {
        prices = prices.clone();
        picks = List.copyOf(picks);
    }

    @Override
    public double[] prices() {
        return prices.clone();
    }

    /**
     * The bound of a problem. Where the linear programme gives no further prices, it is the best of those before, which holds as well.
     *
     * @param progress hears how far it is
     */
    public static ChoiceBound of(ChoiceProblem problem, Progress progress) {
        PriceProgram program = new PriceProgram(problem);
        double[] prices = new double[problem.resources()];
        ChoiceBound best = at(problem, prices, List.of());
        boolean going = program.learn(problem.cheapest(prices));
        for (int round = 0; round < MOST_ROUNDS && going; round++) {
            progress.at((double) round / MOST_ROUNDS);
            Optional<PriceProgram.Solved> found = program.solve();
            if (found.isEmpty()) {
                return best;
            }
            PriceProgram.Solved solved = found.get();
            ChoiceBound next = at(problem, solved.prices(), best.picks);
            best = next.cost >= best.cost ? next : new ChoiceBound(best.cost, best.prices, next.picks);
            going = program.learn(problem.cheapest(solved.prices()))
                    && solved.cost() - best.cost > NEAR * (1 + Math.abs(best.cost));
        }
        return best;
    }

    private static ChoiceBound at(ChoiceProblem problem, double[] prices, List<int[]> before) {
        int[] cheapest = problem.cheapest(prices);
        double sum = 0;
        for (int g = 0; g < cheapest.length; g++) {
            sum += problem.picked(cheapest, g).costAt(prices);
        }
        List<int[]> picks = new ArrayList<>(before);
        picks.add(cheapest);
        return new ChoiceBound(sum - problem.limitsAt(prices), prices, picks.subList(Math.max(0, picks.size() - KEPT), picks.size()));
    }
}
