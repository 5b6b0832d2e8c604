package org.amberyard.benchmarks;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.xml.parsers.DocumentBuilderFactory;
import org.amberyard.core.charging.LeastCost;
import org.amberyard.core.charging.MonthProblem;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.plan.PriceField;
import org.amberyard.core.plan.PriceSweep;
import org.amberyard.core.plan.StudyEvaluation;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyRecosting;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.TripDrives;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.depot.ChargingPolicy;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.whatif.StudySweep;

/**
 * One page: what the example takes in time and memory, each figure beside a yardstick that is taken in the same run on the same
 * machine. Argument: the study.
 */
public final class BenchPage {
    private static final int DRAWS = 200;
    private static final int SWEPT = 100_000;
    private static final int MANY = 10_000;
    private static final int MIXED_AT_ONCE = 64;
    private static final int MIXED_LEAST_COST = 16;
    private static final double MS_PER_S = 1000;
    private static final int LARGE = 84;
    private static final int STATE = 1000;
    private static final double MS_PER_HOUR = 3.6e6;

    private final Path file;
    private final Stopwatch watch = new Stopwatch();
    private final StudyInput study;
    private final TripDrives drives;
    private final StudyResult before;
    private final double wholeMs;

    private BenchPage(Path file) throws Exception {
        this.file = file;
        this.study = StudyCompiler.compile(StudyFile.load(file));
        this.drives = new TripDrives(DutyTable.of(study.duty()));
        this.before = StudyEvaluation.of(study, drives, new YardMemory(), Progress.NONE);
        this.wholeMs = watch.ms(() -> StudyEvaluation.of(study, DutyTable.of(study.duty())));
    }

    /** Prints the page. */
    public static void main(String[] args) throws Exception {
        Path file = Path.of(args[0]);
        System.out.printf("%-58s %14s   %s%n", "what", "takes", "yardstick of the same run");
        BenchPage page = new BenchPage(file);
        page.edits();
        page.draws();
        page.mixed(ChargingPolicy.AT_ONCE, MIXED_AT_ONCE);
        page.mixed(ChargingPolicy.LEAST_COST, MIXED_LEAST_COST);
        page.charging();
        page.files();
        page.memory();
    }

    private static void line(String what, double ms, String yardstick, double yardstickMs) {
        System.out.printf("%-58s %11.4f ms   %s: %.4f ms, %.3g times as long%n", what, ms, yardstick, yardstickMs, yardstickMs / ms);
    }

    private void edits() throws Exception {
        line("the whole study, " + study.plans().size() + " plans", wholeMs, "100 million multiplications and additions",
                watch.ms(BenchPage::arithmetic));
        double editMs = watch.ms(() -> StudyRecosting.of(study, before).orElseThrow());
        line("an edited price", editMs, "the whole study", wholeMs);
        line("the same", editMs, "its cash flow as a workbook, by POI", new WorkbookYardstick(study, before).poiMs());
        line("an edited tariff", watch.ms(() -> StudyEvaluation.of(study, drives, new YardMemory(), Progress.NONE)), "the whole study", wholeMs);
    }

    private static double arithmetic() {
        double sum = 0;
        for (int i = 0; i < 100_000_000; i++) {
            sum = sum * 0.999999 + i;
        }
        return sum;
    }

    private void draws() throws Exception {
        double recostMs = watch.ms(() -> StudyRecosting.of(study, before).orElseThrow());
        double sweptMs = watch.ms(this::sweep) / SWEPT;
        line("a set of prices of a sweep, all plans", sweptMs, "an edited price", recostMs);
        System.out.printf("%-58s %11.0f /s   on one thread%n", "so plans evaluated at prices alone", study.plans().size() * MS_PER_S / sweptMs);
        double drawMs = watch.once(() -> sweepOf(DRAWS)) / DRAWS;
        line("a draw of the study's what-if, evaluated", drawMs, "the whole study", wholeMs);
        double depotMs = watch.once(() -> sweepOf(STATE)) + wholeMs;
        System.out.printf("%-58s %11.4f h    %d whole studies a depot: %.1f h%n", STATE + " such depots of " + STATE + " draws each",
                depotMs * STATE / MS_PER_HOUR, STATE, wholeMs * STATE * STATE / MS_PER_HOUR);
    }

    /** Draws in which more than prices varies; a few are evaluated to tell what all of them would take. */
    private void mixed(ChargingPolicy policy, int evaluated) throws Exception {
        MixedDraws mixed = new MixedDraws(StudyFile.load(file), policy);
        mixed.evaluatedMs(evaluated);
        double eachMs = mixed.evaluatedMs(evaluated);
        MixedDraws.Fitted fitted = mixed.fitted(MANY);
        line(MANY + " draws of weather, use, packs, prices, " + policy.getLiteral(), fitted.ms(), "each evaluated, by " + evaluated + " of them",
                MANY * eachMs);
        System.out.printf("%-58s %11.0f ms   %s%n", "time of processors in that", fitted.processorMs(), fitted.words());
    }

    private double sweep() {
        List<PriceField> fields = PriceField.all(study).stream().filter(f -> f.kind() == PriceField.Kind.FUEL_PRICE
                || f.kind() == PriceField.Kind.FUEL_RISE || f.kind() == PriceField.Kind.FLUID_PRICE).toList();
        PriceSweep.Evaluation evaluation = PriceSweep.of(before, fields, new YardMemory()).orElseThrow().evaluation();
        double[] results = new double[PriceSweep.of(before, fields, new YardMemory()).orElseThrow().results()];
        double[][] values = new double[1024][];
        Random random = new Random(1);
        Arrays.setAll(values, d -> fields.stream().mapToDouble(f -> f.in(study) * (0.8 + 0.4 * random.nextDouble())).toArray());
        double sum = 0;
        for (int draw = 0; draw < SWEPT; draw++) {
            evaluation.at(values[draw % values.length], results);
            sum += results[0];
        }
        return sum;
    }

    private Study drawn(int draws) throws Exception {
        Study drawn = StudyFile.load(file);
        drawn.getWhatIf().setDraws(draws);
        drawn.getWhatIf().setErrorWanted(0.0);
        return drawn;
    }

    private Object sweepOf(int draws) throws Exception {
        return new StudySweep(drawn(draws), before, threads()).run(0, block -> false, Progress.NONE);
    }

    private static int threads() {
        return Runtime.getRuntime().availableProcessors();
    }

    private void charging() throws Exception {
        MonthProblem month = new YardMonths(24, false).ofTwoDays();
        List<MonthProblem> year = new YardMonths(24, true).year();
        double libraryMs = watch.ms(() -> LibraryProgram.lowestCost(month));
        line("least-cost charging of a month, 24 buses", watch.ms(() -> LeastCost.of(month)), "as a linear programme in a library", libraryMs);
        line("of a year with cabinets, building, two demand charges", watch.ms(() -> year.stream().map(LeastCost::of).toList()),
                "the library's month, twelve times", 12 * libraryMs);
    }

    private void files() throws Exception {
        byte[] bytes = Files.readAllBytes(file);
        Path copy = Files.createTempFile("bench", ".amberyard");
        Study open = StudyFile.load(file);
        line("a study opened", watch.ms(() -> StudyFile.load(file)), "its XML read into a tree",
                watch.ms(() -> DocumentBuilderFactory.newInstance().newDocumentBuilder().parse(file.toFile())));
        double saveMs = watch.ms(() -> {
            StudyFile.save(open, copy);
            return copy;
        });
        line("a study saved, checked, and on the disk", saveMs, "its bytes written", watch.ms(() -> Files.write(copy, bytes)));
        Files.deleteIfExists(copy.resolveSibling(copy.getFileName() + "~"));
        Files.delete(copy);
    }

    private void memory() throws Exception {
        double heapMib = Stopwatch.heapMib();
        System.out.printf("%-58s %11.1f MiB  the program with its libraries included%n", "memory in use with the example's results", heapMib);
        StudyInput large = new LargeFleet(study, LARGE).of(study.plans().size(), study.years());
        StudyResult[] result = new StudyResult[1];
        double largeMs = watch.once(() -> result[0] = StudyEvaluation.of(large, DutyTable.of(large.duty())));
        System.out.printf("%-58s %11.1f MiB  %d plans%n", large.buses().size() + " buses, memory in use beyond that",
                Stopwatch.heapMib() - heapMib, result[0].plans().size());
        line(large.buses().size() + " buses evaluated", largeMs, LARGE + " times the example", LARGE * wholeMs);
    }
}
