package org.amberyard.core.battery;

/** The least charge from which a pack reaches a state of charge at a power, by the time that is left for it. */
public final class LeastCharge {
    private final TaperCurve curve;
    private final double endShare;
    private final double constantKw;
    private final double taperShare;
    private final double taperHours;

    /**
     * @param endShare state of charge at the end, 0 to 1
     * @param kw power that can be brought into the battery, kW
     */
    LeastCharge(TaperCurve curve, double endShare, double kw) {
        this.curve = curve;
        this.endShare = endShare;
        this.constantKw = Math.min(kw, curve.fullKw());
        this.taperShare = constantKw > 0 ? curve.taperBeginsAt(constantKw) : endShare;
        this.taperHours = endShare > taperShare ? curve.taperHours(taperShare, endShare) : 0;
    }

    /**
     * The least charge; below nothing when the time is long.
     *
     * @param hours time that is left, h
     */
    public double share(double hours) {
        if (!(constantKw > 0)) {
            return endShare;
        }
        if (hours >= taperHours) {
            return Math.min(endShare, taperShare) - constantKw * (hours - taperHours) / curve.usableKwh();
        }
        double endKw = curve.acceptanceKw(endShare);
        double startKw = endKw * Math.exp(curve.kwPerShare() * hours / curve.usableKwh());
        return endShare - (startKw - endKw) / curve.kwPerShare();
    }
}
