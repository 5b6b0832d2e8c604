package org.amberyard.report;

import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** How a column's figures are turned from the units of the core into those of the user. */
interface ColumnUnit {
    /** Text has none. */
    ColumnUnit NONE = of(Unit.NONE, "");
    /** Number of things. */
    ColumnUnit COUNT = of(Unit.COUNT, "count");
    /** The unit that the row names. */
    ColumnUnit OF_LINE = of(Unit.ONE, "unit of the row");
    /** A factor. */
    ColumnUnit TIMES = of(Unit.ONE, "times");
    /** Calendar years. */
    ColumnUnit CALENDAR = of(Unit.CALENDAR, "calendar year");
    /** Kilograms of greenhouse gas, shown in tonnes. */
    ColumnUnit TONNE_OF_KG = scaled("t CO2e", 1e-3);
    /** Kilograms, shown as such in every system. */
    ColumnUnit KG = scaled("kg", 1);
    /** Kilograms, shown in short tons of 2,000 pounds in every system. */
    ColumnUnit SHORT_TON_OF_KG = scaled("short ton", 1 / GrantTerms.KG_PER_SHORT_TON);
    /** Litres per kilometre, shown as miles per gallon or litres per 100 km. */
    ColumnUnit FUEL_ECONOMY = new FuelEconomy();

    /** Symbol of the unit. */
    String symbol(UnitSystem system, String currency);

    /** The figure to show. */
    double show(double stored, UnitSystem system);

    /** Token of the unit of the core; empty where it is none of the core's. */
    default String token() {
        return "";
    }

    /** A unit of the core with its own symbol. */
    static ColumnUnit of(Unit unit) {
        return new OfCore(unit, null);
    }

    private static ColumnUnit of(Unit unit, String symbol) {
        return new OfCore(unit, symbol);
    }

    private static ColumnUnit scaled(String symbol, double factor) {
        return new Scaled(symbol, factor);
    }

    /** A unit of the core, with another symbol if one is given. */
    record OfCore(Unit unit, String ownSymbol) implements ColumnUnit {
        @Override
        public String token() {
            return unit.token();
        }

        @Override
        public String symbol(UnitSystem system, String currency) {
            return ownSymbol == null ? unit.symbol(system, currency) : ownSymbol;
        }

        @Override
        public double show(double stored, UnitSystem system) {
            return unit.show(stored, system);
        }
    }

    /** The same multiple in every system. */
    record Scaled(String ownSymbol, double factor) implements ColumnUnit {
        @Override
        public String symbol(UnitSystem system, String currency) {
            return ownSymbol;
        }

        @Override
        public double show(double stored, UnitSystem system) {
            return stored * factor;
        }
    }

    /** Distance per fuel or fuel per distance, as each system has it. */
    record FuelEconomy() implements ColumnUnit {
        @Override
        public String symbol(UnitSystem system, String currency) {
            return system == UnitSystem.US ? "mpg" : "L/100 km";
        }

        @Override
        public double show(double litresPerKm, UnitSystem system) {
            return system == UnitSystem.US ? Unit.L_PER_GALLON / Unit.KM_PER_MILE / litresPerKm : 100 * litresPerKm;
        }
    }
}
