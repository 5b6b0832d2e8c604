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
import org.amberyard.model.study.Settings;

/** Compiles price paths; a rise that includes inflation becomes one above it. */
final class PriceCompiler {
    private final MoneyRates rates;
    private final int baseYear;
    private final PriceDate stated;
    private final Map<FuelKind, PriceDeck.Price> fuels = new EnumMap<>(FuelKind.class);
    private final Map<PriceDeck.Subject, org.amberyard.core.money.PricePath> indices =
            new EnumMap<>(PriceDeck.Subject.class);
    private PriceDeck.Price fluid = new PriceDeck.Price(0, org.amberyard.core.money.PricePath.FLAT);
    private PriceDeck.Price pack = fluid;

    PriceCompiler(Settings settings, MoneyRates rates) {
        this.rates = rates;
        this.baseYear = settings.getBaseYear();
        this.stated = PriceDate.of(settings, rates);
    }

    PriceDeck compile(List<PricePath> prices) {
        prices.forEach(this::add);
        return new PriceDeck(fuels, fluid, pack, indices, stated.from(org.amberyard.core.money.PricePath.FLAT));
    }

    private void add(PricePath price) {
        if (price instanceof FuelPrice fuel) {
            fuels.put(VehicleCompiler.fuel(fuel.getFuel()), new PriceDeck.Price(fuel.getPricePerL(), path(price)));
        } else if (price instanceof FluidPrice exhaustFluid) {
            fluid = new PriceDeck.Price(exhaustFluid.getPricePerL(), path(price));
        } else if (price instanceof PackPrice packPrice) {
            pack = new PriceDeck.Price(packPrice.getPricePerKwh(), path(price));
        } else if (price instanceof CostIndex index) {
            indices.put(subject(index.getSubject()), path(price));
        }
    }

    /** A path in constant money; a rise that includes inflation becomes one above it. */
    org.amberyard.core.money.PricePath path(PricePath price) {
        double rise = price.getEscalationBasis() == EscalationBasis.NOMINAL
                ? rates.realRise(price.getEscalationPerYear())
                : price.getEscalationPerYear();
        return stated.from(new org.amberyard.core.money.PricePath(rise, price.getPoints().stream()
                .map(p -> new org.amberyard.core.money.PricePath.Point(p.getYear() - baseYear, p.getFactor()))
                .sorted(Comparator.comparingInt(org.amberyard.core.money.PricePath.Point::year)).toList()));
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
