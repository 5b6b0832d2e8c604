package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

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

    /** True when charging can be moved within the time at the plug, so that time at a shared plug can be split. */
    public boolean managed() {
        return policy == ChargePolicy.SPREAD || policy.priced();
    }

    /** How long a bus may charge between two moments, minutes. */
    public double minutes(double fromMin, double toMin) {
        return times(fromMin, toMin).minutes();
    }

    /**
     * When a bus may charge between two moments: always, or at the set time of each day where that falls between
     * them; so a bus is
     * charged at once between runs, and waits through the days of a weekend.
     */
    ChargeTimes times(double fromMin, double toMin) {
        ChargeTimes always = new ChargeTimes(List.of(new ChargeTimes.Span(fromMin, toMin)));
        ChargeTimes set = policy == ChargePolicy.SET_TIME ? setTimes(fromMin, toMin) : always;
        return set.spans().isEmpty() ? always : set;
    }

    private ChargeTimes setTimes(double fromMin, double toMin) {
        if (endMin == setMin) {
            double start = setMin + Math.ceil((fromMin - setMin) / DAY_MIN) * DAY_MIN;
            return new ChargeTimes(List.of(new ChargeTimes.Span(start, Double.POSITIVE_INFINITY))).between(fromMin,
                    toMin);
        }
        double lengthMin = (endMin - setMin + DAY_MIN) % DAY_MIN;
        double first = setMin + Math.floor((fromMin - setMin) / DAY_MIN) * DAY_MIN;
        List<ChargeTimes.Span> days = new ArrayList<>();
        for (double start = first; start < toMin; start += DAY_MIN) {
            days.add(new ChargeTimes.Span(start, start + lengthMin));
        }
        return new ChargeTimes(days).between(fromMin, toMin);
    }
}
