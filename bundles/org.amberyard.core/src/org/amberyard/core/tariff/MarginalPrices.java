package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/**
 * What one more kWh or kW at the meter costs in a month, riders, percentages and taxes included: the prices of a least-cost
 * schedule. Each charge takes part with the price of the block in which an expected load ends. Not looked at are a minimum
 * bill and what a demand of this month costs in later months by a ratchet.
 */
public final class MarginalPrices {
    private static final int SET_BITS = 31;

    private final double lossFactor;
    private final List<PriceOfHours> energy = new ArrayList<>();
    private final List<DemandPrice> demand = new ArrayList<>();

    /** The price of an energy charge, asked in its hours. */
    private record PriceOfHours(MonthHours hours, double price) {
    }

    /** The price of a demand charge, the demand at which it is taken and that from which on it is asked. */
    private record DemandPrice(DemandTerms terms, double price, double billedKw, double fromKw) {
    }

    /**
     * Prices around an expected month.
     *
     * @throws IllegalArgumentException when the tariff has more demand charges in the month than fit in a set of 31
     */
    public MarginalPrices(TariffMonth terms, MeterMonth expected, PeakHistory history) {
        Tariff tariff = terms.tariff();
        lossFactor = tariff.lossFactor();
        double billedKw = terms.billedKw(expected, history);
        double blocksPerKw = 0;
        for (BillComponent component : List.of(BillComponent.ENERGY, BillComponent.RIDER)) {
            double factor = lossFactor * withShares(tariff, component);
            for (ChargeTerms charge : terms.energyTerms(component)) {
                double kwh = lossFactor * charge.hours().kwh(expected);
                energy.add(new PriceOfHours(charge.hours(), factor * charge.prices().last(kwh, billedKw).price()));
                blocksPerKw += factor * charge.prices().moneyPerKw(kwh, billedKw);
            }
        }
        addDemand(terms, BillComponent.DEMAND, expected, history);
        addToGreatest(blocksPerKw);
        addDemand(terms, BillComponent.RIDER, expected, history);
        if (demand.size() > SET_BITS) {
            throw new IllegalArgumentException(tariff.name() + " has " + demand.size()
                    + " demand charges in a month but must have no more than " + SET_BITS);
        }
    }

    private void addDemand(TariffMonth terms, BillComponent component, MeterMonth expected, PeakHistory history) {
        double factor = lossFactor * withShares(terms.tariff(), component);
        for (DemandTerms charge : terms.demandTerms(component)) {
            double kw = charge.billed(expected, history, lossFactor).kw();
            PriceBlock block = charge.charge().prices().last(kw, 0);
            demand.add(new DemandPrice(charge, factor * block.price(), kw, block.from()));
        }
    }

    /** Blocks per kW go by the greatest demand, so what they cost is a price of it. */
    private void addToGreatest(double pricePerKw) {
        int greatest = 0;
        for (int charge = 1; charge < demand.size(); charge++) {
            greatest = demand.get(charge).billedKw > demand.get(greatest).billedKw ? charge : greatest;
        }
        if (greatest < demand.size()) {
            DemandPrice before = demand.get(greatest);
            demand.set(greatest, new DemandPrice(before.terms, Math.max(0, before.price + pricePerKw), before.billedKw,
                    before.fromKw));
        }
    }

    /** Money on the bill for each unit of money of a component. */
    private static double withShares(Tariff tariff, BillComponent component) {
        Map<BillComponent, Double> amounts = new EnumMap<>(BillComponent.class);
        amounts.put(component, 1.0);
        tariff.riders().shares().forEach(c -> addShare(c, BillComponent.RIDER, amounts));
        tariff.taxes().forEach(c -> addShare(c, BillComponent.TAX, amounts));
        return amounts.values().stream().mapToDouble(Double::doubleValue).sum();
    }

    private static void addShare(ShareCharge charge, BillComponent to, Map<BillComponent, Double> amounts) {
        double base = charge.of().stream().mapToDouble(c -> amounts.getOrDefault(c, 0.0)).sum();
        amounts.merge(to, charge.share() * base, Double::sum);
    }

    /** Mean price of energy of a step of a kind of day, money/kWh at the meter; minutes after midnight. */
    public double pricePerKwh(DayClass day, double fromMin, double toMin) {
        double price = 0;
        for (PriceOfHours charge : energy) {
            price += charge.hours.share(day, fromMin, toMin) * charge.price;
        }
        return price;
    }

    /** Demand charges that count a step of a kind of day, as bits by their place in {@link #demandPrices}. */
    public int demandSet(DayClass day, double fromMin, double toMin) {
        int set = 0;
        for (int charge = 0; charge < demand.size(); charge++) {
            set |= demand.get(charge).terms.charge().hours().counts(day, fromMin, toMin) ? 1 << charge : 0;
        }
        return set;
    }

    /** Price of each demand charge, money/kW at the meter; demand charges first, then riders on demand. */
    public double[] demandPrices() {
        return demand.stream().mapToDouble(DemandPrice::price).toArray();
    }

    /** Names of the demand charges. */
    public List<String> demandNames() {
        return demand.stream().map(d -> d.terms.charge().name()).toList();
    }

    /** Demand below which each demand charge does not fall, by minimum, ratchet or block, kW at the meter. */
    public double[] demandFloorsKw(PeakHistory history) {
        return demand.stream()
                .mapToDouble(d -> Math.max(d.fromKw, d.terms.floor(history, lossFactor).kw()) / lossFactor).toArray();
    }
}
