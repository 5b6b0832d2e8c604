package org.amberyard.core.upkeep;

import org.amberyard.core.math.Checks;

/**
 * When a task falls due again after it was done: at the first of its intervals. An interval that does not count is infinite;
 * a task whose intervals are all infinite never falls due by itself.
 *
 * @param everyKm distance, km
 * @param everyMonths time, months
 * @param everyHours time in service, h
 * @param linings brake linings whose end makes it due
 */
public record TaskTrigger(double everyKm, double everyMonths, double everyHours, BrakeWear linings) {

    /** Falls due at no time. */
    public static final TaskTrigger NEVER = new TaskTrigger(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY,
            Double.POSITIVE_INFINITY, BrakeWear.NONE);

    /** @throws IllegalArgumentException when an interval is not above zero */
    public TaskTrigger {
        positive("Task distance", everyKm);
        positive("Task months", everyMonths);
        positive("Task hours", everyHours);
    }

    private static void positive(String quantity, double interval) {
        if (interval != Double.POSITIVE_INFINITY) {
            Checks.positive(quantity, interval);
        }
    }

    /** Part of a stretch, driven evenly, after which the task is due when {@code since} has passed; infinite for never. */
    double dueAfter(Meters since, Meters stretch) {
        double time = Math.min(part(everyKm, since.km(), stretch.km()), part(everyMonths, since.months(), stretch.months()));
        return Math.min(time, Math.min(part(everyHours, since.hours(), stretch.hours()),
                part(1, linings.sets(since.brakeKwh()), linings.sets(stretch.brakeKwh()))));
    }

    private static double part(double interval, double since, double stretch) {
        return stretch > 0 && interval < Double.POSITIVE_INFINITY ? Math.max(0, (interval - since) / stretch) : Double.POSITIVE_INFINITY;
    }

    /** How often the task falls due in a stretch that is driven again and again; events per stretch. */
    public double perStretch(Meters stretch) {
        return Math.max(Math.max(stretch.km() / everyKm, stretch.months() / everyMonths),
                Math.max(stretch.hours() / everyHours, linings.sets(stretch.brakeKwh())));
    }
}
