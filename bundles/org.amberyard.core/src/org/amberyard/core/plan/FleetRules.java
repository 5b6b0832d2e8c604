package org.amberyard.core.plan;

/**
 * Rules that hold for the whole fleet.
 *
 * @param spareCoverShare share of the service days on which a spare runs the route
 * @param insuranceShare premium per year as a share of the bus's present value
 * @param reserveShare share of the usable battery energy kept as a reserve
 */
public record FleetRules(double spareCoverShare, double insuranceShare, double reserveShare) {
}
