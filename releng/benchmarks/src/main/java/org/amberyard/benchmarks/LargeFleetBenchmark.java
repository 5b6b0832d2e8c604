package org.amberyard.benchmarks;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyRecosting;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.study.StudyCompiler;
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

/** A price edit of 1,008 buses (42 times the example), 25 years and 5 plans. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LargeFleetBenchmark {
    private static final int TIMES = 42;
    private static final int PLANS = 5;
    private static final int YEARS = 25;

    private StudyInput study;
    private StudyResult before;

    /** Reads the example and evaluates its multiple. */
    @Setup
    public void read() throws StudyFileException {
        StudyInput example = StudyCompiler.compile(StudyFile.load(Path.of(System.getProperty("amberyard.example"))));
        study = new LargeFleet(example, TIMES).of(PLANS, YEARS);
        before = StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }

    /** Every cost of every plan at other prices. */
    @Benchmark
    public StudyResult afterPriceEdit() {
        return StudyRecosting.of(study, before).orElseThrow();
    }
}
