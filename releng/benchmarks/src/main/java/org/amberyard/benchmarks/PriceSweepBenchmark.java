package org.amberyard.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.plan.PriceField;
import org.amberyard.core.plan.PriceSweep;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Threads;
import org.openjdk.jmh.annotations.Warmup;

/**
 * Plans of the example at other prices, on two threads: present cost, greenhouse gas and appropriations of 15 years each. An
 * operation is one plan at one set of prices.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
@Threads(2)
public class PriceSweepBenchmark {
    private static final int PLANS = 3;
    private static final int DRAWS = 1024;

    /** What varies: prices of running alone, or those of buses and electricity too, by which awards and yards are found anew. */
    @Param({"running", "buying"})
    public String prices;

    private PriceSweep sweep;
    private double[][] values;

    /** Lays out the example. */
    @Setup
    public void lay() throws StudyFileException {
        StudyResult base = new StudyEvaluator().evaluate(
                StudyCompiler.compile(StudyFile.load(Path.of(System.getProperty("amberyard.example")))));
        if (base.plans().size() != PLANS) {
            throw new IllegalStateException("The example has " + base.plans().size() + " plans");
        }
        List<PriceField> fields = PriceField.all(base.input()).stream().filter(f -> runs(f) || prices.equals("buying") && buys(f)).toList();
        sweep = PriceSweep.of(base, fields, new YardMemory()).orElseThrow();
        Random random = new Random(1);
        values = new double[DRAWS][];
        for (int draw = 0; draw < DRAWS; draw++) {
            values[draw] = fields.stream().mapToDouble(f -> near(f, base.input(), random)).toArray();
        }
    }

    private static boolean runs(PriceField field) {
        return switch (field.kind()) {
            case FUEL_PRICE, FUEL_RISE, FLUID_PRICE, PACK_PRICE, REGISTRATION -> true;
            default -> false;
        };
    }

    private static boolean buys(PriceField field) {
        return field.kind() == PriceField.Kind.INDEX_RISE || field.kind() == PriceField.Kind.PORT_INSTALLATION;
    }

    private static double near(PriceField field, StudyInput study, Random random) {
        boolean rise = field.kind().name().endsWith("RISE");
        return rise ? field.in(study) + 0.01 * (random.nextDouble() - 0.5) : field.in(study) * (0.8 + 0.4 * random.nextDouble());
    }

    /** Draws of a thread, one after the other. */
    @State(Scope.Thread)
    public static class Turn {
        private PriceSweep.Evaluation evaluation;
        private double[] results;
        private int draw;

        /** Memory of the thread. */
        @Setup
        public void make(PriceSweepBenchmark of) {
            evaluation = of.sweep.evaluation();
            results = new double[of.sweep.results()];
        }
    }

    /** One set of prices. */
    @Benchmark
    @OperationsPerInvocation(PLANS)
    public double plans(Turn turn) {
        turn.draw = (turn.draw + 1) % DRAWS;
        if (!turn.evaluation.at(values[turn.draw], turn.results)) {
            throw new IllegalStateException("Prices decide otherwise");
        }
        return turn.results[0];
    }
}
