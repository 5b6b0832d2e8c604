package org.amberyard.study.begin;

import java.util.List;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.study.UnitChoice;

/**
 * What is asked before a study is begun.
 *
 * @param name name of the district or yard
 * @param units units in which the study is shown
 * @param baseYear first fiscal year of the study
 * @param fleet the buses of today
 * @param day a day of a bus on its route
 * @param weather three temperatures of the place
 * @param prices prices of today, money of the base date
 * @param electricBy fiscal year by which the electric plan has replaced all route buses
 */
public record Answers(String name, UnitChoice units, int baseYear, Fleet fleet, RouteDay day, Weather weather, Prices prices, int electricBy) {

    /**
     * The buses of today.
     *
     * @param bodies those of each body type of which there are any
     * @param oldestYear year in which the oldest entered service
     * @param newestYear year in which the newest did
     */
    public record Fleet(List<Bodies> bodies, int oldestYear, int newestYear) {
        public Fleet {
            bodies = List.copyOf(bodies);
        }

        /** Buses on routes. */
        int onRoutes() {
            return bodies.stream().mapToInt(Bodies::onRoutes).sum();
        }

        /** Spare buses. */
        int spares() {
            return bodies.stream().mapToInt(Bodies::spares).sum();
        }
    }

    /**
     * The buses of a body type.
     *
     * @param type the body type
     * @param onRoutes buses on routes
     * @param spares spare buses
     * @param engineBus price of a new engine bus, money of the base date
     * @param electricBus price of a new electric bus, money of the base date
     */
    public record Bodies(BodyType type, int onRoutes, int spares, double engineBus, double electricBus) {
    }

    /**
     * A day of a bus on its route.
     *
     * @param km distance of the day, km
     * @param hours time on the road of the day, h
     * @param daysPerYear school days of a year
     */
    public record RouteDay(double km, double hours, int daysPerYear) {
    }

    /**
     * Three temperatures of the place.
     *
     * @param januaryLowC mean daily low of January, °C
     * @param julyHighC mean daily high of July, °C
     * @param coldestC lowest temperature on which buses go out, °C
     */
    public record Weather(double januaryLowC, double julyHighC, double coldestC) {
    }

    /**
     * Prices of today.
     *
     * @param dieselPerL diesel, money/L
     * @param energyPerKwh electricity, money/kWh
     * @param demandPerKw demand, money/kW and month
     */
    public record Prices(double dieselPerL, double energyPerKwh, double demandPerKw) {
    }
}
