package org.amberyard.benchmarks;

import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.plan.PlanOutcome;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
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

/**
 * What a user waits for on the example: an edit of a field, from the model to the results, each time to a value that was not there
 * before; and what a whole draw takes, one at a time.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class EditBenchmark {
    private static final double STEP = 1e-4;

    /** How the yard charges. */
    @Param({"AT_ONCE", "LEAST_COST"})
    public ChargingPolicy policy;

    private Study study;
    private StudyEvaluator evaluator;
    private StudyResult base;
    private YardMemory known;
    private TariffCharge charge;
    private double pricePerKwh;
    private FuelPrice fuel;
    private double pricePerL;
    private List<MonthClimate> months;
    private double[] lowC;
    private int edits;

    /** Reads the example and evaluates it. */
    @Setup
    public void read() throws StudyFileException {
        study = StudyFile.load(Path.of(System.getProperty("amberyard.example")));
        study.getDepot().setChargingPolicy(policy);
        charge = ((ScheduledTariff) study.getDepot().getTariff()).getCharges().get(0);
        pricePerKwh = charge.getPricePerKwh();
        fuel = study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast).findFirst().orElseThrow();
        pricePerL = fuel.getPricePerL();
        months = study.getSite().getClimate();
        lowC = months.stream().mapToDouble(MonthClimate::getMeanLowC).toArray();
        evaluator = new StudyEvaluator();
        base = evaluator.evaluate(StudyCompiler.compile(study));
        known = YardMemory.knowing(base.plans().stream().flatMap(p -> p.yards().stream()).toList());
    }

    private double next() {
        edits++;
        return edits * STEP;
    }

    private StudyResult edited() {
        return evaluator.evaluate(StudyCompiler.compile(study));
    }

    /** Everything, with nothing known. */
    @Benchmark
    public StudyResult whole() {
        return new StudyEvaluator().evaluate(StudyCompiler.compile(study));
    }

    /** The price of a fuel. */
    @Benchmark
    public StudyResult fuelPriceEdit() {
        fuel.setPricePerL(pricePerL * (1 + next()));
        return edited();
    }

    /** The price of a kWh. */
    @Benchmark
    public StudyResult tariffEdit() {
        charge.setPricePerKwh(pricePerKwh * (1 + next()));
        return edited();
    }

    /** The mean low of a month. */
    @Benchmark
    public StudyResult temperatureEdit() {
        months.get(0).setMeanLowC(lowC[0] - next());
        return edited();
    }

    /** A draw in which the lows of all months differ, so that buses are driven and yards charged anew. */
    @Benchmark
    public List<PlanOutcome> wholeDraw() {
        double colderC = next();
        for (int month = 0; month < lowC.length; month++) {
            months.get(month).setMeanLowC(lowC[month] - colderC);
        }
        return PlanOutcome.all(StudyCompiler.compile(study), base, known.anew());
    }
}
