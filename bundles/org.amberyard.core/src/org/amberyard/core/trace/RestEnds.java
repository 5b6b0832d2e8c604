package org.amberyard.core.trace;

/**
 * Makes a drive start and end at rest, as the sums of work over repeated drives want it, by a ramp where it does not.
 *
 * @param speedMps speeds at every second, with the ramps
 * @param startRampS time added before the first second, s
 * @param endRampS time added after the last, s
 */
record RestEnds(double[] speedMps, int startRampS, int endRampS) {
    /** How briskly the ramps accelerate and brake, m/s²; common practice, no source. */
    private static final double RAMP_MPS2 = 0.8;

    static RestEnds of(double[] speedMps) {
        int before = rampS(speedMps[0]);
        int after = rampS(speedMps[speedMps.length - 1]);
        double[] ramped = new double[before + speedMps.length + after];
        System.arraycopy(speedMps, 0, ramped, before, speedMps.length);
        for (int i = 0; i < before; i++) {
            ramped[i] = speedMps[0] * i / before;
        }
        for (int i = 0; i < after; i++) {
            ramped[ramped.length - 1 - i] = speedMps[speedMps.length - 1] * i / after;
        }
        return new RestEnds(ramped, before, after);
    }

    private static int rampS(double fromMps) {
        return (int) Math.ceil(fromMps / RAMP_MPS2);
    }
}
