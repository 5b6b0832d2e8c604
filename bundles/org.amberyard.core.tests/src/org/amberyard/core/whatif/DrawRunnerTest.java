package org.amberyard.core.whatif;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.whatif.RunEnd.Reason;
import org.junit.jupiter.api.Test;

class DrawRunnerTest {
    private static final List<Distribution> INPUTS = List.of(new Uniform(1, 3), new Normal(5, 2), new Pert(0, 1, 4));
    private static final Draws DRAWS = new Draws(SobolPoints.scrambled(7, 3), INPUTS);

    private static void costs(int draw, double[] results) {
        double[] x = DRAWS.at(draw);
        results[0] = 100 + 3 * x[0] + 2 * x[1] - x[2];
        results[1] = x[0] * x[1];
    }

    private static double[] run(RunSettings settings) {
        KeptDraws kept = new KeptDraws();
        assertEquals(new RunEnd(settings.draws(), Reason.COMPLETE),
                DrawRunner.run(settings, check -> DrawRunnerTest::costs, kept, Progress.NONE));
        return kept.column(1);
    }

    @Property(tries = 10)
    void anyNumberOfThreadsGivesTheSameBits(@ForAll @IntRange(min = 2, max = 8) int threads,
            @ForAll @IntRange(min = 1, max = 400) int block) {
        double[] alone = run(new RunSettings(0, 1000, 1000, 2, 1));
        assertArrayEquals(alone, run(new RunSettings(0, 1000, block, 2, threads)), 0);
        assertEquals(1000, alone.length);
    }

    /** Mean of a linear function: the function of the means. */
    @Test
    void meanOfALinearFunction() {
        KeptDraws kept = new KeptDraws();
        DrawRunner.run(RunSettings.of(4096, 256, 2), check -> DrawRunnerTest::costs, kept, Progress.NONE);
        double truth = 100 + 3 * INPUTS.get(0).mean() + 2 * INPUTS.get(1).mean() - INPUTS.get(2).mean();
        assertEquals(truth, Moments.of(kept.column(0)).mean(), 0.005);
    }

    private static Progress cancelledAfter(double share) {
        return at -> {
            if (at > share) {
                throw new CancellationException();
            }
        };
    }

    @Test
    void aCancelledRunKeepsWhatItHasAndGoesOn() {
        RunSettings settings = new RunSettings(0, 2000, 50, 2, 3);
        KeptDraws kept = new KeptDraws();
        RunEnd end = DrawRunner.run(settings, check -> DrawRunnerTest::costs, kept, cancelledAfter(0.3));
        assertEquals(Reason.CANCELLED, end.reason());
        assertEquals(kept.draws(), end.draws());
        assertTrue(end.draws() > 0 && end.draws() < 2000);
        assertEquals(Reason.COMPLETE, DrawRunner.run(settings.from(end.draws()), check -> DrawRunnerTest::costs, kept,
                Progress.NONE).reason());
        assertArrayEquals(run(settings), kept.column(1), 0);
    }

    /** What a draw does in parallel by itself does not go to threads beyond those of the run. */
    @Test
    void noOtherThreadIsBusy() throws Exception {
        Set<String> names = ConcurrentHashMap.newKeySet();
        DrawRunner.run(new RunSettings(0, 60, 5, 2, 2), check -> (draw, results) -> results[0] = IntStream.range(0, 2000).parallel()
                .peek(i -> names.add(Thread.currentThread().getName())).mapToDouble(i -> Math.sqrt(i + draw)).sum(), block -> false, Progress.NONE);
        assertTrue(names.size() <= 2 && names.stream().allMatch(n -> n.startsWith("draws-")), names.toString());
        names.clear();
        assertEquals(1999 * 1000, OwnThreads.run(1, () -> IntStream.range(0, 2000).parallel()
                .peek(i -> names.add(Thread.currentThread().getName())).sum()));
        assertEquals(Set.of("work-1"), names);
        assertThrows(IOException.class, () -> OwnThreads.run(1, () -> {
            throw new IOException("as it was thrown");
        }));
    }

    /** A draw that takes long asks whether it is still wanted. */
    @Test
    void aLongDrawIsStopped() {
        RunEnd end = DrawRunner.run(new RunSettings(0, 10, 1, 1, 2), check -> (draw, results) -> {
            while (true) {
                check.run();
                Thread.onSpinWait();
            }
        }, new KeptDraws(), at -> {
            throw new CancellationException();
        });
        assertEquals(new RunEnd(0, Reason.CANCELLED), end);
    }

    @Test
    void anInterruptedRunIsCancelled() {
        Thread.currentThread().interrupt();
        RunEnd end = DrawRunner.run(new RunSettings(0, 10, 1, 2, 2), check -> DrawRunnerTest::costs, new KeptDraws(),
                Progress.NONE);
        assertTrue(Thread.interrupted());
        assertEquals(Reason.CANCELLED, end.reason());
    }

    @Property(tries = 5)
    void theRunStopsAtTheSameDrawOnAnyThreads(@ForAll @IntRange(min = 1, max = 6) int threads) {
        KeptDraws kept = new KeptDraws();
        StandardErrorRule rule = new StandardErrorRule(block -> block.columns()[0], 0.15, 200, 1);
        RunEnd end = DrawRunner.run(new RunSettings(0, 100_000, 100, 2, threads), check -> DrawRunnerTest::costs,
                BlockSink.of(kept, rule), Progress.NONE);
        assertEquals(Reason.ENOUGH, end.reason());
        assertEquals(kept.draws(), end.draws());
        assertTrue(rule.standardError() <= 0.15);
        assertTrue(Moments.of(kept.column(0), 0, end.draws() / 2).standardError() > 0.15);
        assertEquals(Moments.of(kept.column(0)).mean(), rule.mean(), 1e-9);
    }

    /** A rule that is shown the blocks of a cancelled run stops where it would have stopped without the break. */
    @Test
    void aRuleGoesOn() {
        RunSettings settings = new RunSettings(0, 100_000, 100, 2, 2);
        RunEnd whole = DrawRunner.run(settings, check -> DrawRunnerTest::costs, new StandardErrorRule(block -> block.columns()[0], 0.15, 200, 1),
                Progress.NONE);
        KeptDraws kept = new KeptDraws();
        RunEnd first = DrawRunner.run(settings, check -> DrawRunnerTest::costs, kept, cancelledAfter(0.002));
        assertTrue(first.draws() < whole.draws());
        StandardErrorRule rule = new StandardErrorRule(block -> block.columns()[0], 0.15, 200, 1);
        KeptDraws.of(new double[][] {kept.column(0), kept.column(1)}, 100).replay(rule);
        assertEquals(whole, DrawRunner.run(settings.from(first.draws()), check -> DrawRunnerTest::costs, rule,
                Progress.NONE));
    }

    @Test
    void theFirstDrawThatFailsIsNamed() {
        KeptDraws kept = new KeptDraws();
        DrawFailedException failed = assertThrows(DrawFailedException.class, () -> DrawRunner.run(
                new RunSettings(0, 100, 10, 1, 4), check -> (draw, results) -> {
                    if (draw >= 37) {
                        throw new IllegalArgumentException("Price is -1 but must be 0 or more");
                    }
                }, kept, Progress.NONE));
        assertEquals("Draw 37 cannot be evaluated: Price is -1 but must be 0 or more", failed.getMessage());
        assertEquals(37, failed.draw());
        assertEquals(30, kept.draws());
    }

    /** Blocks that wait for a slow sink are few. */
    @Test
    void memoryDoesNotGrowWithTheRun() {
        AtomicInteger evaluated = new AtomicInteger();
        List<Integer> ahead = new ArrayList<>();
        DrawRunner.run(new RunSettings(0, 2000, 10, 1, 2), check -> (draw, results) -> evaluated.incrementAndGet(),
                block -> {
                    ahead.add(evaluated.get() - block.endDraw());
                    return false;
                }, Progress.NONE);
        assertEquals(200, ahead.size());
        assertTrue(ahead.stream().allMatch(a -> a <= 60), ahead.toString());
    }

    @Test
    void settingsAreChecked() {
        assertEquals("First draw is 5 but must be the first of a block of 10",
                assertThrows(IllegalArgumentException.class, () -> new RunSettings(5, 100, 10, 1, 1)).getMessage());
        assertEquals(new RunEnd(95, Reason.COMPLETE), DrawRunner.run(new RunSettings(95, 95, 10, 1, 1),
                check -> DrawRunnerTest::costs, new KeptDraws(), Progress.NONE));
        assertThrows(IllegalArgumentException.class, () -> new KeptDraws().take(new Block(10, new double[1][5])));
    }
}
