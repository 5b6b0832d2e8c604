package org.amberyard.core.plan;

import java.util.Map;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.PricePath;

/**
 * Prices that stand by themselves, and paths of those that are entered elsewhere.
 *
 * @param fuels fuel prices, money/L
 * @param exhaustFluid exhaust fluid price, money/L
 * @param pack price of a replacement pack, money/kWh
 * @param indices paths by subject
 * @param steady path of what keeps its worth
 */
public record PriceDeck(Map<FuelKind, Price> fuels, Price exhaustFluid, Price pack, Map<Subject, PricePath> indices,
        PricePath steady) {

    /** A price as the study states it, and its path. */
    public record Price(double base, PricePath path) {

        /** The price, constant money, in a year at a time of payment. */
        public double at(int year, double timeYears) {
            return base * path.factor(year, timeYears);
        }
    }

    /** What an index scales. */
    public enum Subject {
        ELECTRIC_ENERGY("electric energy"), ELECTRIC_DEMAND("electric demand"), ELECTRIC_FIXED("electric fixed charges"),
        ENGINE_BUS("engine bus price"), ELECTRIC_BUS("electric bus price"), UPKEEP("upkeep"), INFRASTRUCTURE("infrastructure");

        private final String label;

        Subject(String label) {
            this.label = label;
        }

        /** What a cost index is named by. */
        public String label() {
            return label;
        }
    }

    /** Prices in money of the base date. */
    public PriceDeck(Map<FuelKind, Price> fuels, Price exhaustFluid, Price pack, Map<Subject, PricePath> indices) {
        this(fuels, exhaustFluid, pack, indices, PricePath.FLAT);
    }

    public PriceDeck {
        fuels = Map.copyOf(fuels);
        indices = Map.copyOf(indices);
    }

    /** Price over base-date price of a subject. */
    public double index(Subject subject, int year, double timeYears) {
        return path(subject).factor(year, timeYears);
    }

    /** Path of a subject; it keeps its worth where none is given. */
    public PricePath path(Subject subject) {
        return indices.getOrDefault(subject, steady);
    }
}
