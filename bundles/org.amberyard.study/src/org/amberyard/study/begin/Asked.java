package org.amberyard.study.begin;

import java.util.List;
import org.amberyard.core.units.Unit;
import org.amberyard.model.common.BodyType;

/** The numbers that are asked before a study is begun, with what is usual and what is allowed, in metric units. */
public enum Asked {
    /** First fiscal year of the study. */
    BASE_YEAR(Unit.CALENDAR, 2026, 2000, 2100, true),
    /** Fiscal year by which the electric plan has replaced all route buses. */
    ELECTRIC_BY(Unit.CALENDAR, 2036, 2001, 2140, true),
    /** Buses of body type A on routes. */
    ROUTES_A(Unit.COUNT, 0, 0, 2000, true),
    /** Buses of body type B on routes. */
    ROUTES_B(Unit.COUNT, 0, 0, 2000, true),
    /** Buses of body type C on routes. */
    ROUTES_C(Unit.COUNT, 12, 0, 2000, true),
    /** Buses of body type D on routes. */
    ROUTES_D(Unit.COUNT, 0, 0, 2000, true),
    /** Spare buses of body type A. */
    SPARES_A(Unit.COUNT, 0, 0, 500, true),
    /** Spare buses of body type B. */
    SPARES_B(Unit.COUNT, 0, 0, 500, true),
    /** Spare buses of body type C. */
    SPARES_C(Unit.COUNT, 2, 0, 500, true),
    /** Spare buses of body type D. */
    SPARES_D(Unit.COUNT, 0, 0, 500, true),
    /** Year in which the oldest entered service. */
    OLDEST_YEAR(Unit.CALENDAR, 2012, 1980, 2100, true),
    /** Year in which the newest did. */
    NEWEST_YEAR(Unit.CALENDAR, 2025, 1980, 2100, true),
    /** Distance of a day. */
    DAY_KM(Unit.KILOMETRE, 60 * Unit.KM_PER_MILE, 1, 600, false),
    /** Time on the road of a day. */
    DAY_HOURS(Unit.HOUR, 3.5, 0.5, 14, false),
    /** School days of a year. */
    DAYS(Unit.DAY, 180, 1, 250, true),
    /** Mean daily low of January. */
    JANUARY_LOW(Unit.CELSIUS, -5, -45, 30, false),
    /** Mean daily high of July. */
    JULY_HIGH(Unit.CELSIUS, 30, 0, 50, false),
    /** Lowest temperature on which buses go out. */
    COLDEST(Unit.CELSIUS, -20, -55, 30, false),
    /** Diesel. */
    DIESEL(Unit.MONEY_PER_LITRE, 3.75 / Unit.L_PER_GALLON, 0, 20, false),
    /** Electricity. */
    ENERGY(Unit.MONEY_PER_KWH, 0.12, 0, 5, false),
    /** Demand. */
    DEMAND(Unit.MONEY_PER_KW_MONTH, 8, 0, 200, false),
    /** A new engine bus of body type A. */
    ENGINE_A(Unit.MONEY, BodyFigures.of(BodyType.A).engineBus(), 1000, 5_000_000, false),
    /** A new engine bus of body type B. */
    ENGINE_B(Unit.MONEY, BodyFigures.of(BodyType.B).engineBus(), 1000, 5_000_000, false),
    /** A new engine bus of body type C. */
    ENGINE_C(Unit.MONEY, BodyFigures.of(BodyType.C).engineBus(), 1000, 5_000_000, false),
    /** A new engine bus of body type D. */
    ENGINE_D(Unit.MONEY, BodyFigures.of(BodyType.D).engineBus(), 1000, 5_000_000, false),
    /** A new electric bus of body type A. */
    ELECTRIC_A(Unit.MONEY, BodyFigures.of(BodyType.A).electricBus(), 1000, 5_000_000, false),
    /** A new electric bus of body type B. */
    ELECTRIC_B(Unit.MONEY, BodyFigures.of(BodyType.B).electricBus(), 1000, 5_000_000, false),
    /** A new electric bus of body type C. */
    ELECTRIC_C(Unit.MONEY, BodyFigures.of(BodyType.C).electricBus(), 1000, 5_000_000, false),
    /** A new electric bus of body type D. */
    ELECTRIC_D(Unit.MONEY, BodyFigures.of(BodyType.D).electricBus(), 1000, 5_000_000, false);

    private final Unit unit;
    private final double usual;
    private final double lowest;
    private final double highest;
    private final boolean whole;

    Asked(Unit unit, double usual, double lowest, double highest, boolean whole) {
        this.unit = unit;
        this.usual = usual;
        this.lowest = lowest;
        this.highest = highest;
        this.whole = whole;
    }

    /** Its unit. */
    public Unit unit() {
        return unit;
    }

    /** What stands there before anything is typed; common practice, no source. */
    public double usual() {
        return usual;
    }

    double lowest() {
        return lowest;
    }

    double highest() {
        return highest;
    }

    /** True when it must be a whole number. */
    boolean whole() {
        return whole;
    }

    /** Buses on routes of each body type, in the order of the types. */
    public static List<Asked> routes() {
        return List.of(ROUTES_A, ROUTES_B, ROUTES_C, ROUTES_D);
    }

    /** Spare buses of each body type. */
    public static List<Asked> spares() {
        return List.of(SPARES_A, SPARES_B, SPARES_C, SPARES_D);
    }

    /** A new engine bus of each body type. */
    public static List<Asked> engineBuses() {
        return List.of(ENGINE_A, ENGINE_B, ENGINE_C, ENGINE_D);
    }

    /** A new electric bus of each body type. */
    public static List<Asked> electricBuses() {
        return List.of(ELECTRIC_A, ELECTRIC_B, ELECTRIC_C, ELECTRIC_D);
    }
}
