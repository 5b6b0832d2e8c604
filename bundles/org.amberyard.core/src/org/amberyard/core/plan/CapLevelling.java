package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.progress.Progress;

/**
 * A plan kept within its yearly cap by moving bus replacements to other years: as few as the search finds necessary. Ports, works,
 * training and financing stay where they are. The search ({@link LevelSearch}: greedy, two moves ahead, no optimum) ranks by budgets
 * with the electric bills of the plan evaluated last; what it proposes is evaluated whole, and the search goes on from there where
 * the new bills put a year above the cap. Moves keep to {@link StepLimits}. The same plan always gives the same answer.
 *
 * @param shifts steps that move, in the order of the plan
 * @param before years in which the plan is above the cap as it is
 * @param unmet years that stay above the cap
 * @param presentCostBefore present cost of the plan after financing, constant money at the base date
 * @param presentCostAfter the same of the plan with its steps moved
 */
public record CapLevelling(List<Shift> shifts, List<Unmet> before, List<Unmet> unmet, double presentCostBefore, double presentCostAfter) {
    private static final int MOST_ROUNDS = 3;

    /**
     * A step that moves.
     *
     * @param place place in the list of buses
     * @param from year of the step in the plan, counted from the base year
     * @param to year to which it moves
     * @param lost places of the programmes that pay a part of it in the plan and nothing where it moves
     */
    public record Shift(int place, int from, int to, List<Integer> lost) {
        public Shift {
            lost = List.copyOf(lost);
        }
    }

    /**
     * A year that stays above the cap.
     *
     * @param year year, counted from the base year
     * @param above by how much, money of the year
     */
    public record Unmet(int year, double above) {

        /** The years of a plan that are above its cap. */
        static List<Unmet> of(PlanResult plan) {
            return plan.finance().budget().stream().filter(y -> y.aboveCap().orElse(0) > 0)
                    .map(y -> new Unmet(y.year(), y.aboveCap().orElse(0))).toList();
        }
    }

    public CapLevelling {
        shifts = List.copyOf(shifts);
        before = List.copyOf(before);
        unmet = List.copyOf(unmet);
    }

    /**
     * A plan of a study within its cap.
     *
     * @param plan place of the plan
     * @param progress asked before every variant whether the answer is still wanted; how many there will be is not known
     * @throws IllegalArgumentException when the plan has no cap
     */
    public static CapLevelling of(StudyResult result, int plan, Progress progress) {
        PlanResult before = result.plans().get(plan);
        if (before.plan().payment().yearlyCap().isEmpty()) {
            throw new IllegalArgumentException("Plan " + before.name() + " has no yearly cap");
        }
        return new Levelled(result, before, progress).answer();
    }

    private static final class Levelled {
        private final StudyResult result;
        private final PlanResult before;
        private final StepLimits limits;
        private final Progress progress;
        private int[] years;
        private PlanResult after;

        Levelled(StudyResult result, PlanResult before, Progress progress) {
            this.result = result;
            this.before = before;
            this.progress = progress;
            this.limits = new StepLimits(result, before.plan());
            this.years = before.plan().replacements().stream().mapToInt(PlanInput.Replacement::year).toArray();
            this.after = before;
        }

        CapLevelling answer() {
            boolean moving = true;
            for (int round = 0; round < MOST_ROUNDS && moving && BudgetProbe.Probed.of(after).excessCents() > 0; round++) {
                moving = searched();
            }
            return new CapLevelling(shifts(), Unmet.of(before), Unmet.of(after), before.presentCostAfterFinancing(), after.presentCostAfterFinancing());
        }

        /** True when the search has found other years. */
        private boolean searched() {
            LevelSearch search = new LevelSearch(result.input(), before.plan(), limits, new BudgetProbe(result, after.yards()),
                    () -> progress.at(0));
            int[] found = search.from(years);
            if (Arrays.equals(found, years)) {
                return false;
            }
            years = found;
            after = PlanEvaluation.of(result.input(), search.at(years), result.duty(), result.figures(), result.fits(),
                    before.yardComparison().memory(), share -> progress.at(0));
            return true;
        }

        private List<Shift> shifts() {
            List<Shift> shifts = new ArrayList<>();
            IntStream.range(0, years.length).forEach(i -> {
                PlanInput.Replacement step = before.plan().replacements().get(i);
                if (step.year() != years[i]) {
                    Set<Integer> lost = paying(before, step.place(), step.year());
                    lost.removeAll(paying(after, step.place(), years[i]));
                    shifts.add(new Shift(step.place(), step.year(), years[i], List.copyOf(lost)));
                }
            });
            return shifts;
        }

        private static Set<Integer> paying(PlanResult plan, int place, int year) {
            Set<Integer> paying = new TreeSet<>();
            plan.funding().awards().lines().stream().filter(l -> l.purchase().kind() == Purchase.Kind.BUS
                    && l.purchase().row() == place && l.purchase().year() == year).flatMap(l -> l.awards().stream())
                    .filter(a -> a.paid() > 0).map(Award::programme).forEach(paying::add);
            return paying;
        }
    }
}
