package org.amberyard.study;

import java.util.Arrays;
import java.util.Locale;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/**
 * In which system a number was typed: that whose sign of the unit stands behind it, else the usual one.
 *
 * @param unit unit of the number
 * @param usual system of numbers without a sign
 * @param currency stands in signs of prices
 */
public record TypedUnit(Unit unit, UnitSystem usual, String currency) {

    /** The system of a typed text. */
    public UnitSystem of(String text) {
        return Arrays.stream(UnitSystem.values()).filter(s -> s != usual && endsWith(text, s) && !endsWith(text, usual)).findFirst()
                .orElse(usual);
    }

    /** True when the sign of the unit in a system stands behind a number. */
    boolean endsWith(String text, UnitSystem system) {
        String symbol = unit.symbol(system, currency);
        return !symbol.isEmpty() && text.toLowerCase(Locale.ROOT).endsWith(symbol.toLowerCase(Locale.ROOT));
    }
}
