package org.amberyard.model.io;

/**
 * The libraries that read and write documents report to logging interfaces without anything behind them, which complain of that on the
 * error stream. Unless somebody has chosen otherwise, they are told to keep to themselves.
 */
public final class QuietLogging {
    private static final String FACTORY = "log4j2.loggerContextFactory";
    private static final String LEVEL = "org.apache.logging.log4j.simplelog.level";

    private QuietLogging() {
    }

    /** To be called before a library is used. */
    public static void set() {
        if (System.getProperty(FACTORY) == null) {
            System.setProperty(FACTORY, "org.apache.logging.log4j.simple.SimpleLoggerContextFactory");
            System.setProperty(LEVEL, "OFF");
        }
    }
}
