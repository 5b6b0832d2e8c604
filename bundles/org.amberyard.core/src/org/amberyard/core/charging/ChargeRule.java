package org.amberyard.core.charging;

/**
 * A policy with what it needs to know.
 *
 * @param policy the policy
 * @param setMin minutes after midnight at which charging begins under {@link ChargePolicy#SET_TIME}; without effect under others
 * @param endMin minutes after midnight at which it ends then; no end when it is that of the begin
 */
public record ChargeRule(ChargePolicy policy, double setMin, double endMin) {
    private static final double DAY_MIN = 1440;

    /** A policy without a set time. */
    public static ChargeRule of(ChargePolicy policy) {
        if (policy == ChargePolicy.SET_TIME) {
            throw new IllegalArgumentException("Charging at a set time needs the time");
        }
        return new ChargeRule(policy, 0, 0);
    }

    /** Charging from a set time, minutes after midnight, until each bus is full or leaves. */
    public static ChargeRule setTime(double setMin) {
        return new ChargeRule(ChargePolicy.SET_TIME, setMin, setMin);
    }

    /** The same times under another policy. */
    public ChargeRule with(ChargePolicy other) {
        return new ChargeRule(other, setMin, endMin);
    }

    /** Moment until which a bus that leaves at another may charge: the last end of the set time before that. */
    public double lastMin(double fromMin, double toMin) {
        double last = endMin + Math.floor((toMin - endMin) / DAY_MIN) * DAY_MIN;
        boolean ends = policy == ChargePolicy.SET_TIME && endMin != setMin && last > startMin(fromMin, toMin);
        return ends ? last : toMin;
    }

    /** True when charging can be moved within the time at the plug, so that time at a shared plug can be split. */
    public boolean managed() {
        return policy == ChargePolicy.SPREAD || policy.priced();
    }

    /**
     * Moment from which a bus may charge: its arrival, or the set time when that falls in its stay; so it is charged at once
     * between runs.
     */
    public double startMin(PlugIn stay) {
        return startMin(stay.fromMin(), stay.toMin());
    }

    double startMin(double fromMin, double toMin) {
        if (policy != ChargePolicy.SET_TIME) {
            return fromMin;
        }
        double start = setMin + Math.ceil((fromMin - setMin) / DAY_MIN) * DAY_MIN;
        return start < toMin ? start : fromMin;
    }
}
