package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;

/**
 * Looks for years of a plan's replacements in which no year is above its cap. Greedy: of all moves of one step out of a year above
 * the cap the one after which the years are least strained ({@link BudgetProbe.Probed#strain}), of equals the one that moves by
 * fewest years, then the one with the least present cost. Where no single move helps, two are tried together, the second after each
 * of the few best first ones. Moves that cost no award for its window come first; others only where those do not help. At the end
 * every move without which no more is above the cap is taken back. It is no optimum: another set might be smaller or cheaper.
 */
final class LevelSearch {
    /** First moves that are looked at together with a second one. */
    private static final int LOOKED_AHEAD = 12;

    private final StudyInput study;
    private final PlanInput plan;
    private final StepLimits limits;
    private final BudgetProbe probe;
    private final Runnable check;

    /** Years of the steps, in the order of the plan, and what they come to. */
    private record State(int[] years, BudgetProbe.Probed probed, int moved) {
        private static final Comparator<State> BEST = Comparator.comparingDouble((State s) -> s.probed.strain())
                .thenComparingInt(State::moved).thenComparingDouble(s -> s.probed.presentCost());
    }

    /** @param check run before every variant, so that the search can be stopped */
    LevelSearch(StudyInput study, PlanInput plan, StepLimits limits, BudgetProbe probe, Runnable check) {
        this.study = study;
        this.plan = plan;
        this.limits = limits;
        this.probe = probe;
        this.check = check;
    }

    /** Better years, from some; the same where nothing helps. */
    int[] from(int[] years) {
        State state = state(years);
        Optional<State> next = Optional.of(state);
        while (next.isPresent()) {
            state = next.get();
            next = state.probed.excessCents() > 0 ? better(state) : Optional.empty();
        }
        return withoutNeedless(state).years;
    }

    private State state(int[] years) {
        check.run();
        int moved = IntStream.range(0, years.length).map(i -> Math.abs(years[i] - plan.replacements().get(i).year())).sum();
        return new State(years, probe.of(at(years)), moved);
    }

    /** The plan with its steps in other years. */
    PlanInput at(int[] years) {
        return plan.with(IntStream.range(0, years.length).mapToObj(i -> plan.replacements().get(i).in(years[i])).toList());
    }

    private Optional<State> better(State state) {
        return better(state, true).or(() -> better(state, false));
    }

    private Optional<State> better(State state, boolean inWindows) {
        List<State> single = moves(state, inWindows, year -> !state.probed.isAbove(year));
        return best(single, state).or(() -> best(pairs(state, inWindows), state));
    }

    private static Optional<State> best(List<State> found, State than) {
        return found.stream().min(State.BEST).filter(s -> s.probed.strain() < than.probed.strain());
    }

    private List<State> pairs(State state, boolean inWindows) {
        return moves(state, inWindows, year -> true).stream().sorted(State.BEST).limit(LOOKED_AHEAD)
                .flatMap(first -> moves(first, inWindows, year -> !first.probed.isAbove(year)).stream()).toList();
    }

    /** All moves of one step out of a year above the cap into a year that will do. */
    private List<State> moves(State state, boolean inWindows, IntPredicate into) {
        List<State> found = new ArrayList<>();
        for (int step = 0; step < state.years.length; step++) {
            if (state.probed.isAbove(state.years[step])) {
                addMoves(state, step, inWindows, into, found);
            }
        }
        return found;
    }

    private void addMoves(State state, int step, boolean inWindows, IntPredicate into, List<State> found) {
        for (int year = 0; year < study.years(); year++) {
            if (year != state.years[step] && into.test(year) && limits.allow(step, year, state.years)
                    && (!inWindows || keepsWindows(step, year))) {
                int[] years = state.years.clone();
                years[step] = year;
                found.add(state(years));
            }
        }
    }

    /** True when programmes that pay in the step's own year pay in another too. */
    private boolean keepsWindows(int step, int year) {
        PlanInput.Replacement own = plan.replacements().get(step);
        return own.programmes().stream().map(study.funding().programmes()::get)
                .allMatch(p -> p.paysIn(year) || !p.paysIn(own.year()));
    }

    private State withoutNeedless(State state) {
        State kept = state;
        for (int step = 0; step < kept.years.length; step++) {
            int own = plan.replacements().get(step).year();
            if (kept.years[step] != own && limits.allow(step, own, kept.years)) {
                int[] years = kept.years.clone();
                years[step] = own;
                State back = state(years);
                kept = back.probed.strain() <= kept.probed.strain() ? back : kept;
            }
        }
        return kept;
    }
}
