package org.amberyard.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.whatif.StudySweep;

/**
 * What-ifs of many depots one after the other, each the example with a discount rate of its own, so that nothing is
 * known from the one before. Arguments: the study, number of depots, number of draws. Prints the time of a depot, what a
 * thousand would take, and the memory that was in use at most after a depot.
 */
public final class StatewideSweep {
    private static final double NANOS_PER_S = 1e9;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final int STATE = 1000;
    private static final int MIB = 1 << 20;

    private StatewideSweep() {
    }

    /** Runs it. */
    public static void main(String[] args) throws StudyFileException {
        int depots = Integer.parseInt(args[1]);
        int draws = Integer.parseInt(args[2]);
        long most = 0;
        long start = System.nanoTime();
        long cpu = cpuNanos();
        for (int depot = 0; depot < depots; depot++) {
            Study study = StudyFile.load(Path.of(args[0]));
            study.getSettings().setDiscountRate(0.03 + 0.001 * depot);
            study.getWhatIf().setDraws(draws);
            StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
            double[] sum = new double[1];
            new StudySweep(study, base, Runtime.getRuntime().availableProcessors()).run(0, block -> {
                sum[0] += block.columns()[0][0];
                return false;
            }, Progress.NONE);
            System.gc();
            most = Math.max(most, Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory());
        }
        double seconds = (System.nanoTime() - start) / NANOS_PER_S / depots;
        double cpuSeconds = (cpuNanos() - cpu) / NANOS_PER_S / depots;
        System.out.printf("%d buses, %d draws: %.2f s a depot (%.2f s of processors); %d depots: %.1f h, %.1f h of processors; %d MiB%n",
                24, draws, seconds, cpuSeconds, STATE, seconds * STATE / SECONDS_PER_HOUR, cpuSeconds * STATE / SECONDS_PER_HOUR,
                most / MIB);
    }

    private static long cpuNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
