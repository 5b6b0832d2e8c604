package org.amberyard.core.yard;

import java.util.List;
import java.util.Objects;
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
 * @param trips its trips on the busiest day of trips of each month, at most one a month; part of the other driving
 */
public record YardBus(int place, String name, double acKw, double dcKw, BatterySpec battery, double health,
        Optional<RouteUse> route, double routeShare, EnergyUse other, List<TripDay> trips) {

    /** Trips that take more than all other driving of the bus are scaled down to it, so that no energy counts twice. */
    public YardBus {
        double tripsKwh = trips.stream().mapToDouble(TripDay::batteryKwh).sum();
        double share = tripsKwh > other.batteryKwh() ? other.batteryKwh() / tripsKwh : 1;
        trips = trips.stream().map(t -> t.times(share)).toList();
    }

    /** A bus without trips of its own. */
    public YardBus(int place, String name, double acKw, double dcKw, BatterySpec battery, double health,
            Optional<RouteUse> route, double routeShare, EnergyUse other) {
        this(place, name, acKw, dcKw, battery, health, route, routeShare, other, List.of());
    }

    /** Of what is quick to look at: the drives of a bus are large, so what they take in a year stands for them. */
    @Override
    public int hashCode() {
        return Objects.hash(place, name, health, route.map(use -> use.year().batteryKwh()), other.batteryKwh());
    }

    /** The bus's trip on the busiest day of a month of service. */
    Optional<TripDay> trip(ServiceMonth month) {
        return trips.stream().filter(t -> t.on(month)).findFirst();
    }

    /** Energy from the battery that its trips take on days of trips of a calendar, kWh. */
    double tripsKwh(YardCalendar calendar) {
        return calendar.months().stream().filter(m -> m.times().containsKey(StretchKind.TRIP_DAY))
                .flatMap(m -> trip(m).stream()).mapToDouble(TripDay::batteryKwh).sum();
    }
}
