package org.amberyard.batch;

/** What a run without a window returns to its caller. */
public final class ExitCode {
    /** Done. */
    public static final int DONE = 0;
    /** A fault within the program. */
    public static final int FAULT = 1;
    /** The command or the study has to be put right. */
    public static final int WRONG_USE = 2;
    /** Done, and something differs from what was frozen; the start script keeps 3 for a missing Java. */
    public static final int DIFFERS = 4;

    private ExitCode() {
    }
}
