package org.amberyard.study.whatif;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntFunction;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import org.amberyard.core.plan.PlanOutcome;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.BlockSink;
import org.amberyard.core.whatif.DrawEvaluation;
import org.amberyard.core.whatif.DrawRunner;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.RunSettings;
import org.amberyard.core.whatif.Spread;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.study.Study;

/**
 * Works out what plans come to in many variants of a study, on several threads. Results stand in {@link OutcomeColumns}.
 */
final class VariantOutcomes {
    /** Few enough that a run can be stopped soon and its threads end together. */
    private static final int BLOCK = 16;
    /** Prices alone take microseconds. */
    private static final int PRICE_BLOCK = 256;
    /** Years of yards that are remembered over variants; prices alone ask for few, weather for ever new ones. */
    private static final int MOST_YEARS = 3000;

    private final Study study;
    private final StudyResult base;
    private final OutcomeColumns columns;
    private final AtomicReference<YardMemory> yards;
    private final PriceInputs prices;
    private final Supplier<PricedDraws> pricedOnce;
    private final Optional<PricedDraws> priced;
    private final double[] unchanged;
    private Optional<FittedDraws> fitted = Optional.empty();

    /** Variants of a study whose results are known. */
    VariantOutcomes(Study study, StudyResult base, UncertainInputs inputs) {
        this.study = study;
        this.base = base;
        this.columns = new OutcomeColumns(base.plans().size(), base.input().years());
        YardMemory known = YardMemory.knowing(base.plans().stream().flatMap(p -> p.yards().stream()).toList());
        this.yards = new AtomicReference<>(known);
        this.prices = PriceInputs.of(new StudyVariants(study), base.input(), inputs);
        this.pricedOnce = Once.of(() -> new PricedDraws(prices, base, known));
        this.priced = prices.prices().contains(false) ? Optional.empty() : Optional.of(pricedOnce.get());
        this.unchanged = inputs.spreads().stream().mapToDouble(Spread::base).toArray();
    }

    /** Where results stand. */
    OutcomeColumns columns() {
        return columns;
    }

    /** True when all uncertain inputs are prices, so that variants are evaluated by these alone as far as they decide nothing. */
    boolean byPrices() {
        return priced.isPresent();
    }

    /** Prices beside which surfaces are fitted of what the other inputs do; empty where there are none, or draws are not found from sums. */
    Optional<PricedDraws> besideSurfaces() {
        return prices.prices().contains(true) ? Optional.of(pricedOnce.get()).filter(PricedDraws::onSums) : Optional.empty();
    }

    /** By input: true for a price. */
    List<Boolean> prices() {
        return prices.prices();
    }

    /** True when most variants take microseconds, found from sums at their prices. */
    boolean onSums() {
        return priced.filter(PricedDraws::onSums).isPresent();
    }

    /**
     * Runs variants.
     *
     * @param first the first that is wanted; those before it are known
     */
    RunEnd run(Evaluations variants, int threads, int first, BlockSink sink, Progress progress) {
        return run(variants, blockDraws(), threads, first, sink, progress);
    }

    /**
     * Runs variants in blocks of one's own.
     *
     * @param block variants of a block, in which runs are kept
     */
    RunEnd run(Evaluations variants, int block, int threads, int first, BlockSink sink, Progress progress) {
        return run(variants.count(), check -> evaluation(variants.values()), settings(variants.count(), block, threads).from(first), sink,
                progress);
    }

    private DrawEvaluation evaluation(IntFunction<double[]> values) {
        if (fitted.isPresent()) {
            FittedDraws.Reading reading = fitted.get().reading();
            return (draw, results) -> reading.at(values.apply(draw), unchanged, results);
        }
        return priced.isPresent() ? byPrices(priced.get(), values) : whole((made, variant) -> made.at(values.apply(variant)));
    }

    /** From now on, reads variants off surfaces; the same variants whole again when empty. */
    void use(Optional<FittedDraws> surfaces) {
        fitted = surfaces;
    }

    /** A search, one of several that go on at the same time, which asks for variants as it goes. */
    interface Search {
        /**
         * Works a search out on one thread.
         *
         * @param number number of the search
         * @param variants results of a variant at values of the inputs; ends the search when nobody wants it any more
         */
        void run(int number, UnaryOperator<double[]> variants);
    }

    /**
     * Runs searches, numbered from 0, each on one of several threads.
     *
     * @return false when the progress ended them before all were done
     */
    boolean search(int searches, Search search, int threads, Progress progress) {
        return run(searches, check -> {
            UnaryOperator<double[]> variants = asked(check);
            return (number, nothing) -> search.run(number, variants);
        }, new RunSettings(0, searches, 1, 1, threads), block -> false, progress).reason() == RunEnd.Reason.COMPLETE;
    }

    private UnaryOperator<double[]> asked(Runnable check) {
        AtomicReference<double[]> values = new AtomicReference<>();
        DrawEvaluation evaluation = evaluation(draw -> values.get());
        return asked -> {
            check.run();
            values.set(asked);
            double[] results = new double[columns.count()];
            evaluation.evaluate(0, results);
            return results;
        };
    }

    /** Variants of a block, the unit in which runs are kept. */
    int blockDraws() {
        return priced.map(p -> p.blockDraws(BLOCK, PRICE_BLOCK)).orElse(BLOCK);
    }

    /** Runs the scenarios of the study, from the first that is wanted on. */
    RunEnd scenarios(int threads, int first, BlockSink sink, Progress progress) {
        int count = study.getWhatIf().getScenarios().size();
        return run(count, check -> whole(StudyVariants::in), settings(count, 1, threads).from(first), sink, progress);
    }

    private RunSettings settings(int variants, int block, int threads) {
        return new RunSettings(0, variants, block, columns.count(), threads);
    }

    private interface Variant {
        StudyInput of(StudyVariants made, int variant);
    }

    private static RunEnd run(int variants, DrawEvaluation.Maker maker, RunSettings settings, BlockSink sink, Progress progress) {
        return settings.firstDraw() == variants ? new RunEnd(variants, RunEnd.Reason.COMPLETE)
                : DrawRunner.run(settings, maker, sink, progress);
    }

    private DrawEvaluation whole(Variant variant) {
        StudyVariants made = new StudyVariants(study);
        return (draw, results) -> {
            YardMemory known = yards.updateAndGet(memory -> memory.size() > MOST_YEARS ? memory.anew() : memory);
            columns.write(PlanOutcome.all(variant.of(made, draw), base, known), results);
            results[columns.wholly()] = 1;
        };
    }

    /** By prices where they decide nothing otherwise, else as a whole. */
    private DrawEvaluation byPrices(PricedDraws prices, IntFunction<double[]> values) {
        PricedDraws.Evaluation evaluation = prices.evaluation(columns);
        Supplier<DrawEvaluation> whole = Once.of(() -> whole((made, variant) -> made.at(values.apply(variant))));
        return (draw, results) -> {
            results[columns.wholly()] = 0;
            if (!evaluation.at(values.apply(draw), results)) {
                whole.get().evaluate(draw, results);
            }
        };
    }
}
