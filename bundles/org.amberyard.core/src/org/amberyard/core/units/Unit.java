package org.amberyard.core.units;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Arrays;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Units of every figure in a study or a result.
 *
 * <p>A figure is stored in the metric unit; {@link #show} and {@link #store} convert at the edge (editor, chart, export)
 * and nowhere else. Conversion factors are exact: the international mile is 1.609344 km, the foot 0.3048 m, the pound
 * 0.45359237 kg, the US gallon 3.785411784 L (NIST Handbook 44, appendix C).
 */
public enum Unit {
    ONE("1", "", "", 1),
    SHARE("share", "%", "%", 100, 100),
    COUNT("count", "", "", 1),
    CALENDAR("calendar", "", "", 1),
    CLOCK("clock", "h:mm", "h:mm", 1),
    YEAR("year", "yr", "yr", 1),
    MONTH("month", "months", "months", 1),
    DAY("day", "d", "d", 1),
    HOUR("h", "h", "h", 1),
    MINUTE("min", "min", "min", 1),
    SECOND("s", "s", "s", 1),
    CYCLE("cycle", "cycles", "cycles", 1),
    KILOMETRE("km", "mi", "km", 1 / Unit.KM_PER_MILE),
    METRE("m", "ft", "m", 1 / Unit.M_PER_FOOT),
    SQUARE_METRE("m2", "ft²", "m²", 1 / (Unit.M_PER_FOOT * Unit.M_PER_FOOT)),
    KM_PER_HOUR("km/h", "mph", "km/h", 1 / Unit.KM_PER_MILE),
    METRE_PER_SECOND_SQUARED("m/s2", "ft/s²", "m/s²", 1 / Unit.M_PER_FOOT),
    KILOGRAM("kg", "lb", "kg", 1 / Unit.KG_PER_POUND),
    TONNE("t", "t", "t", 1),
    CUBIC_METRE_PER_HOUR("m3/h", "ft³/min", "m³/h", 1 / (60 * Unit.M_PER_FOOT * Unit.M_PER_FOOT * Unit.M_PER_FOOT)),
    DEGREE("deg", "°", "°", 1),
    LITRE("L", "gal", "L", 1 / Unit.L_PER_GALLON),
    LITRE_PER_KM("L/km", "gal/mi", "L/km", Unit.KM_PER_MILE / Unit.L_PER_GALLON),
    KM_PER_LITRE("km/L", "mpg", "km/L", Unit.L_PER_GALLON / Unit.KM_PER_MILE),
    LITRE_PER_HOUR("L/h", "gal/h", "L/h", 1 / Unit.L_PER_GALLON),
    CELSIUS("degC", "°F", "°C", 1.8) {
        @Override
        public double show(double stored, UnitSystem system) {
            return system == UnitSystem.US ? stored * 1.8 + 32 : stored;
        }

        @Override
        public double store(double shown, UnitSystem system) {
            return system == UnitSystem.US ? (shown - 32) / 1.8 : shown;
        }

        @Override
        BigDecimal shownAtZero(UnitSystem system) {
            return system == UnitSystem.US ? BigDecimal.valueOf(32) : BigDecimal.ZERO;
        }
    },
    /** A difference of temperatures. */
    KELVIN("K", "°F", "K", 1.8),
    PER_KELVIN("1/K", "1/°F", "1/K", 1 / 1.8),
    SHARE_PER_KELVIN("share/K", "%/°F", "%/K", 100 / 1.8, 100),
    KW_PER_KELVIN("kW/K", "kW/°F", "kW/K", 1 / 1.8),
    KWH_PER_KELVIN("kWh/K", "kWh/°F", "kWh/K", 1 / 1.8),
    PER_HOUR("1/h", "1/h", "1/h", 1),
    WATT("W", "W", "W", 1),
    KILOWATT("kW", "kW", "kW", 1),
    KILOVOLTAMPERE("kVA", "kVA", "kVA", 1),
    KILOWATT_HOUR("kWh", "kWh", "kWh", 1),
    KWH_PER_KM("kWh/km", "kWh/mi", "kWh/km", Unit.KM_PER_MILE),
    VOLT("V", "V", "V", 1),
    AMPERE("A", "A", "A", 1),
    GRAM_PER_KM("g/km", "g/mi", "g/km", Unit.KM_PER_MILE),
    GRAM_PER_HOUR("g/h", "g/h", "g/h", 1),
    GRAM_PER_LITRE("g/L", "g/gal", "g/L", Unit.L_PER_GALLON),
    GRAM_PER_KWH("g/kWh", "g/kWh", "g/kWh", 1),
    KG_PER_LITRE("kg/L", "kg/gal", "kg/L", Unit.L_PER_GALLON),
    KG_PER_KWH("kg/kWh", "kg/kWh", "kg/kWh", 1),
    MONEY("money", "¤", "¤", 1),
    MONEY_PER_HOUR("money/h", "¤/h", "¤/h", 1),
    MONEY_PER_TONNE("money/t", "¤/t", "¤/t", 1),
    MONEY_PER_YEAR("money/year", "¤/yr", "¤/yr", 1),
    MONEY_PER_DAY("money/day", "¤/d", "¤/d", 1),
    MONEY_PER_MONTH("money/month", "¤/month", "¤/month", 1),
    MONEY_PER_KM("money/km", "¤/mi", "¤/km", Unit.KM_PER_MILE),
    MONEY_PER_LITRE("money/L", "¤/gal", "¤/L", Unit.L_PER_GALLON),
    MONEY_PER_KWH("money/kWh", "¤/kWh", "¤/kWh", 1),
    MONEY_PER_KW_MONTH("money/kW/month", "¤/kW·month", "¤/kW·month", 1),
    /** No number: a word, a name. */
    NONE("", "", "", 1);

    /** Kilometres in an international mile. */
    public static final double KM_PER_MILE = 1.609344;
    /** Metres in a foot. */
    public static final double M_PER_FOOT = 0.3048;
    /** Kilograms in an avoirdupois pound. */
    public static final double KG_PER_POUND = 0.45359237;
    /** Litres in a US gallon. */
    public static final double L_PER_GALLON = 3.785411784;

    /** More digits than it takes to tell any two figures that are stored. */
    private static final MathContext EXACTLY = new MathContext(60);
    private static final Map<String, Unit> BY_TOKEN =
            Arrays.stream(values()).collect(Collectors.toMap(Unit::token, Function.identity()));

    private final String token;
    private final String usSymbol;
    private final String metricSymbol;
    private final double usPerStored;
    private final double metricPerStored;

    Unit(String token, String usSymbol, String metricSymbol, double usPerStored) {
        this(token, usSymbol, metricSymbol, usPerStored, 1);
    }

    Unit(String token, String usSymbol, String metricSymbol, double usPerStored, double metricPerStored) {
        this.token = token;
        this.usSymbol = usSymbol;
        this.metricSymbol = metricSymbol;
        this.usPerStored = usPerStored;
        this.metricPerStored = metricPerStored;
    }

    /** The name of the stored unit in models and result files, for example {@code kWh/km}. */
    public String token() {
        return token;
    }

    /**
     * The symbol to print beside a shown figure.
     *
     * @param currency replaces the currency sign, for example {@code USD}
     */
    public String symbol(UnitSystem system, String currency) {
        return (system == UnitSystem.US ? usSymbol : metricSymbol).replace("¤", currency);
    }

    /** The figure to show for a stored one. */
    public double show(double stored, UnitSystem system) {
        return stored * perStored(system);
    }

    /** The figure to store for one that was typed. */
    public double store(double shown, UnitSystem system) {
        return shown / perStored(system);
    }

    /** The figure to show for a stored one, without rounding: other than in {@link #show}, no stored figure shares its own with another. */
    public BigDecimal showExactly(double stored, UnitSystem system) {
        return new BigDecimal(stored).multiply(new BigDecimal(perStored(system))).add(shownAtZero(system));
    }

    /** The figure to store for one of more digits than a {@code double} has, rounded once. */
    public double storeExactly(BigDecimal shown, UnitSystem system) {
        return shown.subtract(shownAtZero(system)).divide(new BigDecimal(perStored(system)), EXACTLY).doubleValue();
    }

    BigDecimal shownAtZero(UnitSystem system) {
        return BigDecimal.ZERO;
    }

    private double perStored(UnitSystem system) {
        return system == UnitSystem.US ? usPerStored : metricPerStored;
    }

    /** True for amounts and prices. */
    public boolean isMoney() {
        return token.startsWith("money");
    }

    /** The unit of a token, or empty when there is none of that name. */
    public static Optional<Unit> ofToken(String token) {
        return Optional.ofNullable(BY_TOKEN.get(token));
    }
}
