package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/**
 * A policy with what it needs to know.
 *
 * @param policy the policy
 * @param setMin minutes after midnight at which charging begins under {@link ChargePolicy#SET_TIME}; without effect under others
 * @param endMin minutes after midnight at which it ends then; no end when it is that of the begin
 * @param capKw power at the meter that all charging together may draw under {@link ChargePolicy#CAPPED}, kW; infinite where no cap
 *            is given
 */
public record ChargeRule(ChargePolicy policy, double setMin, double endMin, double capKw) {
    private static final double DAY_MIN = 1440;

    /**
     * @throws IllegalArgumentException when the cap is not above zero
     */
    public ChargeRule {
        if (!(capKw > 0)) {
            throw new IllegalArgumentException("cap on charging is " + capKw + " kW but must be above 0");
        }
    }

    /** A policy without a cap. */
    public ChargeRule(ChargePolicy policy, double setMin, double endMin) {
        this(policy, setMin, endMin, Double.POSITIVE_INFINITY);
    }

    /** Charging under a cap, kW at the meter. */
    public static ChargeRule capped(double capKw) {
        return new ChargeRule(ChargePolicy.CAPPED, 0, 0, capKw);
    }

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

    /** The same times and cap under another policy. */
    public ChargeRule with(ChargePolicy other) {
        return new ChargeRule(other, setMin, endMin, capKw);
    }

    /** Policies that can be set beside each other: under a cap only where one is given. */
    public List<ChargePolicy> comparable() {
        return Stream.of(ChargePolicy.values()).filter(p -> p != ChargePolicy.CAPPED || Double.isFinite(capKw)).toList();
    }

    /** Policies for which ports are looked for: those of all yards, and charging under a cap where that is the policy. */
    public List<ChargePolicy> planned() {
        return Stream.of(ChargePolicy.values()).filter(p -> ChargePolicy.ofYards().contains(p) || p == policy && p == ChargePolicy.CAPPED).toList();
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
