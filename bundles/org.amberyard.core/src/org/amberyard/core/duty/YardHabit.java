package org.amberyard.core.duty;

/**
 * What a yard does with its electric buses between runs.
 *
 * @param midday true when they are plugged in between runs at the yard
 * @param precondition true when cabin and pack are brought to temperature on the yard's power before each departure from a
 *            port
 * @param portKw power behind the port that a bus can count on, for charge and heat, kW
 */
public record YardHabit(boolean midday, boolean precondition, double portKw) {

    /** The same without heat before departure. */
    public YardHabit withoutPrecondition() {
        return new YardHabit(midday, false, portKw);
    }

    /** The same with another choice of charging between runs. */
    public YardHabit withMidday(boolean other) {
        return new YardHabit(other, precondition, portKw);
    }
}
