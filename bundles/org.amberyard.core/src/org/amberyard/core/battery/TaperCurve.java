package org.amberyard.core.battery;

/**
 * What a pack takes in at one temperature, and charging along it at a constant power until the acceptance falls below that
 * power; solved in closed form, because above the start of the taper the acceptance falls evenly with the state of charge.
 *
 * @param fullKw power taken below the taper, kW
 * @param leastKw power taken by the full pack, kW
 * @param taperFromShare state of charge from which the power tapers
 * @param usableKwh energy between empty and full, kWh
 */
public record TaperCurve(double fullKw, double leastKw, double taperFromShare, double usableKwh) {
    /** Newton steps; the square of the error falls with each, and six reach the last digit. */
    private static final int MOST_STEPS = 40;

    /** The curve of a pack of a health at a temperature, °C. */
    public static TaperCurve of(BatterySpec battery, double health, double packC) {
        return new TaperCurve(battery.acceptanceKw(packC, 0), battery.acceptanceKw(packC, 1),
                battery.acceptance().taperFromShare(), battery.usableKwh(health));
    }

    /** Power that the pack takes at a state of charge, kW. */
    public double acceptanceKw(double chargeShare) {
        return Math.min(fullKw, leastKw + kwPerShare() * Math.max(0, 1 - chargeShare));
    }

    /** Fall of the power with the state of charge in the taper, kW. */
    double kwPerShare() {
        return fullKw > leastKw ? (fullKw - leastKw) / (1 - taperFromShare) : 0;
    }

    /** State of charge at which the acceptance falls to a power; full where it never does. */
    double taperBeginsAt(double kw) {
        return kw <= leastKw ? 1 : 1 - (kw - leastKw) / kwPerShare();
    }

    /**
     * State of charge after a time of charging, 0 to 1.
     *
     * @param startShare state of charge at the start
     * @param kw power that can be brought into the battery, kW
     * @param hours time, h
     */
    public double endShare(double startShare, double kw, double hours) {
        double constantKw = Math.min(kw, fullKw);
        if (!(constantKw > 0) || startShare >= 1) {
            return startShare;
        }
        double taperShare = taperBeginsAt(constantKw);
        double constantHours = Math.max(0, taperShare - startShare) * usableKwh / constantKw;
        if (constantHours >= hours) {
            return startShare + constantKw * hours / usableKwh;
        }
        return tapered(Math.max(startShare, taperShare), hours - constantHours);
    }

    private double tapered(double startShare, double hours) {
        if (!(startShare < 1)) {
            return 1;
        }
        double startKw = acceptanceKw(startShare);
        double slope = kwPerShare();
        double endKw = startKw * Math.exp(-slope * hours / usableKwh);
        return Math.min(1, startShare + (startKw - endKw) / slope);
    }

    /**
     * Hours from one state of charge to a higher one, not above full; infinite where the pack takes nothing.
     *
     * @param startShare state of charge at the start
     * @param endShare state of charge at the end
     * @param kw power that can be brought into the battery, kW
     */
    public double hours(double startShare, double endShare, double kw) {
        double constantKw = Math.min(kw, fullKw);
        if (endShare <= startShare) {
            return 0;
        }
        if (!(constantKw > 0)) {
            return Double.POSITIVE_INFINITY;
        }
        double taperShare = Math.max(startShare, taperBeginsAt(constantKw));
        double constantHours = (Math.min(endShare, taperShare) - startShare) * usableKwh / constantKw;
        return endShare <= taperShare ? constantHours : constantHours + taperHours(taperShare, endShare);
    }

    /** Hours in the taper from one state of charge to a higher one. */
    double taperHours(double startShare, double endShare) {
        return usableKwh / kwPerShare() * Math.log(acceptanceKw(startShare) / acceptanceKw(endShare));
    }

    /**
     * Lowest state of charge from which a higher one is reached in a time; below nothing when the time is long.
     *
     * @param endShare state of charge at the end
     * @param kw power that can be brought into the battery, kW
     * @param hours time, h
     */
    public double startShare(double endShare, double kw, double hours) {
        return leastCharge(endShare, kw).share(hours);
    }

    /**
     * The least charge that suffices for a state of charge, to be asked for many times.
     *
     * @param endShare state of charge at the end
     * @param kw power that can be brought into the battery, kW
     */
    public LeastCharge leastCharge(double endShare, double kw) {
        return new LeastCharge(this, endShare, kw);
    }

    /**
     * Least constant power that, with the taper after it, reaches a state of charge in a time; the limit where even that does
     * not.
     *
     * @param startShare state of charge at the start
     * @param endShare state of charge at the end, not above full
     * @param hours time, h
     * @param limitKw largest power into the battery, kW
     */
    public double evenKw(double startShare, double endShare, double hours, double limitKw) {
        double evenKw = Math.max(0, endShare - startShare) * usableKwh / hours;
        if (evenKw <= Math.min(limitKw, acceptanceKw(endShare))) {
            return evenKw;
        }
        return hours(startShare, endShare, limitKw) >= hours ? limitKw : tapering(startShare, endShare, hours, evenKw);
    }

    /** Root of a falling convex function, so that Newton's steps from below never pass it. */
    private double tapering(double startShare, double endShare, double hours, double fromKw) {
        double slope = kwPerShare();
        double reachKw = slope * (1 - startShare) + leastKw;
        double right = slope * hours / usableKwh + 1 + Math.log(acceptanceKw(endShare));
        double kw = Math.max(fromKw, acceptanceKw(endShare));
        for (int step = 0; step < MOST_STEPS; step++) {
            double over = reachKw / kw + Math.log(kw) - right;
            double next = kw + over * kw * kw / (reachKw - kw);
            if (!(next > kw)) {
                break;
            }
            kw = next;
        }
        return Math.min(kw, fullKw);
    }
}
