package org.amberyard.core.optimum;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.IntStream;
import org.amberyard.core.progress.Progress;

/**
 * Looks for cheap choices within the limits: from the choices of a bound, and those at higher and lower prices, it first goes back
 * within the limits, each time by the change that costs least for what it mends, then changes one group or two together as long as
 * that is cheaper, and last goes through a limited number of branches ({@link ChoiceTree}). Where these were all, what it finds is the least; else how far it can be
 * off at most is said by {@link ChoiceBound}. The same problem always gives the same answer.
 */
public final class ChoiceSearch {
    private static final double WITHIN = 1e-9;
    private static final int FIRST_OF_PAIRS = 60;
    private static final double[] FACTORS = {0.5, 0.8, 1.25, 1.5, 2, 3, 5, 10};

    private final ChoiceProblem problem;
    private final double[] scale;

    private ChoiceSearch(ChoiceProblem problem) {
        this.problem = problem;
        this.scale = new double[problem.resources()];
        for (int r = 0; r < scale.length; r++) {
            double limit = Math.abs(problem.limit(r));
            scale[r] = limit > 0 && !Double.isInfinite(limit) ? limit : 1;
        }
    }

    /**
     * What a search found.
     *
     * @param picks option of each group
     * @param cost what they cost
     * @param within true when they keep all limits
     * @param proven true when no choice within the limits costs less
     */
    public record Found(int[] picks, double cost, boolean within, boolean proven) {
        public Found {
            picks = picks.clone();
        }

        @Override
        public int[] picks() {
            return picks.clone();
        }
    }

    /** Picks on the way, with what they take. */
    private record State(int[] picks, double cost, double[] taken, double over) {
        private static final Comparator<State> BEST = Comparator.comparingDouble(State::over).thenComparingDouble(State::cost);
    }

    /** Another option in a group. */
    private record Move(int group, int option) {
    }

    /**
     * The best choice found from those of a bound and some others.
     *
     * @param progress hears how far it is
     */
    public static Found of(ChoiceProblem problem, ChoiceBound bound, List<int[]> others, Progress progress) {
        ChoiceSearch search = new ChoiceSearch(problem);
        List<int[]> starts = new ArrayList<>(others);
        starts.addAll(bound.picks());
        DoubleStream.of(FACTORS).mapToObj(f -> problem.cheapest(DoubleStream.of(bound.prices()).map(p -> f * p).toArray()))
                .forEach(starts::add);
        State best = IntStream.range(0, starts.size()).mapToObj(start -> search.from(starts.get(start), progress.part(start, starts.size())))
                .min(State.BEST).orElseThrow();
        ChoiceTree tree = new ChoiceTree(problem, bound, best.picks, best.over == 0 ? best.cost : Double.POSITIVE_INFINITY);
        State sure = search.state(tree.best());
        return new Found(sure.picks, sure.cost, sure.over == 0, sure.over == 0 && tree.complete());
    }

    private State from(int[] start, Progress progress) {
        progress.at(0);
        return improved(mended(state(start), progress), progress);
    }

    private State state(int[] picks) {
        double[] taken = problem.taken(picks);
        return new State(picks.clone(), problem.cost(picks), taken, over(taken));
    }

    private double over(double[] taken) {
        double sum = 0;
        for (int r = 0; r < taken.length; r++) {
            sum += Math.max(0, taken[r] - problem.limit(r)) / scale[r];
        }
        // In steps that are larger than what rounding leaves, so that nobody goes round in circles for the last bits.
        return Math.rint(sum / WITHIN) * WITHIN;
    }

    private State after(State state, Move move) {
        int[] picks = state.picks.clone();
        double[] taken = state.taken.clone();
        Choice old = problem.picked(picks, move.group);
        picks[move.group] = move.option;
        Choice now = problem.picked(picks, move.group);
        old.addTo(taken, -1);
        now.addTo(taken, 1);
        return new State(picks, state.cost - old.cost() + now.cost(), taken, over(taken));
    }

    private List<Move> moves(State state) {
        List<Move> moves = new ArrayList<>();
        for (int g = 0; g < problem.groups().size(); g++) {
            for (int o = 0; o < problem.groups().get(g).size(); o++) {
                if (o != state.picks[g]) {
                    moves.add(new Move(g, o));
                }
            }
        }
        return moves;
    }

    /** Back within the limits as far as single changes go. */
    private State mended(State start, Progress progress) {
        State state = start;
        while (state.over > 0) {
            progress.at(0);
            State now = state;
            State next = moves(now).stream().map(m -> after(now, m)).filter(s -> s.over < now.over)
                    .min(Comparator.comparingDouble(s -> (s.cost - now.cost) / (now.over - s.over))).orElse(now);
            if (next == now) {
                return now;
            }
            state = next;
        }
        return state;
    }

    private State improved(State start, Progress progress) {
        State state = state(start.picks);
        State next = state(better(state).picks);
        while (isBetter(next, state)) {
            progress.at(0);
            state = next;
            next = state(better(state).picks);
        }
        return state;
    }

    private State better(State state) {
        List<State> single = moves(state).stream().map(m -> after(state, m)).toList();
        State best = best(single, state);
        return best != state ? best : best(pairs(state, single), state);
    }

    /** The best of some that is better by more than rounding; the state itself where none is. */
    private static State best(List<State> found, State than) {
        return found.stream().min(State.BEST).filter(s -> isBetter(s, than)).orElse(than);
    }

    private static boolean isBetter(State state, State than) {
        return state.over < than.over || state.over == than.over && state.cost < than.cost - WITHIN * (1 + Math.abs(than.cost));
    }

    /** The changes that save most, whatever they take, each with every second one. */
    private List<State> pairs(State state, List<State> single) {
        List<State> pairs = new ArrayList<>();
        single.stream().filter(s -> s.cost < state.cost || s.over < state.over)
                .sorted(Comparator.comparingDouble(State::cost).thenComparingDouble(State::over)).limit(FIRST_OF_PAIRS)
                .forEach(first -> best(moves(first).stream().map(m -> after(first, m)).toList(), state, pairs));
        return pairs;
    }

    private static void best(List<State> found, State than, List<State> into) {
        State best = best(found, than);
        if (best != than) {
            into.add(best);
        }
    }
}
