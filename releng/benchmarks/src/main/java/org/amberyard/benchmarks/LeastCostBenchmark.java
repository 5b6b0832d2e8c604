package org.amberyard.benchmarks;

import java.util.List;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.charging.LeastCost;
import org.amberyard.core.charging.LeastCostBill;
import org.amberyard.core.charging.LeastCostMonth;
import org.amberyard.core.charging.LeastCostSolver;
import org.amberyard.core.charging.LeastCostYear;
import org.amberyard.core.charging.MonthProblem;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.infra.Blackhole;

/** Least-cost charging of yards of 24 and 100 buses, beside a general linear programme given to a library. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class LeastCostBenchmark {
    private MonthProblem month;
    private List<MonthProblem> year;
    private List<MonthProblem> yearOfHundred;
    private LeastCostSolver asked;
    private int draw;

    /** Makes the yards; both ways must come to the same cost. */
    @Setup
    public void make() {
        month = new YardMonths(24, false).ofTwoDays();
        year = new YardMonths(24, true).year();
        yearOfHundred = new YardMonths(100, true).year();
        asked = new LeastCostSolver(year.get(0));
        double cost = LeastCost.of(month).schedule().cost() - month.stretches().stream().mapToDouble(YardMonths::baseCost).sum();
        if (Math.abs(cost - LibraryProgram.lowestCost(month)) > 1e-6 * cost) {
            throw new IllegalStateException(cost + " is not the cost of the linear programme");
        }
    }

    /** A month of 24 buses, two kinds of days, one demand charge; its schedule too. */
    @Benchmark
    public LeastCostMonth month() {
        return LeastCost.of(month);
    }

    /** The yardstick: the same month as a linear programme in a library. */
    @Benchmark
    public double monthInLibrary() {
        return LibraryProgram.lowestCost(month);
    }

    /** A year of 24 buses: four stretches a month, building, cabinets, two demand charges; its schedules too. */
    @Benchmark
    public void year(Blackhole results) {
        year.forEach(one -> results.consume(LeastCost.of(one)));
    }

    /** The bills of that year without schedules. */
    @Benchmark
    public void billsOfYear(Blackhole results) {
        year.forEach(one -> results.consume(new LeastCostSolver(one).bill(one.demandPrices(), one.demandFloorsKw(), 1)));
    }

    /** The same year of 100 buses, schedules too. */
    @Benchmark
    public void yearOfHundredBuses(Blackhole results) {
        yearOfHundred.forEach(one -> results.consume(LeastCost.of(one)));
    }

    /** That year of 24 buses under a ratchet. */
    @Benchmark
    public LeastCostYear yearUnderRatchet() {
        return LeastCostYear.of(year, new double[] {0.7, 0});
    }

    /** A month asked again with other prices of demand. */
    @Benchmark
    public LeastCostBill monthAskedAgain() {
        draw = (draw + 7) % 20;
        double factor = 0.9 + draw / 100.0;
        return asked.bill(new double[] {9 * factor, 6 * factor}, new double[2], 1);
    }
}
