package org.amberyard.core.duty;

/**
 * Where the energy of driving goes, kWh each; the sum is what the battery gives, or with an engine the work of the crankshaft.
 *
 * @param rollingKwh rolling resistance
 * @param dragKwh air drag
 * @param climbingKwh height gained less height lost
 * @param frictionBrakeKwh stops: braking left to the friction brakes
 * @param drivelineKwh losses of motor and gears, driving and recovering
 * @param packKwh resistance of the battery
 * @param auxiliaryKwh auxiliaries
 * @param heatKwh electric energy for cabin heat
 * @param coolingKwh cooling of the cabin
 * @param packHeatKwh heating and cooling of the battery
 * @param unsplitKwh driving by a consumption curve or a calibration, which does not say where it goes
 */
public record EnergyCauses(double rollingKwh, double dragKwh, double climbingKwh, double frictionBrakeKwh,
        double drivelineKwh, double packKwh, double auxiliaryKwh, double heatKwh, double coolingKwh, double packHeatKwh,
        double unsplitKwh) {

    /** Nothing driven. */
    public static final EnergyCauses ZERO = new EnergyCauses(0, 0, 0, 0, 0, 0, 0, 0, 0, 0, 0);

    /** Sum of all causes, kWh. */
    public double totalKwh() {
        return rollingKwh + dragKwh + climbingKwh + frictionBrakeKwh + drivelineKwh + packKwh + auxiliaryKwh + heatKwh
                + coolingKwh + packHeatKwh + unsplitKwh;
    }

    /** These causes and others. */
    public EnergyCauses plus(EnergyCauses o) {
        return new EnergyCauses(rollingKwh + o.rollingKwh, dragKwh + o.dragKwh, climbingKwh + o.climbingKwh,
                frictionBrakeKwh + o.frictionBrakeKwh, drivelineKwh + o.drivelineKwh, packKwh + o.packKwh,
                auxiliaryKwh + o.auxiliaryKwh, heatKwh + o.heatKwh, coolingKwh + o.coolingKwh,
                packHeatKwh + o.packHeatKwh, unsplitKwh + o.unsplitKwh);
    }

    /** These causes a number of times. */
    public EnergyCauses times(double n) {
        return new EnergyCauses(n * rollingKwh, n * dragKwh, n * climbingKwh, n * frictionBrakeKwh, n * drivelineKwh,
                n * packKwh, n * auxiliaryKwh, n * heatKwh, n * coolingKwh, n * packHeatKwh, n * unsplitKwh);
    }

    /** The part that driving takes, without auxiliaries, heat and cooling, kWh. */
    public double drivingKwh() {
        return totalKwh() - auxiliaryKwh - heatKwh - coolingKwh - packHeatKwh;
    }
}
