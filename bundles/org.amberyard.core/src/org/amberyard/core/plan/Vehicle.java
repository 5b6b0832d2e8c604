package org.amberyard.core.plan;

/**
 * A bus at one moment of the roll-forward.
 *
 * @param unit its own name, which moves with it from place to place
 * @param type place in the list of types
 * @param inServiceYear year in which it entered service, counted from the base year
 * @param odometerKm odometer, km
 * @param packYears age of its pack
 * @param packCycles full cycles of its pack
 * @param packPaid what a replacement pack cost, constant money; zero for the pack it came with
 * @param fuelFactor measured over modelled fuel in the base year, by which the model's fuel is multiplied; 1 where nothing was
 *            measured
 */
public record Vehicle(String unit, int type, int inServiceYear, double odometerKm, double packYears, double packCycles,
        double packPaid, double fuelFactor) {

    /** Age at the start of a year. */
    public double ageYears(int year) {
        return year - (double) inServiceYear;
    }

    Vehicle drivenWith(double km, Pack pack) {
        return new Vehicle(unit, type, inServiceYear, odometerKm + km, pack.years(), pack.cycles(), pack.paid(),
                fuelFactor);
    }

    Vehicle calibrated(double factor) {
        return new Vehicle(unit, type, inServiceYear, odometerKm, packYears, packCycles, packPaid, factor);
    }

    /** State of a pack: its age in years, its full cycles and what it cost when it was a replacement. */
    record Pack(double years, double cycles, double paid) {
    }
}
