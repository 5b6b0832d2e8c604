package org.amberyard.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.variants.FitCheck;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.study.Study;
import org.amberyard.model.whatif.Effect;
import org.amberyard.model.whatif.UncertainInput;
import org.amberyard.model.whatif.WhatifFactory;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.whatif.StudySweep;
import org.amberyard.study.whatif.WhatIfRun;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Draws of a study in which weather, consumption and packs vary beside its uncertain prices; the ranges are invented. */
final class MixedDraws {
    private static final double NANOS_PER_MS = 1e6;
    private static final int THREADS = Runtime.getRuntime().availableProcessors();

    private final Study study;
    private final StudyResult base;

    /** Draws that were read off surfaces: time passed, time of processors, and what they tell of themselves. */
    record Fitted(double ms, double processorMs, WhatIfResults results) {
        /** Words for what it rests on and by how much it misses. */
        String words() {
            FitCheck check = results.fit().orElseThrow();
            return String.format("%d evaluations fitted to, %d to check on; 95 of 100 draws miss costs and savings by %.1f %% of P10 to P90 at most%s",
                    check.fittedTo(), check.errors().heldOut(), 100 * check.worst(), check.goodEnough() ? "" : ", so each was evaluated");
        }
    }

    MixedDraws(Study of, ChargingPolicy policy) {
        study = EcoreUtil.copy(of);
        study.getDepot().setChargingPolicy(policy);
        study.getWhatIf().setErrorWanted(0);
        study.getWhatIf().getScenarios().clear();
        UncertainInput weather = add("Temperature", "MonthClimate", "meanLowC; meanHighC", -3, 2);
        weather.setEffect(Effect.PLUS);
        weather.setLikely(0);
        add("Cabin loss", "ElectricType", "cabinLossKwPerK", 0.8, 1.2);
        add("Rolling resistance", "ElectricType", "rollingResistance", 0.85, 1.2);
        add("Fade", "ElectricType", "calendarFadePerYear", 0.6, 1.6);
        add("Pack size", "ElectricType", "batteryKwh", 0.95, 1);
        base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
    }

    private UncertainInput add(String name, String kind, String field, double low, double high) {
        UncertainInput input = WhatifFactory.eINSTANCE.createUncertainInput();
        input.setName(name);
        input.setKind(kind);
        input.setElement("*");
        input.setField(field);
        input.setLow(low);
        input.setHigh(high);
        study.getWhatIf().getInputs().add(input);
        return input;
    }

    /** Milliseconds that a draw takes when so many are evaluated, each as a whole, on all processors. */
    double evaluatedMs(int draws) {
        study.getWhatIf().setDraws(draws);
        long start = System.nanoTime();
        new StudySweep(study, base, THREADS).run(0, block -> false, Progress.NONE);
        return (System.nanoTime() - start) / NANOS_PER_MS / draws;
    }

    /** Draws off surfaces, from the first evaluation that these are fitted to until the last draw. */
    Fitted fitted(int draws) {
        study.getWhatIf().setDraws(draws);
        study.getWhatIf().setFitted(true);
        WhatIfRun run = new WhatIfRun(study, base, THREADS, Optional.empty());
        long[] from = new long[2];
        long[] to = new long[2];
        run.run(share -> {
            if (to[0] > 0) {
                throw new CancellationException();
            }
        }, soFar -> {
            if (from[0] == 0) {
                now(from);
            }
            if (to[0] == 0 && soFar.all().filter(all -> all.end().draws() == draws).isPresent()) {
                now(to);
            }
        });
        study.getWhatIf().setFitted(false);
        return new Fitted((to[0] - from[0]) / NANOS_PER_MS, (to[1] - from[1]) / NANOS_PER_MS, run.results());
    }

    private static void now(long[] times) {
        times[0] = System.nanoTime();
        times[1] = ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
