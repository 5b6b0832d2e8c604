package org.amberyard.batch;

import java.io.PrintStream;
import org.amberyard.core.progress.Progress;

/** Tells a long piece of work in lines, one for every tenth of it. */
final class ProgressLines implements Progress {
    private static final int STEP_PERCENT = 10;
    private static final int ALL_PERCENT = 100;

    private final PrintStream out;
    private final String work;
    private int next = STEP_PERCENT;

    /**
     * @param out where the lines go
     * @param work what is done, with which each line begins
     */
    ProgressLines(PrintStream out, String work) {
        this.out = out;
        this.work = work;
    }

    @Override
    public synchronized void at(double share) {
        int percent = (int) Math.floor(share * ALL_PERCENT);
        if (percent >= next) {
            int told = percent / STEP_PERCENT * STEP_PERCENT;
            out.println(work + ": " + told + " %");
            next = told + STEP_PERCENT;
        }
    }
}
