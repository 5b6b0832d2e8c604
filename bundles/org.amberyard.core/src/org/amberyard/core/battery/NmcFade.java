package org.amberyard.core.battery;

/**
 * Fade of a nickel manganese cobalt pack with graphite anode: J. Schmalstieg, S. Käbitz, M. Ecker, D. U. Sauer, "A holistic
 * aging model for Li(NiMnCo)O2 based 18650 lithium-ion batteries", Journal of Power Sources 257 (2014): time to the power 0.75
 * by voltage and temperature, root of the charge throughput by depth and mean voltage; coefficients as seen in published code.
 * The paper means the voltage by its squares; here the voltage at the mean charge stands for it.
 *
 * <p>The calendar fit turns negative below 3.1486 V, where it was not measured; there it counts as nothing. The cycle term has
 * no temperature: it neither spares a cold pack nor punishes charging in the cold.
 */
public record NmcFade() implements FadeLaw {
    private static final double HOURS_PER_DAY = 24;
    private static final double ZERO_C_IN_K = 273.15;
    private static final double CALENDAR_POWER = 0.75;
    /** Capacity of the cell that was measured, Ah. */
    private static final double CELL_AH = 2.05;

    @Override
    public FadeRate rate(PackStress stress) {
        double calendar = stress.dwells().stream()
                .mapToDouble(d -> Math.pow(calendarFactor(CellVoltage.nmcV(d.chargeShare()), d.packC()), 1 / CALENDAR_POWER)
                        * d.hoursPerYear() / HOURS_PER_DAY)
                .sum();
        double cycling = stress.cycles().stream()
                .mapToDouble(c -> square(cycleFactor(CellVoltage.nmcV(c.meanShare()), c.depth())) * throughputAh(c)).sum();
        return new FadeRate(new LossGrowth(CALENDAR_POWER, calendar), new LossGrowth(0.5, cycling));
    }

    /** Loss after one day at a cell voltage and temperature, per day to the power 0.75. */
    public static double calendarFactor(double cellV, double packC) {
        return Math.max(0, (7.543 * cellV - 23.75) * 1e6 * Math.exp(-6976 / (packC + ZERO_C_IN_K)));
    }

    /** Loss per root of an ampere hour through the measured cell, at a mean voltage and depth. */
    public static double cycleFactor(double meanCellV, double depth) {
        return 7.348e-3 * square(meanCellV - 3.667) + 7.600e-4 + 4.081e-3 * depth;
    }

    /** Charge in and out of the measured cell, Ah. */
    private static double throughputAh(PackStress.Cycle cycle) {
        return 2 * CELL_AH * cycle.fullCycles();
    }

    private static double square(double x) {
        return x * x;
    }
}
