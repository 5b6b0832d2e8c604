package org.amberyard.benchmarks;

import com.sun.management.OperatingSystemMXBean;
import java.lang.management.ManagementFactory;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.whatif.StudySweep;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What-ifs of a sample of depots one after the other, each the example with a discount rate of its own, so that nothing is known from
 * the one before. Arguments: the study, number of depots, number of draws. Prints time of processors and memory measured at several
 * numbers of draws, years and buses, and what a state of a thousand depots would take, which is not measured. Rows are handed on and
 * not kept, so memory does not grow with their number.
 */
public final class StatewideSweep {
    private static final double NANOS_PER_S = 1e9;
    private static final double MS_PER_S = 1000;
    private static final double SECONDS_PER_HOUR = 3600;
    private static final int STATE_DEPOTS = 1000;
    private static final int STATE_DRAWS = 1000;
    private static final int MIB = 1 << 20;
    private static final double FIRST_RATE = 0.03;
    private static final double RATE_STEP = 0.001;

    private final Path file;
    private final List<Point> points = new ArrayList<>();
    private long mostBytes;
    private int rates;

    /** A depot that was evaluated and swept: time of processors. */
    private record Point(int buses, int years, int draws, double evaluationS, double sweepS) {
        double evaluationMsEach() {
            return evaluationS * MS_PER_S / buses / years;
        }

        double drawMs() {
            return sweepS * MS_PER_S / draws;
        }

        long size() {
            return (long) buses * years * draws;
        }
    }

    private StatewideSweep(Path file) {
        this.file = file;
    }

    /** Runs it. */
    public static void main(String[] args) throws StudyFileException {
        StatewideSweep state = new StatewideSweep(Path.of(args[0]));
        int depots = Integer.parseInt(args[1]);
        int draws = Integer.parseInt(args[2]);
        System.out.println("buses  years    draws  evaluation (s)  each bus and year (ms)  sweep (s)  each draw (ms)");
        state.measure(1, 1, draws / 4);
        System.out.println("The first warmed up and does not count.");
        state.points.clear();
        for (int depot = 0; depot < depots; depot++) {
            state.measure(1, 1, draws);
            state.measure(1, 1, draws / 4);
            state.measure(2, 1, draws);
            state.measure(1, 2, draws);
        }
        state.print();
        state.mixed();
    }

    /** The same with weather, consumption and packs varying too, draws read off surfaces. */
    private void mixed() throws StudyFileException {
        MixedDraws.Fitted fitted = new MixedDraws(StudyFile.load(file), ChargingPolicy.AT_ONCE).fitted(STATE_DRAWS);
        System.out.printf("%d draws of a depot in which weather, consumption and packs vary too, charged at once: %.2f s of a processor; %s%n",
                STATE_DRAWS, fitted.processorMs() / MS_PER_S, fitted.words());
        System.out.printf("Extrapolated, not measured: %d such depots: %.2f h of a processor%n", STATE_DEPOTS,
                STATE_DEPOTS * fitted.processorMs() / MS_PER_S / SECONDS_PER_HOUR);
    }

    /** A depot of its own, with a part of its years and of its buses. */
    private void measure(int partOfYears, int partOfBuses, int draws) throws StudyFileException {
        Study study = StudyFile.load(file);
        study.getSettings().setDiscountRate(FIRST_RATE + RATE_STEP * rates++);
        study.getSettings().setHorizonYears(study.getSettings().getHorizonYears() / partOfYears);
        leave(study, partOfBuses);
        study.getWhatIf().setDraws(draws);
        long start = cpuNanos();
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(study));
        double evaluationS = (cpuNanos() - start) / NANOS_PER_S;
        start = cpuNanos();
        new StudySweep(study, base, Runtime.getRuntime().availableProcessors()).run(0, block -> false, Progress.NONE);
        Point point = new Point(study.getBuses().size(), base.input().years(), draws, evaluationS, (cpuNanos() - start) / NANOS_PER_S);
        points.add(point);
        mostBytes = Math.max(mostBytes, inUse());
        System.out.printf("%5d  %5d  %7d  %14.2f  %22.2f  %9.2f  %14.4f%n", point.buses(), point.years(), point.draws(), point.evaluationS(),
                point.evaluationMsEach(), point.sweepS(), point.drawMs());
    }

    /** Leaves one route in so many with its buses, and what does not refer to the others. */
    private static void leave(Study study, int part) {
        List<Route> gone = study.getRoutes().stream().filter(r -> study.getRoutes().indexOf(r) % part != 0).toList();
        List<Bus> idle = study.getBuses().stream().filter(b -> gone.contains(b.getRoute())).toList();
        study.getPlans().forEach(p -> p.getReplacements().removeIf(r -> idle.contains(r.getBus()) || idle.contains(r.getCascadeTo())));
        if (!gone.isEmpty()) {
            study.getConsumptionLogs().clear();
            study.getTrips().clear();
        }
        EcoreUtil.deleteAll(idle, true);
        EcoreUtil.deleteAll(gone, true);
    }

    private void print() {
        System.out.printf("Times are of all processors together. At most %d MiB in use, what awaits collection included; %d MiB allowed.%n",
                mostBytes / MIB, Runtime.getRuntime().maxMemory() / MIB);
        long most = points.stream().mapToLong(Point::size).max().orElseThrow();
        List<Point> whole = points.stream().filter(p -> p.size() == most).toList();
        double evaluationS = whole.stream().mapToDouble(Point::evaluationS).average().orElseThrow();
        double drawMs = whole.stream().mapToDouble(Point::drawMs).average().orElseThrow();
        System.out.printf("Extrapolated, not measured: %d depots of %d buses, %d draws each: %.2f h of a processor%n", STATE_DEPOTS,
                whole.get(0).buses(), STATE_DRAWS, STATE_DEPOTS * (evaluationS + STATE_DRAWS * drawMs / MS_PER_S) / SECONDS_PER_HOUR);
    }

    private static long inUse() {
        return Runtime.getRuntime().totalMemory() - Runtime.getRuntime().freeMemory();
    }

    private static long cpuNanos() {
        return ((OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean()).getProcessCpuTime();
    }
}
