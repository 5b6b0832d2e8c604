package org.amberyard.core.yard;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.tariff.Tariff;

/**
 * Least cost under prices by blocks. A schedule is made at the prices of the blocks in which some load ends, priced again at the
 * blocks in which it ends itself, and so on until they stay; this from full power, from an even load and from each block, because
 * falling blocks have several such ends. The schedule made day by day stands beside them. Of what is found each month takes the
 * cheapest, or, where the tariff remembers demands, the year.
 *
 * <p>Where all blocks rise, the prices around a load make of no other more than its bill, so that what is least at them bounds all
 * bills; else no bound is known.
 */
final class BlockPlans {
    private static final int ROUNDS = 6;
    /** Money of a year that decides nothing. */
    private static final double ROUNDING_MONEY = 0.01;

    private final YardInput yard;
    private final List<MonthLoad> atFullPower;
    private final LoadMemory loads;
    private final MonthCost cost;
    private final YearPrices fullPowerPrices;
    private final LeastCostYearPlan fullPowerPlan;
    private final Set<List<Double>> seen = new HashSet<>();
    private final List<List<MonthLoad>> found = new ArrayList<>();
    private final double[] bounds;

    BlockPlans(YardInput yard, List<MonthLoad> atFullPower, LoadMemory loads) {
        this.yard = yard;
        this.atFullPower = atFullPower;
        this.loads = loads;
        this.cost = new MonthCost(yard);
        this.fullPowerPrices = new YearPrices(yard, atFullPower);
        this.fullPowerPlan = new LeastCostYearPlan(yard, atFullPower, fullPowerPrices);
        this.bounds = new double[atFullPower.size()];
        Arrays.fill(bounds, Double.NEGATIVE_INFINITY);
    }

    /** The cheapest schedules found. */
    List<MonthLoad> cheapest() {
        Tariff tariff = yard.metering().tariff();
        explore(fullPowerPrices, Optional.of(atFullPower));
        if (tariff.mostBlocks() == 1 && !tariff.remembers() && leastIsProven(found.get(0))) {
            return found.get(0);
        }
        found.add(dayByDay(tariff));
        if (tariff.mostBlocks() > 1) {
            exploreBlocks(tariff);
        }
        return tariff.remembers() ? cheapestYear() : IntStream.range(0, bounds.length).mapToObj(this::cheapestMonth).toList();
    }

    /** Packs that take less than the programme thought, and charge that only fits elsewhere, can undo what it found. */
    private static boolean leastIsProven(List<MonthLoad> scheduled) {
        return scheduled.stream().mapToDouble(m -> m.costGap().orElse(Double.POSITIVE_INFINITY)).sum() < ROUNDING_MONEY;
    }

    /** The schedule made day by day; where a month stands by itself and its least is proven it needs none beside it. */
    private List<MonthLoad> dayByDay(Tariff tariff) {
        if (tariff.mostBlocks() > 1 || tariff.remembers()) {
            return fullPowerPlan.dayByDay();
        }
        return found.get(0).stream().map(load -> leastIsProven(load) ? load : fullPowerPlan.dayByDay(load.month())).toList();
    }

    private static boolean leastIsProven(MonthLoad scheduled) {
        return scheduled.costGap().orElse(Double.POSITIVE_INFINITY) < ROUNDING_MONEY / Climate.MONTHS && wholeMissingKwh(scheduled) == 0;
    }

    private void exploreBlocks(Tariff tariff) {
        YardInput even = yard.under(ChargePolicy.SPREAD);
        explore(new YearPrices(yard, loads.unscheduled(even).year()), Optional.empty());
        for (int block = 0; block < tariff.mostBlocks(); block++) {
            explore(new YearPrices(yard, atFullPower, OptionalInt.of(block)), Optional.empty());
        }
    }

    private void explore(YearPrices start, Optional<List<MonthLoad>> pricedAt) {
        YearPrices prices = start;
        Optional<List<MonthLoad>> around = pricedAt;
        for (int round = 0; round < ROUNDS && seen.add(prices.figures()); round++) {
            LeastCostYearPlan plan = prices == fullPowerPrices ? fullPowerPlan : new LeastCostYearPlan(yard, atFullPower, prices);
            List<MonthLoad> loads = plan.withForesight();
            found.add(loads);
            if (yard.metering().tariff().mostBlocks() > 1) {
                bound(plan, prices.support() ? around : Optional.empty());
                prices = new YearPrices(yard, loads);
                around = Optional.of(loads);
            } else {
                Arrays.setAll(bounds, m -> loads.get(m).costGap().isPresent()
                        ? cost.of(loads.get(m)) - loads.get(m).costGap().getAsDouble() : bounds[m]);
            }
        }
    }

    private void bound(LeastCostYearPlan plan, Optional<List<MonthLoad>> around) {
        around.ifPresent(loads -> Arrays.setAll(bounds,
                m -> Math.max(bounds[m], cost.of(loads.get(m)) - plan.aboveBound(m, loads.get(m)))));
    }

    private MonthLoad cheapestMonth(int month) {
        Priced<MonthLoad> cheapest = found.stream().map(loads -> loads.get(month))
                .map(m -> new Priced<>(m, wholeMissingKwh(m), cost.of(m))).min(Priced.CHEAPEST).orElseThrow();
        return cheapest.load().withGap(Double.isFinite(bounds[month]) && cheapest.missingKwh() == 0
                ? OptionalDouble.of(cheapest.cost() - bounds[month]) : OptionalDouble.empty());
    }

    /** Loads with what they miss and cost, worked out once to be compared. */
    private record Priced<T>(T load, double missingKwh, double cost) {
        private static final Comparator<Priced<?>> CHEAPEST = Comparator.<Priced<?>>comparingDouble(Priced::missingKwh)
                .thenComparingDouble(Priced::cost);
    }

    private static double wholeMissingKwh(MonthLoad month) {
        return Math.rint(month.stretches().stream().mapToDouble(s -> s.times() * s.schedule().shortKwh()).sum());
    }

    private List<MonthLoad> cheapestYear() {
        return found.stream().map(loads -> new Priced<>(loads, loads.stream().mapToDouble(BlockPlans::wholeMissingKwh).sum(),
                cost.of(YardYear.of(yard, loads).parts()))).min(Priced.CHEAPEST).orElseThrow().load().stream()
                .map(m -> yard.metering().tariff().mostBlocks() == 1 ? m : m.withGap(OptionalDouble.empty())).toList();
    }
}
