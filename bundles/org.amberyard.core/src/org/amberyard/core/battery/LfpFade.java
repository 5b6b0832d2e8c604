package org.amberyard.core.battery;

/**
 * Fade of a lithium iron phosphate pack with graphite anode.
 *
 * <p>Time: M. Naumann, M. Schimpe, P. Keil, H. C. Hesse, A. Jossen, "Analysis and modeling of calendar aging of a commercial
 * LiFePO4/graphite cell", Journal of Energy Storage 17 (2018) 153-169: root of time, Arrhenius, a cubic of the state of charge.
 * Cycles: M. Naumann, F. B. Spingler, A. Jossen, "Analysis and modeling of cycle aging of a commercial LiFePO4/graphite cell",
 * Journal of Power Sources 451 (2020) 227666: root of the full cycles, rising with depth and power. Forms, coefficients and
 * units as seen in published code that cites the two papers; the papers themselves were not at hand. The cycle term has no
 * temperature: it neither spares a cold pack nor punishes charging in the cold.
 */
public record LfpFade() implements FadeLaw {
    private static final double SECONDS_PER_HOUR = 3600;
    private static final double GAS_CONSTANT = 8.314;
    private static final double ZERO_C_IN_K = 273.15;
    private static final double REFERENCE_K = 298.15;
    private static final double CALENDAR_PER_ROOT_S = 1.2571e-5;
    private static final double ACTIVATION_J_PER_MOL = 17126;

    @Override
    public FadeRate rate(PackStress stress) {
        double calendar = stress.dwells().stream()
                .mapToDouble(d -> square(calendarPerRootS(d.packC(), d.chargeShare())) * d.hoursPerYear() * SECONDS_PER_HOUR)
                .sum();
        double cycling = stress.cycles().stream()
                .mapToDouble(c -> square(cycleFactor(c.depth(), c.powerPerHour())) * c.fullCycles()).sum();
        return new FadeRate(new LossGrowth(0.5, calendar), new LossGrowth(0.5, cycling));
    }

    private static double calendarPerRootS(double packC, double chargeShare) {
        double colder = 1 / (packC + ZERO_C_IN_K) - 1 / REFERENCE_K;
        double arrhenius = Math.exp(-ACTIVATION_J_PER_MOL / GAS_CONSTANT * colder);
        return CALENDAR_PER_ROOT_S * arrhenius * (2.8575 * Math.pow(chargeShare - 0.5, 3) + 0.60225);
    }

    /** Loss per root of a full cycle. */
    private static double cycleFactor(double depth, double powerPerHour) {
        return 0.01 * (0.0630 * powerPerHour + 0.0971) * (4.0253 * Math.pow(depth - 0.6, 3) + 1.0923);
    }

    private static double square(double x) {
        return x * x;
    }
}
