package org.amberyard.core.yard;

import java.util.Optional;
import org.amberyard.core.battery.BatterySpec;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;

/**
 * An electric bus in one year, as the yard has to charge it.
 *
 * @param place place in the fleet
 * @param name its name
 * @param acKw largest power taken from an AC port, kW
 * @param dcKw largest power taken from a DC port, kW
 * @param battery its pack
 * @param health present over nominal capacity of the pack
 * @param route what its route takes; empty for a bus without one
 * @param routeShare share of the service days on which it drives the route itself, not a spare
 * @param other what its other driving of the year takes, trips and spare days
 */
public record YardBus(int place, String name, double acKw, double dcKw, BatterySpec battery, double health,
        Optional<RouteUse> route, double routeShare, EnergyUse other) {
}
