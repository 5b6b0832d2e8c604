package org.amberyard.benchmarks;

import java.nio.file.Path;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyRecosting;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripDrives;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.study.StudyCompiler;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** The core on the example: 24 buses, 18 routes, 15 years, with the first plans of the study. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class ExampleStudyBenchmark {

    /** Number of plans evaluated. */
    @Param({"2", "3"})
    public int plans;

    private StudyInput study;
    private TripDrives drives;
    private YardMemory yards;
    private StudyResult before;

    /** Reads the example. */
    @Setup
    public void read() throws StudyFileException {
        StudyInput whole = StudyCompiler.compile(StudyFile.load(Path.of(System.getProperty("amberyard.example"))));
        study = new StudyInput(whole.name(), whole.currency(), whole.baseYear(), whole.years(), whole.money(), whole.duty(),
                whole.types(), whole.buses(), whole.depot(), whole.prices(), whole.funding(), whole.air(), whole.rules(),
                whole.plans().subList(0, plans), whole.baseline(), whole.trips());
        drives = new TripDrives(DutyTable.of(study.duty()));
        yards = new YardMemory();
        before = StudyEvaluation.of(study, drives, yards, Progress.NONE);
    }

    /** Everything from the road load on. */
    @Benchmark
    public StudyResult whole() {
        return StudyEvaluation.of(study, DutyTable.of(study.duty()));
    }

    /** What an edited price of fuel, buses, packs or upkeep computes again: every cost, and nothing else. */
    @Benchmark
    public StudyResult afterPriceEdit() {
        return StudyRecosting.of(study, before).orElseThrow();
    }

    /** The remedies for routes that fail, which are costed when they are looked at. */
    @Benchmark
    public Object remediesAfterPriceEdit() {
        return StudyRecosting.of(study, before).orElseThrow().outlooks();
    }

    /** What an edit of a plan that moves no electric bus computes again: the buses are not driven, nor a yard charged. */
    @Benchmark
    public StudyResult afterPlanEdit() {
        yards = yards.next();
        return StudyEvaluation.of(study, drives, yards, Progress.NONE);
    }

    /** A tariff on which nothing is known: all yards are charged anew. */
    @Benchmark
    public StudyResult onUnknownTariff() {
        return StudyEvaluation.of(study, drives, new YardMemory(), Progress.NONE);
    }
}
