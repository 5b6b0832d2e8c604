package org.amberyard.benchmarks;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.battery.TaperCurve;
import org.amberyard.core.charging.BusAcceptance;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.LeastCostSessions;
import org.amberyard.core.charging.PlugIn;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.charging.StepGrid;
import org.amberyard.core.charging.SpareKw;
import org.amberyard.core.charging.StretchProblem;
import org.amberyard.core.charging.SwapHours;
import org.amberyard.core.charging.YardCharging;
import org.amberyard.core.charging.YardStretch;
import org.amberyard.core.depot.Port;
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

/** A school day of 24 made buses with a night and half of them a midday stay, at steps of 15 minutes. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ChargingBenchmark {
    private static final int BUSES = 24;
    private static final Port AC = new Port("AC", false, 19.2, 0.9, 30, 5000, 9000, 10, 30, 300);
    private static final Port DC = new Port("DC", true, 60, 0.93, 100, 40000, 30000, 10, 30, 900);

    private final ChargeRule atOnce = ChargeRule.of(ChargePolicy.AT_ONCE);
    private final ChargeRule spread = ChargeRule.of(ChargePolicy.SPREAD);
    private final ChargeRule leastCost = ChargeRule.of(ChargePolicy.LEAST_COST);
    private YardStretch day;
    private List<PortUnit> own;
    private List<PortUnit> shared;
    private List<PortUnit> cabinets;
    private double[] noKw;
    private int[] noDemand;
    private YardCharging planned;
    private double[][] plan;

    /** Makes the buses and their ports. */
    @Setup
    public void make() {
        BusAcceptance takes = new BusAcceptance(19.2, 90, new TaperCurve(150, 7.5, 0.9, 140));
        List<PlugIn> plugIns = new ArrayList<>();
        for (int bus = 0; bus < BUSES; bus++) {
            plugIns.add(new PlugIn(bus, "B" + bus, 960 + bus * 5, 1440 + 340 + bus * 3, 40 + bus * 2, 1, takes));
            if (bus % 2 == 0) {
                plugIns.add(new PlugIn(bus, "B" + bus, 520 + bus, 830 + bus, 25, 1, takes));
            }
        }
        StepGrid grid = StepGrid.ofDays(1, 15);
        day = new YardStretch(1, grid, plugIns, SwapHours.always(grid.lengthMin()));
        own = PortUnit.of(AC, 1, BUSES);
        shared = PortUnit.of(DC, 1, BUSES / 3);
        cabinets = PortUnit.of(DC, 3, BUSES / 3);
        noKw = new double[grid.steps()];
        noDemand = new int[grid.steps()];
        planned = YardCharging.of(day, own, leastCost);
        plan = YardCharging.of(day, own, spread).schedule().meterKw();
    }

    /** A plug for each bus, at once. */
    @Benchmark
    public YardCharging atOnceAtPlugsOfTheirOwn() {
        return YardCharging.of(day, own, atOnce);
    }

    /** A plug for each bus, spread. */
    @Benchmark
    public YardCharging spreadAtPlugsOfTheirOwn() {
        return YardCharging.of(day, own, spread);
    }

    /** Three buses to a port, in a queue with swaps, spread. */
    @Benchmark
    public YardCharging spreadInAQueue() {
        return YardCharging.of(day, shared, spread);
    }

    /** Three plugs to a cabinet, at once. */
    @Benchmark
    public YardCharging atOnceAtCabinets() {
        return YardCharging.of(day, cabinets, atOnce);
    }

    /** Three plugs to a cabinet, spread. */
    @Benchmark
    public YardCharging spreadAtCabinets() {
        return YardCharging.of(day, cabinets, spread);
    }

    /** The sessions of the least-cost problem, without its solution. */
    @Benchmark
    public StretchProblem sessions() {
        return new LeastCostSessions(YardCharging.of(day, own, leastCost)).problem(noKw, noKw, noDemand);
    }

    /** A plan made one that the packs can take. */
    @Benchmark
    public Object plannedToTaken() {
        return new LeastCostSessions(planned).schedule(plan, SpareKw.unlimited(noKw.length));
    }
}
