package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;

/**
 * What one more kWh or kW at the meter costs in a month, riders, percentages and taxes included: the prices of a least-cost
 * schedule. Each charge takes part with the price of the block in which an expected load ends. Not looked at are a minimum
 * bill and what a demand of this month costs in later months by a ratchet.
 */
public final class MarginalPrices {
    private static final int SET_BITS = 31;
    private static final String GREATEST = "Greatest demand, by hours of use";

    private final double lossFactor;
    private final List<PriceOfHours> energy = new ArrayList<>();
    private final List<DemandPrice> demand;
    private final boolean support;

    /** The price of an energy charge, asked in its hours. */
    private record PriceOfHours(MonthHours hours, double price) {
    }

    /**
     * Prices around an expected month.
     *
     * @throws IllegalArgumentException when the tariff has more demand charges in the month than fit in a set of 31
     */
    public MarginalPrices(TariffMonth terms, MeterMonth expected, PeakHistory history) {
        this(terms, expected, history, OptionalInt.empty());
    }

    /**
     * Prices around an expected month, or of one block.
     *
     * @param block the block whose prices are taken, counted from 0; the last where a charge has fewer
     * @throws IllegalArgumentException when the tariff has more demand charges in the month than fit in a set of 31
     */
    public MarginalPrices(TariffMonth terms, MeterMonth expected, PeakHistory history, OptionalInt block) {
        lossFactor = terms.tariff().lossFactor();
        double billedKw = terms.billedKw(expected, history);
        double blocksPerKw = 0;
        for (BillComponent component : List.of(BillComponent.ENERGY, BillComponent.RIDER)) {
            double factor = lossFactor * withShares(terms.tariff(), component);
            for (ChargeTerms charge : terms.energyTerms(component)) {
                double kwh = lossFactor * charge.hours().kwh(expected);
                int place = place(charge.prices(), kwh, billedKw, block);
                energy.add(new PriceOfHours(charge.hours(), factor * charge.prices().blocks().get(place).price()));
                blocksPerKw += factor * charge.prices().moneyPerKw(place);
            }
        }
        List<DemandPrice> charges = new ArrayList<>(demand(terms, BillComponent.DEMAND, expected, history, block));
        addToGreatest(blocksPerKw, expected, charges);
        charges.addAll(demand(terms, BillComponent.RIDER, expected, history, block));
        DemandCredits credits = DemandCredits.of(charges);
        demand = credits.prices();
        support = block.isEmpty() && credits.netted() && rising(terms);
        if (demand.size() > SET_BITS) {
            throw new IllegalArgumentException(terms.tariff().name() + " has " + demand.size()
                    + " demand charges in a month but must have no more than " + SET_BITS);
        }
    }

    private static int place(BlockPrices prices, double quantity, double billedKw, OptionalInt block) {
        return block.isEmpty() ? prices.reached(quantity, billedKw) : Math.min(block.getAsInt(), prices.blocks().size() - 1);
    }

    private List<DemandPrice> demand(TariffMonth terms, BillComponent component, MeterMonth expected, PeakHistory history,
            OptionalInt block) {
        double factor = lossFactor * withShares(terms.tariff(), component);
        return terms.demandTerms(component).stream().map(charge -> {
            double kw = charge.billed(expected, history, lossFactor).kw();
            return DemandPrice.of(charge, place(charge.charge().prices(), kw, 0, block), kw, factor);
        }).toList();
    }

    /** Blocks per kW go by the greatest demand, so what they cost is a price of it; of any demand where no charge bills one. */
    private static void addToGreatest(double pricePerKw, MeterMonth expected, List<DemandPrice> charges) {
        if (charges.isEmpty() && pricePerKw > 0) {
            MonthHours always = new MonthHours(List.of(TariffPeriod.ALWAYS), expected.month());
            ChargeTerms terms = new ChargeTerms(GREATEST, BlockPrices.flat(0), always);
            charges.add(new DemandPrice(new DemandTerms(terms, 0, Optional.empty()), 0, 0, 0));
        }
        int greatest = 0;
        for (int charge = 1; charge < charges.size(); charge++) {
            greatest = charges.get(charge).billedKw() > charges.get(greatest).billedKw() ? charge : greatest;
        }
        if (greatest < charges.size() && pricePerKw != 0) {
            DemandPrice before = charges.get(greatest);
            charges.set(greatest, before.with(Math.max(0, before.price() + pricePerKw)));
        }
    }

    private static boolean rising(TariffMonth terms) {
        return Stream.of(BillComponent.values()).allMatch(c -> terms.energyTerms(c).stream().allMatch(e -> e.prices().rising())
                && terms.demandTerms(c).stream().allMatch(d -> d.charge().prices().rising()));
    }

    /** Money on the bill for each unit of money of a component. */
    static double withShares(Tariff tariff, BillComponent component) {
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

    /**
     * True when no load has a bill below that of the expected one changed by these prices: all blocks rise. What is least at
     * these prices is then a bound of all bills.
     */
    public boolean support() {
        return support;
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
            set |= demand.get(charge).terms().charge().hours().counts(day, fromMin, toMin) ? 1 << charge : 0;
        }
        return set;
    }

    /** Price of each demand charge, money/kW at the meter; demand charges first, then riders on demand. */
    public double[] demandPrices() {
        return demand.stream().mapToDouble(DemandPrice::price).toArray();
    }

    /** Names of the demand charges. */
    public List<String> demandNames() {
        return demand.stream().map(d -> d.terms().charge().name()).toList();
    }

    /** Demand below which each demand charge does not fall, by minimum, ratchet or block, kW at the meter. */
    public double[] demandFloorsKw(PeakHistory history) {
        return demand.stream().mapToDouble(d -> d.floorKw(history, lossFactor)).toArray();
    }

    /** All prices, and where they begin: loads that end in the same blocks have the same. */
    public List<Double> figures() {
        return DoubleStream.concat(energy.stream().mapToDouble(PriceOfHours::price),
                demand.stream().flatMapToDouble(d -> DoubleStream.of(d.price(), d.fromKw()))).boxed().toList();
    }
}
