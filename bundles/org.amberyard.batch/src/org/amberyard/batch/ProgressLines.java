package org.amberyard.batch;

import java.io.PrintStream;
import org.amberyard.core.progress.Progress;

/** Tells a long piece of work in lines, one for every tenth of it; of work that may take hours with the time left. */
final class ProgressLines implements Progress {
    private static final int STEP_PERCENT = 10;
    private static final int ALL_PERCENT = 100;
    private static final double NANOS_PER_S = 1e9;
    private static final double MOMENT_S = 5;
    private static final double SILENT_S = 10;
    private static final double MINUTE_S = 60;

    private final PrintStream out;
    private final String work;
    private final boolean timed;
    private final double silentS;
    private final long startedNanos = System.nanoTime();
    private int next = STEP_PERCENT;

    /**
     * @param out where the lines go
     * @param work what is done, with which each line begins
     */
    ProgressLines(PrintStream out, String work) {
        this(out, work, false, 0);
    }

    private ProgressLines(PrintStream out, String work, boolean timed, double silentS) {
        this.out = out;
        this.work = work;
        this.timed = timed;
        this.silentS = silentS;
    }

    /** Lines that tell the time left too, where that is more than a moment. */
    static ProgressLines timed(PrintStream out, String work) {
        return new ProgressLines(out, work, true, 0);
    }

    /** Lines that tell the time left too, of work that is done in a moment as a rule and says nothing then. */
    static ProgressLines afterAWhile(PrintStream out, String work) {
        return new ProgressLines(out, work, true, SILENT_S);
    }

    @Override
    public synchronized void at(double share) {
        int percent = (int) Math.floor(share * ALL_PERCENT);
        if (percent >= next && goneS() >= silentS) {
            int told = percent / STEP_PERCENT * STEP_PERCENT;
            out.println(work + ": " + told + " %" + left(share));
            next = told + STEP_PERCENT;
        }
    }

    private double goneS() {
        return (System.nanoTime() - startedNanos) / NANOS_PER_S;
    }

    private String left(double share) {
        double seconds = goneS() * (1 - share) / share;
        if (!timed || seconds < MOMENT_S) {
            return "";
        }
        return seconds < 2 * MINUTE_S ? ", about " + Math.round(seconds) + " s left" : ", about " + Math.round(seconds / MINUTE_S) + " min left";
    }
}
