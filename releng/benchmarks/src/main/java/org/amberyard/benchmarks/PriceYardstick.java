package org.amberyard.benchmarks;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.amberyard.core.plan.FlatPrices;
import org.amberyard.core.plan.PriceField;
import org.amberyard.core.plan.PriceSweep;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.io.StudyFile;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;

/**
 * A sweep over prices of running the example's fleet against the same arithmetic in C ({@code gcc -O3}), one thread each, and a
 * price edit and the sweep against the same cash flow as a workbook that other programs recalculate, all in one run. Arguments: the
 * study, and the C source.
 */
public final class PriceYardstick {
    private static final int DRAWS = 1024;
    private static final int TIMES = 2000;
    private static final int ROUNDS = 5;
    private static final double NANOS_PER_MS = 1e6;

    private PriceYardstick() {
    }

    /** Prints the time per draw of both, their ratio, and how far apart their present costs are; then the workbook's times. */
    public static void main(String[] args) throws Exception {
        StudyResult base = new StudyEvaluator().evaluate(StudyCompiler.compile(StudyFile.load(Path.of(args[0]))));
        List<PriceField> fields = PriceField.all(base.input()).stream().filter(f -> f.kind() == PriceField.Kind.FUEL_PRICE
                || f.kind() == PriceField.Kind.FUEL_RISE || f.kind() == PriceField.Kind.FLUID_PRICE).toList();
        Random random = new Random(1);
        double[][] values = new double[DRAWS][];
        Arrays.setAll(values, d -> fields.stream().mapToDouble(f -> f.in(base.input()) * (0.8 + 0.4 * random.nextDouble())).toArray());
        double[] java = java(PriceSweep.of(base, fields, new YardMemory()).orElseThrow(), values);
        double[] c = c(new FlatPrices(base, fields).text(), values, Path.of(args[1]));
        System.out.printf("Java %.0f ns, C %.0f ns a draw of %d plans; ratio %.2f; present costs vary alike to %.1e%n", java[0], c[0],
                base.plans().size(), java[0] / c[0], Math.abs(java[1] / c[1] - 1));
        workbook(new WorkbookYardstick(base.input(), base), java[0] / NANOS_PER_MS);
    }

    private static void workbook(WorkbookYardstick workbook, double sweepMs) throws Exception {
        double editMs = workbook.editMs();
        double poiMs = workbook.poiMs();
        System.out.printf("A price edit %.3f ms; the cash flow as a workbook of %d formulas, one rate edited:%n", editMs,
                workbook.formulas());
        compare("POI", poiMs, editMs, sweepMs);
        workbook.officeMs().ifPresentOrElse(ms -> compare("office program, start taken off", ms, editMs, sweepMs),
                () -> System.out.println("  no office program (soffice) here"));
    }

    private static void compare(String program, double ms, double editMs, double sweepMs) {
        System.out.printf("  %s %.1f ms: %.0f price edits, %.0f draws of the sweep%n", program, ms, ms / editMs, ms / sweepMs);
    }

    /** Nanoseconds, and the difference of the first present cost from draw to draw, summed. */
    private static double[] java(PriceSweep sweep, double[][] values) {
        PriceSweep.Evaluation evaluation = sweep.evaluation();
        double[] results = new double[sweep.results()];
        evaluation.at(new double[values[0].length], results);
        double free = results[0];
        double best = Double.POSITIVE_INFINITY;
        double total = 0;
        for (int round = 0; round < ROUNDS; round++) {
            total = 0;
            long start = System.nanoTime();
            for (int draw = 0; draw < TIMES * DRAWS; draw++) {
                evaluation.at(values[draw % DRAWS], results);
                total += results[0] - free;
            }
            best = Math.min(best, (System.nanoTime() - start) / (double) (TIMES * DRAWS));
        }
        return new double[] {best, total};
    }

    private static double[] c(String data, double[][] values, Path source) throws IOException, InterruptedException {
        Path folder = Files.createTempDirectory("yardstick");
        Path program = folder.resolve("prices");
        Path numbers = Files.writeString(folder.resolve("data.txt"), data);
        Path drawn = Files.writeString(folder.resolve("values.txt"), Arrays.stream(values).map(row -> Arrays.stream(row)
                .mapToObj(Double::toString).collect(Collectors.joining(" "))).collect(Collectors.joining("\n")));
        run(folder, drawn, "gcc", "-O3", "-o", program.toString(), source.toString());
        double[] best = {Double.POSITIVE_INFINITY, 0};
        for (int round = 0; round < ROUNDS; round++) {
            String[] words = run(folder, drawn, program.toString(), numbers.toString(), Integer.toString(TIMES * DRAWS)).trim().split(" ");
            best = new double[] {Math.min(best[0], Double.parseDouble(words[0])), Double.parseDouble(words[1])};
        }
        return best;
    }

    private static String run(Path folder, Path in, String... command) throws IOException, InterruptedException {
        Process process = new ProcessBuilder(command).directory(folder.toFile()).redirectInput(in.toFile())
                .redirectError(ProcessBuilder.Redirect.INHERIT).start();
        String out = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
        if (process.waitFor() != 0) {
            throw new IOException(command[0] + " failed");
        }
        return out;
    }
}
