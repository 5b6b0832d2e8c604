package org.amberyard.study;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.plan.PriceDeck;
import org.amberyard.model.prices.CostIndex;
import org.amberyard.model.prices.EscalationBasis;
import org.amberyard.model.prices.FluidPrice;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.IndexSubject;
import org.amberyard.model.prices.PackPrice;
import org.amberyard.model.prices.PricePath;

/** Compiles price paths; a rise that includes inflation becomes one above it. */
final class PriceCompiler {
    private final MoneyRates rates;
    private final int baseYear;
    private final Map<FuelKind, PriceDeck.Price> fuels = new EnumMap<>(FuelKind.class);
    private final Map<PriceDeck.Subject, org.amberyard.core.money.PricePath> indices =
            new EnumMap<>(PriceDeck.Subject.class);
    private PriceDeck.Price fluid = new PriceDeck.Price(0, org.amberyard.core.money.PricePath.FLAT);
    private PriceDeck.Price pack = fluid;

    private PriceCompiler(MoneyRates rates, int baseYear) {
        this.rates = rates;
        this.baseYear = baseYear;
    }

    static PriceDeck compile(List<PricePath> prices, MoneyRates rates, int baseYear) {
        PriceCompiler compiler = new PriceCompiler(rates, baseYear);
        prices.forEach(compiler::add);
        return new PriceDeck(compiler.fuels, compiler.fluid, compiler.pack, compiler.indices);
    }

    private void add(PricePath price) {
        if (price instanceof FuelPrice fuel) {
            fuels.put(VehicleCompiler.fuel(fuel.getFuel()), new PriceDeck.Price(fuel.getPricePerL(), path(price, rates, baseYear)));
        } else if (price instanceof FluidPrice exhaustFluid) {
            fluid = new PriceDeck.Price(exhaustFluid.getPricePerL(), path(price, rates, baseYear));
        } else if (price instanceof PackPrice packPrice) {
            pack = new PriceDeck.Price(packPrice.getPricePerKwh(), path(price, rates, baseYear));
        } else if (price instanceof CostIndex index) {
            indices.put(subject(index.getSubject()), path(price, rates, baseYear));
        }
    }

    /** A path in constant money; a rise that includes inflation becomes one above it. */
    static org.amberyard.core.money.PricePath path(PricePath price, MoneyRates rates, int baseYear) {
        double rise = price.getEscalationBasis() == EscalationBasis.NOMINAL
                ? rates.realRise(price.getEscalationPerYear())
                : price.getEscalationPerYear();
        return new org.amberyard.core.money.PricePath(rise, price.getPoints().stream()
                .map(p -> new org.amberyard.core.money.PricePath.Point(p.getYear() - baseYear, p.getFactor()))
                .sorted(Comparator.comparingInt(org.amberyard.core.money.PricePath.Point::year)).toList());
    }

    private static PriceDeck.Subject subject(IndexSubject subject) {
        return switch (subject) {
            case ELECTRIC_ENERGY -> PriceDeck.Subject.ELECTRIC_ENERGY;
            case ELECTRIC_DEMAND -> PriceDeck.Subject.ELECTRIC_DEMAND;
            case ELECTRIC_FIXED -> PriceDeck.Subject.ELECTRIC_FIXED;
            case ENGINE_BUS -> PriceDeck.Subject.ENGINE_BUS;
            case ELECTRIC_BUS -> PriceDeck.Subject.ELECTRIC_BUS;
            case UPKEEP -> PriceDeck.Subject.UPKEEP;
            case INFRASTRUCTURE -> PriceDeck.Subject.INFRASTRUCTURE;
        };
    }
}
