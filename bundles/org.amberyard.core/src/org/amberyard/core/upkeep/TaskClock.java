package org.amberyard.core.upkeep;

import java.util.List;

/**
 * How far a bus is on its way to the next time that a task is due.
 *
 * @param since what has passed since the task was last done
 */
public record TaskClock(Meters since) {
    /** Two events closer than this part of a stretch would be one counted twice by rounding. */
    private static final double ROUNDING = 1e-12;
    private static final double CLEARLY_MORE = 1 + 1e-6;

    /** A new bus. */
    public static final TaskClock NEW = new TaskClock(Meters.ZERO);

    /**
     * A stretch of driving.
     *
     * @param times how often the task fell due on it
     * @param after the clock at the end of the stretch
     */
    public record Walk(int times, TaskClock after) {
    }

    /** The clock of a bus that has lived evenly, so that the task was done whenever it fell due. */
    public static TaskClock ofLife(TaskTrigger trigger, Meters life) {
        double events = trigger.perStretch(life);
        double sinceShare = events > 0 ? (events - Math.floor(events)) / events : 1;
        return new TaskClock(life.times(sinceShare));
    }

    /** True when the task does not fall due while so much is driven, by far more than rounding, in whatever parts it is driven. */
    boolean restsFor(TaskTrigger trigger, Meters driven) {
        return trigger.dueAfter(since, driven) > CLEARLY_MORE;
    }

    /** The clock after stretches on which the task does not fall due. */
    TaskClock past(List<Meters> stretches) {
        Meters passed = since;
        for (Meters stretch : stretches) {
            passed = passed.plus(stretch);
        }
        return new TaskClock(passed);
    }

    /** Walks a stretch that is driven evenly. Two stretches in a row give the events of both as one would. */
    public Walk walk(TaskTrigger trigger, Meters stretch) {
        double due = trigger.dueAfter(since, stretch);
        if (due > 1 + ROUNDING) {
            return new Walk(0, new TaskClock(since.plus(stretch)));
        }
        double again = Math.max(ROUNDING, trigger.dueAfter(Meters.ZERO, stretch));
        int times = 0;
        double done = 0;
        while (done + due <= 1 + ROUNDING) {
            done = Math.min(1, done + due);
            due = again;
            times++;
        }
        return new Walk(times, new TaskClock(stretch.times(1 - done)));
    }
}
