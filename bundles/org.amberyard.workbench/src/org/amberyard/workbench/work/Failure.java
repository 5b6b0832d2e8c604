package org.amberyard.workbench.work;

/** What a user is told of work that failed. */
public final class Failure {
    private Failure() {
    }

    /** The message of a fault; its kind where it has none. */
    public static String words(Throwable fault) {
        return fault.getMessage() == null ? fault.getClass().getSimpleName() : fault.getMessage();
    }
}
