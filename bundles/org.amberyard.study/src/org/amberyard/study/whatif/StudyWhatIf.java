package org.amberyard.study.whatif;

import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.StudyStage;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.DrawnInput;
import org.amberyard.core.variants.FitErrors;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.PriceFan;
import org.amberyard.core.variants.Scenarios;
import org.amberyard.core.variants.VariedInputs;
import org.amberyard.core.variants.VarianceShares;
import org.amberyard.core.whatif.BlockSink;
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
public final class StudyWhatIf implements VariedInputs {
    private static final int MOST_WIDE = 3;
    private static final int LEAST_ROWS = 32;
    /** Enough for intervals of a few hundredths. */
    private static final int MOST_CHEAP_ROWS = 4096;

    private final Study study;
    private final StudyResult base;
    private final UncertainInputs inputs;
    private final VariantOutcomes outcomes;
    private final int threads;
    private DrawnPrices drawnPrices;

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

    @Override
    public List<String> names() {
        return inputs.names();
    }

    @Override
    public List<String> groups() {
        return List.copyOf(inputs.named().keySet());
    }

    @Override
    public String words(int input, double value) {
        return inputs.words(input, value);
    }

    @Override
    public double shown(int input, double value) {
        return inputs.shown(input, value);
    }

    @Override
    public String unit(int input) {
        return inputs.unit(input);
    }

    @Override
    public long seed() {
        return study.getWhatIf().getSeed();
    }

    StudyResult base() {
        return base;
    }

    Study study() {
        return study;
    }

    VariantOutcomes outcomes() {
        return outcomes;
    }

    UncertainInputs uncertain() {
        return inputs;
    }

    int threads() {
        return threads;
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

    /**
     * Works out variants, from those on that are kept already.
     *
     * @param block variants of a block, in which they are kept
     * @param kept takes the results
     * @param also takes them too, and may have enough
     */
    RunEnd work(Evaluations evaluations, int block, KeptDraws kept, BlockSink also, Progress progress) {
        return outcomes.run(evaluations, block, threads, kept.draws(), BlockSink.of(kept, also), progress);
    }

    /** Works out the scenarios likewise. */
    RunEnd workScenarios(KeptDraws kept, Progress progress) {
        return outcomes.scenarios(threads, kept.draws(), kept, progress);
    }

    Evaluations single() {
        TornadoPlan plan = tornado();
        return new Evaluations(plan.evaluations(), plan::at);
    }

    OneAtATime single(KeptDraws kept) {
        return new OneAtATime(tornado(), plans(kept));
    }

    private TornadoPlan tornado() {
        return new TornadoPlan(inputs.spreads(), List.copyOf(inputs.named().values()));
    }

    /**
     * The three inputs whose swings of the baseline's and the plans' costs are the widest, the widest first; fewer where fewer vary.
     */
    public int[] widest(OneAtATime single) {
        double[] swings = new double[inputs.names().size()];
        int baseline = base.input().baseline();
        IntStream.range(0, base.plans().size()).filter(p -> p != baseline).forEach(p -> single.saving(p, baseline).bars().stream()
                .filter(bar -> bar.input() < swings.length).forEach(bar -> swings[bar.input()] = Math.max(swings[bar.input()], bar.swing())));
        return IntStream.range(0, swings.length).boxed().filter(this::varies)
                .sorted(Comparator.comparingDouble((Integer i) -> -swings[i])).limit(MOST_WIDE).mapToInt(i -> i).toArray();
    }

    @Override
    public boolean varies(int input) {
        return inputs.ofRange(input) && inputs.spreads().get(input).low() != inputs.spreads().get(input).high();
    }

    @Override
    public OptionalInt chosenTwice() {
        return GridPart.chosenTwice(this);
    }

    Evaluations together() {
        Draws draws = inputs.draws(study.getWhatIf().getDraws());
        return new Evaluations(study.getWhatIf().getDraws(), draws::at);
    }

    AllTogether together(KeptDraws kept, RunEnd end, Optional<FittedDraws> fit) {
        return new AllTogether(base, end, plans(kept), appropriations(kept), kept.column(outcomes.columns().wholly()), inputs.replicates(),
                missed(fit));
    }

    /** Prices that vary, over the draws that are done. */
    List<PriceFan> prices(int done) {
        if (drawnPrices == null) {
            drawnPrices = DrawnPrices.of(new StudyVariants(study), base, inputs);
        }
        return drawnPrices.fans(together(), done);
    }

    /** What the fields of all inputs hold over the draws that are done. */
    List<DrawnInput> drawn(int done) {
        return new DrawnInputs(study, inputs).over(IntStream.range(0, DrawnPrices.looked(done)).mapToObj(together().values()).toList());
    }

    /** By how much results are missed that are read off surfaces, or nothing where they are evaluated. */
    private FitErrors missed(Optional<FittedDraws> fit) {
        return fit.map(f -> f.check().errors()).orElseGet(() -> FitErrors.none(base));
    }

    /** About as many evaluations as draws where each takes long; where they are cheap, as many rows as draws up to some thousands. */
    private int rows(boolean readOff) {
        int draws = study.getWhatIf().getDraws();
        boolean cheap = outcomes.onSums() || readOff;
        int each = cheap ? Math.min(draws, MOST_CHEAP_ROWS) : 0;
        return Math.max(LEAST_ROWS, Math.max(each, draws / (2 + inputs.names().size())));
    }

    /** What shares of the variance take; very many where variants are read off surfaces. */
    Evaluations shares(boolean readOff) {
        IndexPlan plan = inputs.indexPlan(rows(readOff));
        Draws draws = new Draws(plan, IntStream.range(0, inputs.names().size()).mapToObj(inputs::distribution).toList());
        return new Evaluations(rows(readOff) * plan.perRow(), draws::at);
    }

    /** With inputs of a group, and those that are correlated, as one part. */
    VarianceShares shares(KeptDraws kept, Optional<FittedDraws> fit) {
        return new VarianceShares(partNames(), plans(kept), base.input().baseline(), study.getWhatIf().getSeed(),
                inputs.indexSamples(rows(fit.isPresent())), missed(fit));
    }

    private List<String> partNames() {
        int[] parts = inputs.parts();
        int count = 1 + IntStream.of(parts).max().orElse(-1);
        return IntStream.range(0, count).mapToObj(p -> partName(IntStream.range(0, parts.length).filter(i -> parts[i] == p).boxed().toList()))
                .toList();
    }

    /** By the name of the group that it is, else by those of its inputs. */
    private String partName(List<Integer> part) {
        return inputs.named().entrySet().stream().filter(group -> group.getValue().equals(part)).map(Map.Entry::getKey).findFirst()
                .orElseGet(() -> part.stream().map(inputs.names()::get).collect(Collectors.joining(" with ")));
    }

    /** The grid of two inputs, by the inputs that decide most, the widest first. */
    GridPart grid(int[] widest) {
        return GridPart.of(this, widest);
    }

    /** Values of an input from its low to its high value. */
    double[] steps(int input, int steps) {
        Spread spread = inputs.spreads().get(input);
        return Grid.steps(Math.min(spread.low(), spread.high()), Math.max(spread.low(), spread.high()), steps);
    }

    Scenarios named(KeptDraws kept) {
        List<String> names = study.getWhatIf().getScenarios().stream().map(Scenario::getName).toList();
        double[][] co2eKg = IntStream.range(0, base.plans().size()).mapToObj(p -> kept.column(outcomes.columns().co2eKg(p)))
                .toArray(double[][]::new);
        return new Scenarios(names, plans(kept), co2eKg);
    }

    double[][] plans(KeptDraws kept) {
        return IntStream.range(0, base.plans().size()).mapToObj(p -> kept.column(outcomes.columns().presentCost(p))).toArray(double[][]::new);
    }

    private double[][][] appropriations(KeptDraws kept) {
        return IntStream.range(0, base.plans().size()).mapToObj(p -> IntStream.range(0, base.input().years())
                .mapToObj(y -> kept.column(outcomes.columns().appropriation(p, y))).toArray(double[][]::new)).toArray(double[][][]::new);
    }
}
