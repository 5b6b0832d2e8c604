package org.amberyard.core.duty;

/**
 * Force at the wheels of a moving vehicle: rolling, climbing, air drag and inertia,
 * {@code F = m·g·(Crr·cosθ + sinθ) + ½·ρ·Cd·A·v² + λ·m·a}, the road-load equation of the vehicle dynamics handbooks.
 *
 * @param massKg mass with riders, kg
 * @param rollingResistance coefficient of rolling resistance
 * @param dragAreaM2 drag coefficient times frontal area, m²
 * @param rotatingMassFactor apparent over real mass in acceleration
 * @param airDensityKgPerM3 air density, kg/m³
 */
public record RoadLoad(double massKg, double rollingResistance, double dragAreaM2, double rotatingMassFactor,
        double airDensityKgPerM3) {

    /** Standard acceleration of free fall, m/s². */
    public static final double GRAVITY = 9.80665;

    /** Rolling resistance on a slope of a cosine, N. */
    public double rollingN(double cosine) {
        return rollingResistance * massKg * GRAVITY * cosine;
    }

    /** Climbing force on a slope of a sine, N; negative downhill. */
    public double climbingN(double sine) {
        return massKg * GRAVITY * sine;
    }

    /** Air drag in still air, N. */
    public double dragN(double speedMps) {
        return 0.5 * airDensityKgPerM3 * dragAreaM2 * speedMps * speedMps;
    }

    /** Inertia force, N; negative when slowing. */
    public double inertiaN(double accelerationMps2) {
        return rotatingMassFactor * massKg * accelerationMps2;
    }
}
