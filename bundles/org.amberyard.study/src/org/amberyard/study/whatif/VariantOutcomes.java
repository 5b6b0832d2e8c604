package org.amberyard.study.whatif;

import java.util.List;
import java.util.concurrent.atomic.AtomicReference;
import java.util.function.IntFunction;
import org.amberyard.core.plan.PlanOutcome;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.BlockSink;
import org.amberyard.core.whatif.DrawEvaluation;
import org.amberyard.core.whatif.DrawRunner;
import org.amberyard.core.whatif.RunEnd;
import org.amberyard.core.whatif.RunSettings;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.study.Study;

/**
 * Works out what plans come to in many variants of a study, on several threads. Results stand in columns: for each plan its
 * present cost, its greenhouse gas and its appropriations by year.
 */
final class VariantOutcomes {
    private static final int BEFORE_YEARS = 2;
    /** Few enough that a run can be stopped soon and its threads end together. */
    private static final int BLOCK = 16;
    /** Years of yards that are remembered over variants; prices alone ask for few, weather for ever new ones. */
    private static final int MOST_YEARS = 3000;

    private final Study study;
    private final StudyResult base;
    private final AtomicReference<YardMemory> yards;

    /** Variants of a study whose results are known. */
    VariantOutcomes(Study study, StudyResult base) {
        this.study = study;
        this.base = base;
        this.yards = new AtomicReference<>(
                YardMemory.knowing(base.plans().stream().flatMap(p -> p.yards().stream()).toList()));
    }

    /** Number of columns. */
    int columns() {
        return base.plans().size() * perPlan();
    }

    private int perPlan() {
        return BEFORE_YEARS + base.input().years();
    }

    /** Column of the present cost of a plan. */
    int presentCost(int plan) {
        return plan * perPlan();
    }

    /** Column of the greenhouse gas of a plan, kg. */
    int co2eKg(int plan) {
        return plan * perPlan() + 1;
    }

    /** Column of what must be appropriated for a plan in a year. */
    int appropriation(int plan, int year) {
        return plan * perPlan() + BEFORE_YEARS + year;
    }

    /**
     * Runs variants given by the values of the uncertain inputs.
     *
     * @param variants number of variants
     * @param values values of the uncertain inputs in a variant; not a number leaves an input as it is
     */
    RunEnd run(int variants, IntFunction<double[]> values, int threads, BlockSink sink, Progress progress) {
        return run(variants, (made, variant) -> made.at(values.apply(variant)), threads, sink, progress);
    }

    /** Runs the scenarios of the study. */
    RunEnd scenarios(int threads, BlockSink sink, Progress progress) {
        return run(study.getWhatIf().getScenarios().size(), StudyVariants::in, threads, sink, progress);
    }

    private interface Variant {
        StudyInput of(StudyVariants made, int variant);
    }

    private RunEnd run(int variants, Variant variant, int threads, BlockSink sink, Progress progress) {
        RunSettings settings = new RunSettings(0, variants, BLOCK, columns(), threads);
        return DrawRunner.run(settings, check -> evaluation(variant), sink, progress);
    }

    private DrawEvaluation evaluation(Variant variant) {
        StudyVariants made = new StudyVariants(study);
        return (draw, results) -> {
            YardMemory known = yards.updateAndGet(memory -> memory.size() > MOST_YEARS ? memory.anew() : memory);
            write(PlanOutcome.all(variant.of(made, draw), base, known), results);
        };
    }

    private void write(List<PlanOutcome> plans, double[] results) {
        for (int plan = 0; plan < plans.size(); plan++) {
            PlanOutcome outcome = plans.get(plan);
            results[presentCost(plan)] = outcome.presentCost();
            results[co2eKg(plan)] = outcome.co2eKg();
            for (int year = 0; year < outcome.appropriations().size(); year++) {
                results[appropriation(plan, year)] = outcome.appropriations().get(year);
            }
        }
    }
}
