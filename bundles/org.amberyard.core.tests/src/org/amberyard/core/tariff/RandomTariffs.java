package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;

/** Tariffs and loads of every shape, made from a seed. */
final class RandomTariffs {
    private static final int MONTHS = 12;
    private static final int STEPS = 48;

    private final Random random;

    RandomTariffs(long seed) {
        random = new Random(seed);
    }

    /** Energy by time of use with blocks, two demand charges, all kinds of riders, a minimum bill and taxes. */
    Tariff tariff(boolean ratcheted) {
        Optional<Ratchet> ratchet = Optional.of(Ratchet.anyTime(random.nextDouble(), 1 + random.nextInt(14)));
        int from = random.nextInt(1440);
        int to = (from + 1 + random.nextInt(1438)) % 1440;
        TariffPeriod peak = new TariffPeriod(Set.of(0, 1, 5, 6, 7, 11), Set.of(DayClass.WEEKDAY),
                List.of(new TariffPeriod.Hours(from, to)));
        List<EnergyCharge> energy = List.of(energy("All hours", TariffPeriod.ALWAYS), energy("On top", peak));
        List<DemandCharge> demand = List.of(
                new DemandCharge("Any time", List.of(rate(TariffPeriod.ALWAYS, 50)), 5 * random.nextDouble(),
                        ratcheted ? ratchet : Optional.empty()),
                DemandCharge.of("Peak", peak, 10 * random.nextDouble()));
        Riders riders = new Riders(List.of(energy("Fuel", TariffPeriod.ALWAYS)),
                List.of(DemandCharge.of("Line", TariffPeriod.ALWAYS, random.nextDouble())),
                List.of(FixedCharge.daily("Meter", random.nextDouble())),
                List.of(new ShareCharge("Surcharge", 0.1 * random.nextDouble(),
                        Set.of(BillComponent.ENERGY, BillComponent.CUSTOMER, BillComponent.RIDER))));
        List<ShareCharge> taxes = List.of(ShareCharge.ofCharges("State tax", 0.08 * random.nextDouble()),
                new ShareCharge("City tax", 0.03 * random.nextDouble(), Set.of(BillComponent.DEMAND, BillComponent.TAX)));
        return new Tariff("Random", List.of(FixedCharge.monthly("Customer", 100 * random.nextDouble())),
                MinimumBill.ofCharges(3000 * random.nextDouble()), energy, demand, riders, taxes,
                0.95 + 0.1 * random.nextDouble());
    }

    private EnergyCharge energy(String name, TariffPeriod period) {
        return new EnergyCharge(name, List.of(rate(period, 20_000)));
    }

    private ChargeRate rate(TariffPeriod period, double width) {
        double second = width * random.nextDouble() + 1;
        return new ChargeRate(period, ContractYears.ALL,
                new BlockPrices(List.of(new PriceBlock(0, random.nextDouble()), new PriceBlock(second, random.nextDouble()),
                        new PriceBlock(second + width, random.nextDouble()))));
    }

    /** Twelve months of four kinds of days, from a random month on. */
    List<MeterMonth> year() {
        int first = random.nextInt(MONTHS);
        return IntStream.range(0, MONTHS).mapToObj(m -> month((first + m) % MONTHS)).toList();
    }

    private MeterMonth month(int month) {
        List<LoadDay> days = new ArrayList<>();
        double size = 200 * random.nextDouble();
        for (DayClass day : DayClass.values()) {
            double[] kw = IntStream.range(0, STEPS).mapToDouble(s -> size * random.nextDouble()).toArray();
            days.add(new LoadDay(day.label(), day, random.nextInt(22), kw));
        }
        return new MeterMonth(month, days);
    }

    /** The same months with more load in some steps. */
    List<MeterMonth> raised(List<MeterMonth> months) {
        return months.stream().map(m -> new MeterMonth(m.month(), m.days().stream()
                .map(d -> new LoadDay(d.label(), d.dayClass(), d.days(), IntStream.range(0, d.kw().length)
                        .mapToDouble(s -> d.kw()[s] + Math.max(0, 40 * random.nextDouble() - 20)).toArray()))
                .toList())).toList();
    }

    /** A tariff with every price in money changed and every share kept. */
    static Tariff priced(Tariff tariff, DoubleUnaryOperator price) {
        Riders riders = tariff.riders();
        return new Tariff(tariff.name(), fixed(tariff.customer(), price),
                new MinimumBill(price.applyAsDouble(tariff.minimum().amount()), tariff.minimum().counts()),
                energy(tariff.energy(), price), demand(tariff.demand(), price), new Riders(energy(riders.perKwh(), price),
                        demand(riders.perKw(), price), fixed(riders.fixed(), price), riders.shares()),
                tariff.taxes(), tariff.lossFactor());
    }

    private static List<FixedCharge> fixed(List<FixedCharge> charges, DoubleUnaryOperator price) {
        return charges.stream()
                .map(c -> new FixedCharge(c.name(), price.applyAsDouble(c.price()), c.unit(), c.years())).toList();
    }

    private static List<EnergyCharge> energy(List<EnergyCharge> charges, DoubleUnaryOperator price) {
        return charges.stream().map(c -> new EnergyCharge(c.name(), rates(c.rates(), price))).toList();
    }

    private static List<DemandCharge> demand(List<DemandCharge> charges, DoubleUnaryOperator price) {
        return charges.stream()
                .map(c -> new DemandCharge(c.name(), rates(c.rates(), price), c.minimumKw(), c.ratchet())).toList();
    }

    private static List<ChargeRate> rates(List<ChargeRate> rates, DoubleUnaryOperator price) {
        return rates.stream().map(r -> new ChargeRate(r.period(), r.years(), new BlockPrices(r.prices().blocks().stream()
                .map(b -> new PriceBlock(b.from(), b.fromPerKw(), price.applyAsDouble(b.price()))).toList()))).toList();
    }
}
