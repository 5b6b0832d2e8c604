package org.amberyard.exchange.sheet;

import java.util.Arrays;
import java.util.regex.Pattern;
import org.amberyard.model.vehicles.Fuel;

/** What logs and invoices call what was bought. */
final class FuelWords {
    private static final Pattern NO_FUEL = Pattern.compile("(?i)\\b(def|diesel exhaust fluid|exhaust fluid|adblue|urea)\\b");

    private FuelWords() {
    }

    /** True for exhaust fluid, which is sold by the gallon beside fuel. */
    static boolean isNoFuel(String product) {
        return NO_FUEL.matcher(product).find();
    }

    /** True when a product is named as a fuel of engines, but not as a given one. */
    static boolean isAnother(String product, Fuel fuel) {
        return Arrays.stream(Fuel.values()).anyMatch(f -> f != fuel && f.getLiteral().equalsIgnoreCase(product.strip()));
    }
}
