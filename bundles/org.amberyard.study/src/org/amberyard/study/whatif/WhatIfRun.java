package org.amberyard.study.whatif;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.AllTogether;
import org.amberyard.core.variants.DrawnInput;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.PriceFan;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.Block;
import org.amberyard.core.whatif.BlockSink;
import org.amberyard.core.whatif.KeptDraws;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.StandardErrorRule;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * All parts of a what-if, worked out one after the other. It can be stopped and gone on with, also from what an earlier run has
 * kept, and then ends where it would have ended without the break. For use from one thread.
 */
public final class WhatIfRun {
    /** Against a small scatter of the first draws by chance. */
    private static final int LEAST_DRAWS = 200;
    /** Times that draws so far are told while they are worked out. */
    private static final int TOLD = 25;

    private final StudyWhatIf whatIf;
    private final int blockDraws;
    private final Map<RunPart, KeptDraws> kept = new EnumMap<>(RunPart.class);
    private final boolean fitted;
    private Optional<FittedDraws> fit = Optional.empty();
    private int step;
    private RunPlan plan;
    private List<PriceFan> prices = List.of();
    private List<DrawnInput> drawn = List.of();
    private int lookedAt;

    /**
     * @param study a study with a what-if
     * @param base its results
     * @param threads threads that work at the same time
     * @param before what an earlier run has kept, of which is taken over what is {@link SavedRun#of} the study
     * @throws IllegalArgumentException when an uncertain input points at nothing or its distribution is none
     */
    public WhatIfRun(Study study, StudyResult base, int threads, Optional<SavedRun> before) {
        this.whatIf = new StudyWhatIf(study, base, threads);
        this.blockDraws = whatIf.outcomes().blockDraws();
        this.fitted = FittedDraws.wanted(whatIf);
        this.plan = new RunPlan(whatIf, step, fitted);
        before.flatMap(saved -> saved.of(study)).ifPresent(parts -> parts.forEach(this::take));
        fitWhereDone();
    }

    /** Fits surfaces once their evaluations are done, and again to more of them until they are good enough; what follows depends on that. */
    private void fitWhereDone() {
        while (fitted && fit.isEmpty() && complete(RunPart.FIT).isPresent()) {
            FittedDraws tried = FittedDraws.of(whatIf, kept.get(RunPart.FIT), step);
            if (tried.check().goodEnough() || step == FitSteps.of(whatIf).last()) {
                fit = Optional.of(tried);
            } else {
                step++;
            }
            plan = new RunPlan(whatIf, step, fit.isEmpty() || surfaces().isPresent());
        }
    }

    /** Takes a part of an earlier run over; one with other columns than this version has is worked out anew. */
    private void take(RunPart part, double[][] columns) {
        if (columns.length == (part.isSearch() ? BreakEvenPart.COLUMNS : whatIf.outcomes().columns().count())) {
            kept.put(part, KeptDraws.of(columns, block(part)));
        }
    }

    /** Of a fit each by itself, since more may be fitted to later. */
    private int block(RunPart part) {
        return part == RunPart.SCENARIOS || part == RunPart.FIT ? 1 : part.isSearch() ? Integer.MAX_VALUE : blockDraws;
    }

    /** The what-if whose parts it works out. */
    public StudyWhatIf whatIf() {
        return whatIf;
    }

    /** True when nothing is left to be worked out. */
    public boolean isComplete() {
        return plan.parts(widest()).stream().allMatch(this::isDone);
    }

    /**
     * Whole evaluations that the run still takes, about; those that are found from sums or read off surfaces take next to no time and do not
     * count.
     */
    public int wholeEvaluations() {
        if (whatIf.outcomes().onSums()) {
            return 0;
        }
        return Arrays.stream(RunPart.values()).filter(part -> !(fitted && part.isOfMany()))
                .mapToInt(part -> Math.max(0, plan.count(part) - Optional.ofNullable(kept.get(part)).map(KeptDraws::draws).orElse(0))).sum();
    }

    /**
     * Evaluates a few draws, to be timed; what is found is forgotten.
     *
     * @param draws how many at least
     * @return how many were evaluated
     */
    public int tryOut(int draws, Progress progress) {
        KeptDraws trial = new KeptDraws();
        whatIf.outcomes().use(Optional.empty());
        whatIf.work(plan.of(RunPart.ALL, new int[0]), 1, trial, block -> block.endDraw() >= draws, progress);
        return trial.draws();
    }

    private boolean isDone(RunPart part) {
        return kept.containsKey(part) && (part.isSearch() || part == RunPart.ALL && enough(kept.get(part))
                || kept.get(part).draws() >= plan.count(part));
    }

    /**
     * Goes on to the end, or until the progress throws.
     *
     * @param progress told of the whole
     * @param soFar told of the results after each part, and now and then while draws are worked out, on this thread
     */
    public void run(Progress progress, Consumer<WhatIfResults> soFar) {
        List<RunPart> parts = plan.parts(widest());
        for (int i = 0; i < parts.size(); i++) {
            RunPart part = parts.get(i);
            while (!isDone(part)) {
                if (!work(part, plan.share(progress, part), soFar)) {
                    return;
                }
                fitWhereDone();
            }
            parts = plan.parts(widest());
            soFar.accept(results());
        }
        progress.at(1);
    }

    /** Works a part out; false when it was stopped. */
    private boolean work(RunPart part, Progress progress, Consumer<WhatIfResults> soFar) {
        whatIf.outcomes().use(part.isOfMany() ? surfaces() : Optional.empty());
        if (part.isSearch()) {
            return findBreakEven(part, progress);
        }
        KeptDraws draws = kept.computeIfAbsent(part, p -> new KeptDraws());
        RunEnd end = part == RunPart.SCENARIOS ? whatIf.workScenarios(draws, progress)
                : whatIf.work(plan.of(part, widest()), block(part), draws, part == RunPart.ALL ? watched(draws, soFar) : block -> false, progress);
        return end.reason() != RunEnd.Reason.CANCELLED;
    }

    private boolean findBreakEven(RunPart part, Progress progress) {
        try {
            double[][] columns = new BreakEvenParts(whatIf, widest()).of(part).columns(progress);
            kept.put(part, KeptDraws.of(columns, Integer.MAX_VALUE));
            return true;
        } catch (CancellationException e) {
            return false;
        }
    }

    /** Tells of draws now and then, and ends them when they are enough. */
    private BlockSink watched(KeptDraws draws, Consumer<WhatIfResults> soFar) {
        BlockSink rule = rule();
        draws.replay(rule);
        int step = Math.max(1, whatIf.study().getWhatIf().getDraws() / TOLD);
        return block -> {
            if (block.firstDraw() / step != block.endDraw() / step) {
                soFar.accept(results());
            }
            return rule.take(block);
        };
    }

    private boolean enough(KeptDraws draws) {
        boolean[] enough = new boolean[1];
        BlockSink rule = rule();
        draws.replay(block -> enough[0] = rule.take(block));
        return enough[0];
    }

    /** Enough when the mean saving of every plan is known as closely as the study wants. */
    private BlockSink rule() {
        double wanted = whatIf.study().getWhatIf().getErrorWanted();
        if (wanted <= 0) {
            return block -> false;
        }
        int baseline = whatIf.base().input().baseline();
        List<StandardErrorRule> rules = IntStream.range(0, whatIf.base().plans().size()).filter(p -> p != baseline)
                .mapToObj(p -> new StandardErrorRule(block -> saving(block, p, baseline), wanted, LEAST_DRAWS,
                        whatIf.uncertain().replicates()))
                .toList();
        return block -> rules.stream().map(rule -> rule.take(block)).reduce(true, Boolean::logicalAnd);
    }

    private double[] saving(Block block, int plan, int baseline) {
        double[] costs = block.columns()[whatIf.outcomes().columns().presentCost(plan)];
        double[] others = block.columns()[whatIf.outcomes().columns().presentCost(baseline)];
        return IntStream.range(0, costs.length).mapToDouble(i -> others[i] - costs[i]).toArray();
    }

    /** The surfaces that stand in for whole evaluations, where they are good enough. */
    private Optional<FittedDraws> surfaces() {
        return fit.filter(f -> f.check().goodEnough());
    }

    private int[] widest() {
        Optional<OneAtATime> single = single();
        return single.map(whatIf::widest).orElse(new int[0]);
    }

    private Optional<OneAtATime> single() {
        return complete(RunPart.SINGLE).map(whatIf::single);
    }

    private Optional<KeptDraws> complete(RunPart part) {
        return Optional.ofNullable(kept.get(part)).filter(k -> k.draws() >= plan.count(part));
    }

    /** What has been found so far. */
    public WhatIfResults results() {
        Optional<OneAtATime> single = single();
        int[] widest = widest();
        GridPart grid = whatIf.grid(widest);
        lookAtDraws();
        return new WhatIfResults(whatIf.base(), whatIf, single, complete(RunPart.SCENARIOS).map(whatIf::named),
                fit.map(FittedDraws::check), all(), prices, drawn,
                complete(RunPart.GRID).filter(k -> grid.exists()).map(grid::found),
                complete(RunPart.SHARES).map(k -> whatIf.shares(k, surfaces())),
                new BreakEvenParts(whatIf, widest).found(part -> Optional.ofNullable(kept.get(part)).map(KeptDraws::columns)));
    }

    private Optional<AllTogether> all() {
        return Optional.ofNullable(kept.get(RunPart.ALL)).filter(k -> k.draws() > 1).map(k -> whatIf.together(k, new RunEnd(k.draws(),
                k.draws() >= whatIf.study().getWhatIf().getDraws() ? RunEnd.Reason.COMPLETE
                        : enough(k) ? RunEnd.Reason.ENOUGH : RunEnd.Reason.CANCELLED),
                surfaces()));
    }

    private void lookAtDraws() {
        int looked = DrawnPrices.looked(Optional.ofNullable(kept.get(RunPart.ALL)).map(KeptDraws::draws).orElse(0));
        if (looked > 1 && looked != lookedAt) {
            prices = whatIf.prices(looked);
            drawn = whatIf.drawn(looked);
            lookedAt = looked;
        }
    }

    /** What has been found so far, to be kept with the study. */
    public SavedRun saved() {
        Map<RunPart, double[][]> parts = new EnumMap<>(RunPart.class);
        kept.forEach((part, draws) -> {
            if (draws.draws() > 0) {
                parts.put(part, draws.columns());
            }
        });
        return new SavedRun(StudyFingerprint.of(whatIf.study()), parts, Optional.of(EcoreUtil.copy(whatIf.study())));
    }
}
