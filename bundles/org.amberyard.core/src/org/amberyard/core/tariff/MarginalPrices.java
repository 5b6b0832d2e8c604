package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What one more kWh or kW at the meter costs in a month, riders, percentages and taxes included: the prices of a least-cost
 * schedule. Each charge takes part with the price of the block in which an expected load ends, because the scheduled energy
 * comes on top of what blocks below hold. A minimum bill is not looked at.
 */
public final class MarginalPrices {
    private static final int SET_BITS = 31;

    private final TariffMonth terms;
    private final PriceOfHours[] energy;
    private final List<DemandPrice> demand;

    /** The price of a charge while its hours last. */
    private record PriceOfHours(MonthHours hours, double price) {
    }

    /** The price of a demand charge, and from which demand on it is asked. */
    private record DemandPrice(DemandTerms terms, double price, double fromKw) {
    }

    /**
     * Prices around an expected month.
     *
     * @throws IllegalArgumentException when the tariff has more demand charges in the month than fit in a set of 31
     */
    public MarginalPrices(TariffMonth terms, MeterMonth expected, PeakHistory history) {
        this.terms = terms;
        List<PriceOfHours> energyPrices = new ArrayList<>();
        demand = new ArrayList<>();
        for (BillComponent component : List.of(BillComponent.ENERGY, BillComponent.RIDER)) {
            double factor = terms.tariff().lossFactor() * withShares(component);
            terms.energyTerms(component).forEach(c -> energyPrices.add(energyPrice(c, expected, factor)));
        }
        for (BillComponent component : List.of(BillComponent.DEMAND, BillComponent.RIDER)) {
            double factor = terms.tariff().lossFactor() * withShares(component);
            terms.demandTerms(component).forEach(c -> demand.add(demandPrice(c, expected, history, factor)));
        }
        energy = energyPrices.toArray(new PriceOfHours[0]);
        if (demand.size() > SET_BITS) {
            throw new IllegalArgumentException(terms.tariff().name() + " has " + demand.size()
                    + " demand charges in a month but must have no more than " + SET_BITS);
        }
    }

    private PriceOfHours energyPrice(ChargeTerms charge, MeterMonth expected, double factor) {
        double kwh = terms.tariff().lossFactor() * charge.hours().kwh(expected);
        return new PriceOfHours(charge.hours(), factor * charge.prices().blockAfter(kwh).price());
    }

    private DemandPrice demandPrice(DemandTerms charge, MeterMonth expected, PeakHistory history, double factor) {
        double kw = charge.billed(expected, history, terms.tariff().lossFactor()).kw();
        PriceBlock block = charge.charge().prices().blockAfter(kw);
        return new DemandPrice(charge, factor * block.price(), block.from());
    }

    /** Money on the bill for each unit of money of a component. */
    private double withShares(BillComponent component) {
        Map<BillComponent, Double> amounts = new EnumMap<>(BillComponent.class);
        amounts.put(component, 1.0);
        terms.tariff().riders().shares().forEach(c -> addShare(c, BillComponent.RIDER, amounts));
        terms.tariff().taxes().forEach(c -> addShare(c, BillComponent.TAX, amounts));
        return amounts.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static void addShare(ShareCharge charge, BillComponent to, Map<BillComponent, Double> amounts) {
        double base = charge.of().stream().mapToDouble(c -> amounts.getOrDefault(c, 0.0)).sum();
        amounts.merge(to, charge.share() * base, Double::sum);
    }

    /** Price of energy at a minute of a kind of day, money/kWh at the meter. */
    public double pricePerKwhAt(DayClass day, double minute) {
        double price = 0;
        for (PriceOfHours charge : energy) {
            price += charge.hours.contain(day, minute) ? charge.price : 0;
        }
        return price;
    }

    /** Demand charges that count a minute of a kind of day, as bits by their place in {@link #demandPrices}. */
    public int demandSetAt(DayClass day, double minute) {
        int set = 0;
        for (int charge = 0; charge < demand.size(); charge++) {
            set |= demand.get(charge).terms.charge().hours().contain(day, minute) ? 1 << charge : 0;
        }
        return set;
    }

    /** Price of each demand charge, money/kW at the meter. */
    public double[] demandPrices() {
        return demand.stream().mapToDouble(DemandPrice::price).toArray();
    }

    /** Names of the demand charges. */
    public List<String> demandNames() {
        return demand.stream().map(d -> d.terms.charge().name()).toList();
    }

    /** Demand below which each demand charge does not fall, by minimum, ratchet or block, kW at the meter. */
    public double[] demandFloorsKw(PeakHistory history) {
        double lossFactor = terms.tariff().lossFactor();
        return demand.stream()
                .mapToDouble(d -> Math.max(d.fromKw, d.terms.floor(history, lossFactor).kw()) / lossFactor).toArray();
    }
}
