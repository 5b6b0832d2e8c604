package org.amberyard.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

/** Times work by its median over some rounds, after rounds that only warm up. */
final class Stopwatch {
    private static final double NANOS_PER_MS = 1e6;
    private static final double WARM_MS = 2500;
    private static final double MEASURED_MS = 4000;
    private static final int LEAST_ROUNDS = 3;
    private static final int MOST_ROUNDS = 400;

    /** What the work gave last: work whose result goes nowhere may be left out by the machine. */
    @SuppressWarnings("unused")
    private volatile Object last;

    /** Milliseconds that the work takes. */
    double ms(Callable<?> work) throws Exception {
        times(work, WARM_MS);
        List<Double> times = times(work, MEASURED_MS);
        return times.get(times.size() / 2);
    }

    private List<Double> times(Callable<?> work, double budgetMs) throws Exception {
        List<Double> times = new ArrayList<>();
        double sum = 0;
        while (times.size() < LEAST_ROUNDS || sum < budgetMs && times.size() < MOST_ROUNDS) {
            double ms = once(work);
            times.add(ms);
            sum += ms;
        }
        return times.stream().sorted().toList();
    }

    /** Milliseconds of the work done once. */
    double once(Callable<?> work) throws Exception {
        long start = System.nanoTime();
        last = work.call();
        return (System.nanoTime() - start) / NANOS_PER_MS;
    }

    /** Memory in use after what is not needed has been collected, in MiB. */
    static double heapMib() {
        for (int pass = 0; pass < 3; pass++) {
            System.gc();
        }
        return (Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory()) / (double) (1 << 20);
    }
}
