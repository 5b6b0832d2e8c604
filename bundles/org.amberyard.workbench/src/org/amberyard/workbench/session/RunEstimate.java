package org.amberyard.workbench.session;

/**
 * How long a what-if run takes, about, by the time of its first draws.
 *
 * @param evaluations whole evaluations that it takes; 0 where prices alone are uncertain, which takes moments
 * @param seconds time that they take on this machine, s
 * @param fewerDraws draws with which it would take less; as many as the study has where it takes no less with fewer
 * @param fewerSeconds time that it would take then, s
 */
public record RunEstimate(int evaluations, double seconds, int fewerDraws, double fewerSeconds) {
    /** Time beyond which people are asked before a run begins, s. */
    public static final double LONG_S = 300;

    /** True for a run before which people are asked. */
    public boolean isLong() {
        return seconds > LONG_S;
    }
}
