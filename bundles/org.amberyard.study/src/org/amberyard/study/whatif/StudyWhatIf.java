package org.amberyard.study.whatif;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.StudyStage;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.Draws;
import org.amberyard.core.whatif.Grid;
import org.amberyard.core.whatif.IndexPlan;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.Spread;
import org.amberyard.core.whatif.TornadoPlan;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Scenario;

/**
 * The what-if of a study: its uncertain inputs varied one at a time, two at a time and all together, and its scenarios. Every
 * variant is evaluated as the study itself is. Results depend on the study alone, not on the number of threads.
 */
public final class StudyWhatIf {
    private final Study study;
    private final StudyResult base;
    private final UncertainInputs inputs;
    private final VariantOutcomes outcomes;
    private final int threads;

    /**
     * @param study a study with a what-if
     * @param base its results
     * @param threads threads that work at the same time
     * @throws IllegalArgumentException when an uncertain input points at nothing or its distribution is none
     */
    public StudyWhatIf(Study study, StudyResult base, int threads) {
        this.study = study;
        this.base = base;
        this.inputs = new UncertainInputs(study);
        this.outcomes = new VariantOutcomes(study, base, inputs);
        this.threads = threads;
    }

    /** Names of the uncertain inputs. */
    public List<String> inputs() {
        return inputs.names();
    }

    /** Value of an input in words: its number, or the word of a choice. */
    public String words(int input, double value) {
        return inputs.words(input, value);
    }

    /** What of the evaluation each input reaches, from its low to its high value. */
    public List<Set<StudyStage>> stages() {
        StudyVariants variants = new StudyVariants(study);
        return IntStream.range(0, inputs.names().size()).mapToObj(input -> {
            Set<StudyStage> touched = EnumSet.noneOf(StudyStage.class);
            for (double end : inputs.ends(input)) {
                touched.addAll(StudyStage.touched(variants.at(inputs.alone(input, end)), base.input()));
            }
            return touched;
        }).toList();
    }

    /** True when all inputs are prices, and variants are found from these alone as far as prices decide nothing otherwise. */
    public boolean byPrices() {
        return outcomes.byPrices();
    }

    /** Inputs one at a time, from what one in ten stays below to what one in ten exceeds. */
    public OneAtATime oneAtATime(Progress progress) {
        TornadoPlan plan = new TornadoPlan(inputs.spreads());
        return new OneAtATime(plan, plans(all(plan.evaluations(), plan::at, progress)));
    }

    /** The two inputs of numbers whose swings of the baseline's and the plans' costs are the widest, the widest first. */
    public int[] widest(OneAtATime single) {
        double[] swings = new double[inputs.names().size()];
        int baseline = base.input().baseline();
        IntStream.range(0, base.plans().size()).filter(p -> p != baseline).forEach(p -> single.saving(p, baseline).bars()
                .forEach(bar -> swings[bar.input()] = Math.max(swings[bar.input()], bar.swing())));
        return IntStream.range(0, swings.length).boxed().filter(i -> !inputs.ofWords(i))
                .sorted(Comparator.comparingDouble((Integer i) -> -swings[i])).limit(2).mapToInt(i -> i).toArray();
    }

    /** All inputs together, as often as the study says; ends early with what is done when it is stopped. */
    public AllTogether allTogether(Progress progress) {
        Draws draws = inputs.draws(study.getWhatIf().getDraws());
        KeptDraws kept = new KeptDraws();
        RunEnd end = outcomes.run(study.getWhatIf().getDraws(), draws::at, threads, kept, progress);
        return new AllTogether(base, end, plans(kept), appropriations(kept), kept.column(outcomes.wholly()));
    }

    /** What inputs explain of the variance of savings; with inputs that are correlated as one group. */
    public VarianceShares varianceShares(int rows, Progress progress) {
        IndexPlan plan = inputs.indexPlan(rows);
        Draws draws = new Draws(plan, IntStream.range(0, inputs.names().size()).mapToObj(inputs::distribution).toList());
        return new VarianceShares(groupNames(), plans(all(rows * plan.perRow(), draws::at, progress)), base.input().baseline(), study.getWhatIf().getSeed());
    }

    private List<String> groupNames() {
        int[] groups = inputs.groups();
        int count = 1 + IntStream.of(groups).max().orElse(-1);
        return IntStream.range(0, count).mapToObj(g -> String.join(" with ", IntStream.range(0, groups.length)
                .filter(i -> groups[i] == g).mapToObj(inputs.names()::get).toList())).toList();
    }

    /** Two inputs of numbers together, each from its low to its high value in steps; the others as they are. */
    public TwoTogether twoTogether(int first, int second, int steps, Progress progress) {
        Grid grid = new Grid(steps(first, steps), steps(second, steps));
        KeptDraws kept = all(grid.evaluations(), e -> {
            double[] values = inputs.alone(first, grid.first(e));
            values[second] = grid.second(e);
            return values;
        }, progress);
        return new TwoTogether(first, second, grid, plans(kept), base.input().baseline());
    }

    private double[] steps(int input, int steps) {
        Spread spread = inputs.spreads().get(input);
        return Grid.steps(Math.min(spread.low(), spread.high()), Math.max(spread.low(), spread.high()), steps);
    }

    /** Every scenario. */
    public Scenarios scenarios(Progress progress) {
        List<String> names = study.getWhatIf().getScenarios().stream().map(Scenario::getName).toList();
        KeptDraws kept = new KeptDraws();
        complete(outcomes.scenarios(threads, kept, progress), names.size());
        double[][] co2eKg = IntStream.range(0, base.plans().size()).mapToObj(p -> kept.column(outcomes.co2eKg(p)))
                .toArray(double[][]::new);
        return new Scenarios(names, plans(kept), co2eKg);
    }

    private KeptDraws all(int variants, IntFunction<double[]> values, Progress progress) {
        KeptDraws kept = new KeptDraws();
        complete(outcomes.run(variants, values, threads, kept, progress), variants);
        return kept;
    }

    private static void complete(RunEnd end, int evaluations) {
        if (end.draws() < evaluations) {
            throw new CancellationException("Only " + end.draws() + " of " + evaluations + " were wanted");
        }
    }

    private double[][] plans(KeptDraws kept) {
        return IntStream.range(0, base.plans().size()).mapToObj(p -> kept.column(outcomes.presentCost(p))).toArray(double[][]::new);
    }

    private double[][][] appropriations(KeptDraws kept) {
        return IntStream.range(0, base.plans().size()).mapToObj(p -> IntStream.range(0, base.input().years())
                .mapToObj(y -> kept.column(outcomes.appropriation(p, y))).toArray(double[][]::new)).toArray(double[][][]::new);
    }
}
