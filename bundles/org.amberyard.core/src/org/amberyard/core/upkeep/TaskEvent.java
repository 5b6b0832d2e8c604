package org.amberyard.core.upkeep;

/**
 * A task in a month.
 *
 * @param task the task
 * @param month month, 0 for January
 * @param ageYears age of the bus
 * @param times how often: whole numbers for a task that falls due, an expected number for failures
 * @param failure true for failures, false for a task that falls due
 */
public record TaskEvent(MaintenanceTask task, int month, double ageYears, double times, boolean failure) {

    /** Labour, h. */
    public double labourHours() {
        return times * task.ageFactor(ageYears) * task.labourHours();
    }

    /** Parts, base-date money. */
    public double partsCost() {
        return times * task.ageFactor(ageYears) * task.partsCost();
    }

    /** Parts and labour, base-date money. */
    public double cost(double labourRatePerHour) {
        return times * task.cost(ageYears, labourRatePerHour);
    }
}
