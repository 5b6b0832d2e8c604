package org.amberyard.core.battery;

/**
 * A maker's promise on a pack: if its capacity falls to a share within years and distance, the maker pays for a new one in
 * proportion to what is left of the nearer of the two (straight line; common practice for pro-rated warranties, no source).
 * A replacement pack has the promise anew.
 *
 * @param years years covered; zero for no warranty
 * @param km distance covered, km
 * @param capacityShare present over nominal capacity that is promised
 */
public record Warranty(double years, double km, double capacityShare) {

    /** No promise. */
    public static final Warranty NONE = new Warranty(0, 0, 0);

    /** Share of a new pack's price that the maker pays for a pack of an age, distance and health; zero when not covered. */
    public double makerShare(double packYears, double packKm, double health) {
        if (health > capacityShare || packYears >= years || packKm >= km) {
            return 0;
        }
        return 1 - Math.max(packYears / years, packKm / km);
    }
}
