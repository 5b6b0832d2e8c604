package org.amberyard.benchmarks;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DrivePattern;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.PreparedDrive;
import org.amberyard.core.duty.RouteDuty;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.core.duty.TraceSynthesis;
import org.amberyard.core.duty.VehicleSpec;
import org.amberyard.core.duty.WeatherDay;
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
import org.openjdk.jmh.infra.Blackhole;

/**
 * Driving buses through days: a day at one-second steps beside a plain loop over the same arithmetic, and a year of the
 * example's 18 routes.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(2)
public class DutyBenchmark {
    private static final int JANUARY = 0;
    private static final WeatherDay MILD = WeatherDay.steady(18);
    private static final WeatherDay COLD = WeatherDay.steady(-22);

    private DutyInput duty;
    private ElectricSpec bus;
    private RouteDuty everySecond;
    private RouteDuty microTrips;
    private List<RouteDuty> routes;
    private PreparedDrive prepared;
    private PlainLoop plain;

    /** Reads the example and prepares a route whose runs are driven second by second. */
    @Setup
    public void read() throws StudyFileException {
        duty = StudyCompiler.compile(StudyFile.load(Path.of(System.getProperty("amberyard.example")))).duty();
        bus = electric("C");
        RouteInput route = duty.routes().get(0);
        microTrips = RouteDuty.of(duty, route, bus, 1);
        RouteInput traced = new RouteInput(route.name(), route.bodyType(), route.runs().stream().map(this::traced).toList(),
                route.energyModel());
        everySecond = RouteDuty.of(duty, traced, bus, 1);
        routes = duty.routes().stream().map(r -> RouteDuty.of(duty, r, electric(r.bodyType()), 1)).toList();
        List<SpeedTrace> traces = traced.runs().stream().map(r -> r.trace().orElseThrow()).toList();
        prepared = new PreparedDrive(traces, bus, 1500);
        plain = new PlainLoop(traces, bus);
    }

    private ElectricSpec electric(String bodyType) {
        return duty.vehicles().stream().filter(v -> v.body().bodyType().equals(bodyType)).filter(ElectricSpec.class::isInstance)
                .map((VehicleSpec v) -> (ElectricSpec) v).findFirst().orElseThrow();
    }

    private RunInput traced(RunInput run) {
        return new RunInput(run.name(), run.departureMin(), run.durationMin(), run.distanceKm(), run.stops(), run.dwellS(),
                run.meanRiders(), run.topSpeedKmh(), run.climbM(), run.yardAfter(), run.extendedYear(), run.daysByMonth(),
                Optional.of(unrolled(new TraceSynthesis(duty.style()).of(run))));
    }

    /** The whole drive in steps of a second. */
    private static SpeedTrace unrolled(DrivePattern pattern) {
        List<Double> speeds = new ArrayList<>(List.of(0.0));
        List<Double> grades = new ArrayList<>();
        for (DrivePattern.Piece piece : pattern.pieces()) {
            for (int time = 0; time < piece.times(); time++) {
                addSeconds(piece.trace(), speeds, grades);
            }
        }
        double[] times = new double[speeds.size()];
        for (int second = 0; second < times.length; second++) {
            times[second] = second;
        }
        return new SpeedTrace(times, speeds.stream().mapToDouble(Double::doubleValue).toArray(),
                grades.stream().mapToDouble(Double::doubleValue).toArray());
    }

    private static void addSeconds(SpeedTrace trace, List<Double> speeds, List<Double> grades) {
        for (int step = 0; step < trace.steps(); step++) {
            double end = Math.max(0, trace.meanSpeedMps(step) + trace.accelerationMps2(step) * trace.durationS(step) / 2);
            long seconds = Math.max(1, Math.round(trace.durationS(step)));
            for (long second = 1; second <= seconds; second++) {
                double start = trace.meanSpeedMps(step) - trace.accelerationMps2(step) * trace.durationS(step) / 2;
                speeds.add(second == seconds && end < 1e-9 ? 0 : start + (end - start) * second / seconds);
                grades.add(trace.grade(step));
            }
        }
    }

    /** One bus-day at one-second steps, mild: traction, cabin, pack and state of charge. */
    @Benchmark
    public DayBlock dayEverySecond() {
        return everySecond.block(JANUARY, false, MILD, duty.habit());
    }

    /** The same on a day so cold that the pack limits braking. */
    @Benchmark
    public DayBlock coldDayEverySecond() {
        return everySecond.block(JANUARY, false, COLD, duty.habit());
    }

    /** The same day from the run's summary, whose micro-trips repeat. */
    @Benchmark
    public DayBlock dayOfMicroTrips() {
        return microTrips.block(JANUARY, false, MILD, duty.habit());
    }

    /** Road load, losses and braking of that day's steps as the core sums them, without heat and charge. */
    @Benchmark
    public double roadLoadOfThatDay() {
        return prepared.drawnKwh();
    }

    /** The yardstick: road load, losses and braking of the same steps in one plain loop, nothing else. */
    @Benchmark
    public double plainLoopOfThatDay() {
        return plain.run();
    }

    /** A year of all routes: normal, coldest and hottest day of every month, school and extended-year days. */
    @Benchmark
    public void yearOfAllRoutes(Blackhole results) {
        for (RouteDuty route : routes) {
            for (int month = 0; month < Climate.MONTHS; month++) {
                Climate.MonthWeather weather = duty.climate().months().get(month);
                for (boolean extendedYear : new boolean[] {false, true}) {
                    results.consume(route.dayUse(month, extendedYear, weather.normal()));
                    results.consume(route.dayUse(month, extendedYear, weather.coldest()));
                    results.consume(route.dayUse(month, extendedYear, weather.hottest()));
                }
            }
        }
    }
}
