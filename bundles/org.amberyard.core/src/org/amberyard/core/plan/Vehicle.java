package org.amberyard.core.plan;

import java.util.Optional;
import org.amberyard.core.battery.PackWear;

/**
 * A bus at one moment of the roll-forward.
 *
 * @param unit its own name, which moves with it from place to place
 * @param type place in the list of types
 * @param inServiceYear year in which it was delivered new, counted from the base year
 * @param odometerKm odometer, km
 * @param pack its pack
 * @param fuelFactor measured over modelled fuel in the base year, by which the model's fuel is multiplied; 1 where nothing was
 *            measured
 * @param used how it was when the fleet bought it used; empty for a bus bought new and for those of today
 */
public record Vehicle(String unit, int type, int inServiceYear, double odometerKm, Pack pack, double fuelFactor,
        Optional<Used> used) {

    /**
     * A bus when it was bought used: its value falls from there.
     *
     * @param as its age, odometer and price
     * @param packLifeLeft share of a new pack's life that its pack had left; 1 for an engine bus
     */
    public record Used(SecondHand as, double packLifeLeft) {
    }

    /**
     * Its pack; an engine bus has one that never wears.
     *
     * @param wear age, full cycles and capacity lost
     * @param km distance driven with it, km
     * @param priceShare price of a replacement pack over that of a new one, for each share of a life that was in it when it was
     *            fitted; zero for the pack that the bus came with
     */
    public record Pack(PackWear wear, double km, double priceShare) {

        /** The pack of a new bus. */
        public static final Pack FIRST = new Pack(PackWear.NEW, 0, 0);
    }

    /** A bus that was bought new. */
    public Vehicle(String unit, int type, int inServiceYear, double odometerKm, Pack pack, double fuelFactor) {
        this(unit, type, inServiceYear, odometerKm, pack, fuelFactor, Optional.empty());
    }

    /** Age at the start of a year. */
    public double ageYears(int year) {
        return year - (double) inServiceYear;
    }

    /** Age of its pack. */
    public double packYears() {
        return pack.wear().years();
    }

    /** Full cycles of its pack. */
    public double packCycles() {
        return pack.wear().fullCycles();
    }

    /** Present over nominal capacity of its pack. */
    public double health() {
        return pack.wear().health();
    }

    Vehicle driven(double km, PackWear wear) {
        return new Vehicle(unit, type, inServiceYear, odometerKm + km, new Pack(wear, pack.km() + km, pack.priceShare()),
                fuelFactor, used);
    }

    Vehicle with(Pack other) {
        return new Vehicle(unit, type, inServiceYear, odometerKm, other, fuelFactor, used);
    }

    Vehicle calibrated(double factor) {
        return new Vehicle(unit, type, inServiceYear, odometerKm, pack, factor, used);
    }
}
