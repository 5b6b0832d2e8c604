package org.amberyard.core.upkeep;

/**
 * How far a bus is on its way to the next time that a task is due.
 *
 * @param since what has passed since the task was last done
 */
public record TaskClock(Meters since) {
    /** Two events closer than this part of a stretch would be one counted twice by rounding. */
    private static final double ROUNDING = 1e-12;

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

    /** True when the task does not fall due on a stretch. */
    boolean quiet(TaskTrigger trigger, Meters stretch) {
        return trigger.dueAfter(since, stretch) > 1 + ROUNDING;
    }

    /** After a stretch on which the task does not fall due. */
    TaskClock later(Meters stretch) {
        return new TaskClock(since.plus(stretch));
    }

    /** Walks a stretch that is driven evenly. Two stretches in a row give the events of both as one would. */
    public Walk walk(TaskTrigger trigger, Meters stretch) {
        if (quiet(trigger, stretch)) {
            return new Walk(0, later(stretch));
        }
        int times = 0;
        double again = Math.max(ROUNDING, trigger.dueAfter(Meters.ZERO, stretch));
        double done = 0;
        for (double due = trigger.dueAfter(since, stretch); done + due <= 1 + ROUNDING; due = again) {
            done = Math.min(1, done + due);
            times++;
        }
        return new Walk(times, new TaskClock(stretch.times(1 - done)));
    }
}
