package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.ChargeRule;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.duty.EnergyCauses;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.RouteUse;
import org.amberyard.core.tariff.BlockPrices;
import org.amberyard.core.tariff.ChargeRate;
import org.amberyard.core.tariff.ContractYears;
import org.amberyard.core.tariff.DayClass;
import org.amberyard.core.tariff.DemandCharge;
import org.amberyard.core.tariff.EnergyCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.PriceBlock;
import org.amberyard.core.tariff.Ratchet;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.ShareCharge;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.tariff.TariffPeriod;

/** Yards drawn at random with everything that can hold a schedule back, and tariffs of every kind. */
final class RandomYards {
    private static final int[] STEPS_MIN = {5, 15, 30, 60};
    private static final int DAY_MIN = 1440;
    private static final Set<Integer> SUMMER = Set.of(5, 7, 8);

    private final Random random;

    RandomYards(long seed) {
        random = new Random(seed);
    }

    YardInput yard() {
        int stepMin = STEPS_MIN[random.nextInt(STEPS_MIN.length)];
        List<YardBus> buses = IntStream.range(0, 1 + random.nextInt(4)).mapToObj(this::bus).toList();
        Metering metering = new Metering(tariff(), random.nextBoolean(), List.of(), OptionalInt.empty());
        ChargeRule rule = new ChargeRule(ChargePolicy.LEAST_COST, random.nextInt(DAY_MIN), random.nextInt(DAY_MIN));
        YardInput sample = SampleBuses.yard(buses, ports(), rule, random.nextBoolean(), metering,
                BuildingLoad.constant(random.nextInt(60), DAY_MIN / stepMin), 1 + random.nextInt(20));
        double siteLimitKw = random.nextInt(4) == 0 ? 30 + random.nextInt(120) : Double.POSITIVE_INFINITY;
        double demandIndex = random.nextBoolean() ? 1 : 0.5 + 2 * random.nextDouble();
        return new YardInput(buses, sample.ports(), rule, sample.midday(), sample.reserveShare(), metering, 1, demandIndex,
                sample.building(), sample.calendar(), stepMin, random.nextBoolean() ? sample.swaps() : new SwapTimes(300, 1260),
                siteLimitKw);
    }

    /** A yard whose plugs are fewer than its buses, without a limit of the site. */
    YardInput crowded() {
        YardInput yard = yard();
        List<PortUnit> ports = yard.ports().subList(0, Math.min(yard.ports().size(), 2));
        int plugs = ports.stream().mapToInt(PortUnit::plugs).sum();
        List<YardBus> buses = IntStream.range(0, plugs + 1 + random.nextInt(2)).mapToObj(this::bus).toList();
        return new YardInput(buses, ports, yard.rule(), yard.midday(), yard.reserveShare(), yard.metering(),
                1, yard.demandIndex(), yard.building(), yard.calendar(), yard.stepMin(), yard.swaps(), Double.POSITIVE_INFINITY);
    }

    private YardBus bus(int place) {
        Optional<RouteUse> route = random.nextInt(4) == 0 ? Optional.empty()
                : Optional.of(SampleBuses.route(18, random.nextInt(60), random.nextInt(30), random.nextInt(60)));
        EnergyUse other = new EnergyUse(1, 1, random.nextInt(3000), 0, EnergyCauses.ZERO, random.nextInt(300), 0, 0, 0);
        return new YardBus(place, "Bus " + place, random.nextInt(5) == 0 ? 0 : 19.2, random.nextInt(3) == 0 ? 0 : 60,
                SampleBuses.PACK, 0.9, route, 1, other);
    }

    private List<PortUnit> ports() {
        Port cabinet = new Port("Cabinet", true, 60, 0.92, 50, 0, 0, 10, 20, 0, 2 + random.nextInt(2));
        List<PortUnit> ports = new ArrayList<>();
        for (int port = 1 + random.nextInt(4); port > 0; port--) {
            int kind = random.nextInt(4);
            ports.add(kind == 0 ? new PortUnit(SampleBuses.DC, 1)
                    : kind == 1 ? new PortUnit(cabinet, cabinet.plugs()) : new PortUnit(SampleBuses.AC, 1));
        }
        return ports;
    }

    private Tariff tariff() {
        int fromMin = 5 * random.nextInt(DAY_MIN / 5);
        int toMin = (fromMin + 60 + 5 * random.nextInt((DAY_MIN - 120) / 5)) % DAY_MIN;
        List<EnergyCharge> energy = List.of(new EnergyCharge("On-peak", rates(hours(fromMin, toMin), energyPrices())),
                new EnergyCharge("Off-peak", rates(hours(toMin, fromMin), energyPrices())));
        List<DemandCharge> demand = new ArrayList<>();
        if (random.nextBoolean()) {
            demand.add(demand("Any time", TariffPeriod.ALWAYS));
        }
        if (random.nextBoolean()) {
            demand.add(demand("Demand on-peak", hours(fromMin, toMin)));
        }
        List<DemandCharge> riders = random.nextInt(4) == 0 ? List.of(demand("Rider", TariffPeriod.ALWAYS))
                : random.nextInt(4) == 0 ? List.of(DemandCharge.of("Credit", TariffPeriod.ALWAYS, -0.5)) : List.of();
        MinimumBill minimum = random.nextInt(4) == 0 ? MinimumBill.ofCharges(random.nextInt(600)) : MinimumBill.NONE;
        return new Tariff("T", List.of(), minimum, energy, demand, new Riders(List.of(), riders, List.of(), List.of()),
                List.of(ShareCharge.ofCharges("Tax", 0.06)), 1 + 0.03 * random.nextInt(2));
    }

    private static TariffPeriod hours(int fromMin, int toMin) {
        return new TariffPeriod(TariffPeriod.ALWAYS.months(), EnumSet.allOf(DayClass.class),
                List.of(new TariffPeriod.Hours(fromMin, toMin)));
    }

    private static List<ChargeRate> rates(TariffPeriod period, BlockPrices prices) {
        return List.of(new ChargeRate(period, ContractYears.ALL, prices));
    }

    private BlockPrices energyPrices() {
        PriceBlock first = new PriceBlock(0, 0.05 + 0.01 * random.nextInt(20));
        double next = 0.05 + 0.01 * random.nextInt(20);
        int kind = random.nextInt(6);
        return new BlockPrices(kind == 0 ? List.of(first, new PriceBlock(100 + random.nextInt(2000), next))
                : kind == 1 ? List.of(first, new PriceBlock(0, 20 + random.nextInt(200), next)) : List.of(first));
    }

    private DemandCharge demand(String name, TariffPeriod period) {
        PriceBlock first = new PriceBlock(0, random.nextInt(15));
        BlockPrices prices = new BlockPrices(random.nextInt(3) == 0
                ? List.of(first, new PriceBlock(10 + random.nextInt(60), random.nextInt(15))) : List.of(first));
        TariffPeriod counted = random.nextBoolean() ? period
                : new TariffPeriod(SUMMER, EnumSet.of(DayClass.WEEKDAY), List.of(TariffPeriod.Hours.ALL_DAY));
        Optional<Ratchet> ratchet = random.nextInt(3) > 0 ? Optional.empty()
                : Optional.of(new Ratchet(0.5 + random.nextDouble() / 2, random.nextBoolean() ? 11 : 1 + random.nextInt(11),
                        List.of(counted)));
        return new DemandCharge(name, rates(period, prices), random.nextInt(4) == 0 ? random.nextInt(40) : 0, ratchet);
    }
}
