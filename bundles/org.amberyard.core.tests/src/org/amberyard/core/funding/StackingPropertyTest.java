package org.amberyard.core.funding;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** Rules that awards keep whatever the programmes and the plan. */
class StackingPropertyTest {
    private static final double CENT = 0.005;
    private static final int YEARS = 4;

    private static List<Programme> programmes(Random random) {
        return IntStream.range(0, 1 + random.nextInt(4)).mapToObj(i -> programme("P" + i, random)).toList();
    }

    private static Programme programme(String name, Random random) {
        SampleProgramme base = SampleProgramme.named(name).priority(random.nextInt(3))
                .kind(MoneyKind.values()[random.nextInt(MoneyKind.values().length)])
                .forYard(random.nextInt(5) / 4.0, random.nextBoolean() ? Double.POSITIVE_INFINITY : 1000.0 * random.nextInt(20))
                .forBuses(new BusAward(10_000.0 * random.nextInt(20), random.nextInt(3) / 4.0, random.nextInt(3) / 4.0,
                        random.nextBoolean() ? Double.POSITIVE_INFINITY : 20_000.0 * random.nextInt(15)))
                .forPorts(new PortAward(500.0 * random.nextInt(4), random.nextInt(5) / 4.0, 2000.0 * (1 + random.nextInt(8)),
                        PortAward.Cover.values()[random.nextInt(3)]))
                .budget(random.nextInt(8), random.nextBoolean() ? Double.POSITIVE_INFINITY : 50_000.0 * random.nextInt(12),
                        random.nextBoolean() ? Double.POSITIVE_INFINITY : 40_000.0 * random.nextInt(6))
                .match(random.nextInt(4) / 4.0, Match.From.values()[random.nextInt(2)], Match.Base.values()[random.nextInt(3)]);
        return (random.nextInt(4) == 0 ? base.afterOthers() : base).built();
    }

    private static List<Purchase> purchases(Random random, int programmes) {
        List<Purchase> purchases = new ArrayList<>();
        for (int i = 0; i < 1 + random.nextInt(10); i++) {
            Integer[] named = IntStream.range(0, programmes).filter(p -> random.nextInt(3) > 0).boxed().toArray(Integer[]::new);
            int year = random.nextInt(YEARS);
            purchases.add(switch (random.nextInt(3)) {
                case 0 -> SamplePurchase.ports(year, 1 + random.nextInt(5), 1000 * random.nextInt(30), 1000 * random.nextInt(30), named);
                case 1 -> SamplePurchase.work(year, 1000 * random.nextInt(90), named);
                default -> SamplePurchase.bus(i, year, 200_000 + 10_000 * random.nextInt(20), 100_000, named);
            });
        }
        return purchases;
    }

    private static AwardLedger stacked(List<Programme> programmes, List<Purchase> purchases) {
        return SamplePurchase.stacked(programmes, purchases.toArray(Purchase[]::new));
    }

    @Property(tries = 500)
    void noLineIsPaidForAboveItsCostAndNoAwardAboveWhatWasAsked(@ForAll Random random) {
        List<Programme> programmes = programmes(random);
        for (FundedLine line : stacked(programmes, purchases(random, programmes.size())).lines()) {
            assertTrue(line.funded() <= line.purchase().cost() + CENT);
            assertEquals(line.purchase().cost(), line.funded() + line.own(), CENT);
            line.awards().forEach(a -> assertTrue(a.paid() >= 0 && a.paid() <= a.asked().value()));
        }
    }

    /** Awards in numbers alone are those with their derivations, at the costs at which the lines were laid out and at others. */
    @Property(tries = 500)
    void sumsAreThoseOfTheWholeRules(@ForAll Random random) {
        List<Programme> programmes = programmes(random);
        List<Purchase> purchases = IntStream.range(0, 8).mapToObj(i -> SamplePurchase.bus(i, i % YEARS, 200_000 + 1000.0 * i, 100_000,
                IntStream.range(0, programmes.size()).boxed().toArray(Integer[]::new))).toList();
        AwardSums sums = new AwardSums(FundingInput.of(programmes), purchases, false);
        List<Purchase> dearer = IntStream.range(0, 8).mapToObj(i -> SamplePurchase.bus(i, i % YEARS, 90_000 + 40_000 * random.nextInt(10),
                100_000, IntStream.range(0, programmes.size()).boxed().toArray(Integer[]::new))).toList();
        assertSums(purchases, programmes, sums);
        assertSums(dearer, programmes, sums);
        List<Purchase> mixed = purchases(random, programmes.size());
        assertSums(mixed, programmes, new AwardSums(FundingInput.of(programmes), mixed, false));
    }

    private static void assertSums(List<Purchase> purchases, List<Programme> programmes, AwardSums sums) {
        double[][] parts = purchases.stream().map(p -> p.parts().stream().mapToDouble(d -> d.value()).toArray()).toArray(double[][]::new);
        double[] likeForLike = purchases.stream().mapToDouble(p -> p.bus().map(b -> b.likeForLike().value()).orElse(0.0)).toArray();
        double[] totals = new double[programmes.size()];
        sums.at(parts, likeForLike, (line, programme, paid) -> totals[programme] += paid);
        AwardLedger ledger = stacked(programmes, purchases);
        for (int p = 0; p < programmes.size(); p++) {
            assertEquals(ledger.total(p), totals[p], 1e-6);
        }
    }

    @Property(tries = 500)
    void noProgrammePaysAboveItsBudgets(@ForAll Random random) {
        List<Programme> programmes = programmes(random);
        AwardLedger ledger = stacked(programmes, purchases(random, programmes.size()));
        for (int p = 0; p < programmes.size(); p++) {
            int place = p;
            Budget budget = programmes.get(p).budget();
            assertTrue(ledger.total(p) <= budget.total() + CENT);
            for (int year = 0; year < YEARS; year++) {
                assertTrue(ledger.total(p, year) <= budget.perYear() + CENT);
            }
            assertTrue(ledger.lines().stream().filter(l -> l.purchase().kind() == Purchase.Kind.BUS).filter(
                    l -> l.awards().stream().anyMatch(a -> a.programme() == place && a.paid() > 0)).count() <= budget.maxBuses());
        }
    }

    /** Own money, or money that is not federal, stays at what each programme that pays wants of it. */
    @Property(tries = 500)
    void everyMatchIsMet(@ForAll Random random) {
        List<Programme> programmes = programmes(random).stream().filter(p -> p.offer().ports().covers() == PortAward.Cover.ALL).toList();
        for (FundedLine line : stacked(programmes, purchases(random, programmes.size())).lines()) {
            double federal = line.awards().stream().filter(a -> programmes.get(a.programme()).kind() == MoneyKind.FEDERAL)
                    .mapToDouble(Award::paid).sum();
            for (Award award : line.awards()) {
                Programme programme = programmes.get(award.programme());
                boolean own = programme.match().from() == Match.From.OWN;
                double itself = programme.kind() == MoneyKind.FEDERAL ? 0 : award.paid();
                double counted = own ? line.own() : line.purchase().cost() - federal - itself;
                boolean binds = award.paid() > 0;
                double base = programme.match().base() == Match.Base.AWARD ? award.paid() : line.purchase().cost();
                assertTrue(!binds || counted >= programme.match().share() * base - CENT);
                LineMatch match = LineMatch.of(programmes, line, award.programme());
                assertEquals(base, match.base(), CENT);
                assertEquals(counted, match.counted(), CENT);
            }
        }
    }

    @Property(tries = 300)
    void orderOfPurchasesDoesNotMatter(@ForAll Random random) {
        List<Programme> programmes = programmes(random);
        List<Purchase> purchases = purchases(random, programmes.size());
        List<Purchase> shuffled = new ArrayList<>(purchases);
        Collections.shuffle(shuffled, random);
        assertTotals(programmes, stacked(programmes, purchases), stacked(programmes, shuffled));
    }

    /** Buses of a kind change places: whoever is served first, the totals stay. */
    @Property(tries = 300)
    void placesOfBusesOfOneKindDoNotMatter(@ForAll Random random) {
        List<Programme> programmes = programmes(random);
        Integer[] named = IntStream.range(0, programmes.size()).boxed().toArray(Integer[]::new);
        List<Integer> rows = new ArrayList<>(IntStream.range(0, 6).boxed().toList());
        List<Purchase> one = rows.stream().map(r -> SamplePurchase.bus(r, r % 2, 300_000, 120_000, named)).toList();
        Collections.shuffle(rows, random);
        List<Purchase> other = IntStream.range(0, 6).mapToObj(i -> SamplePurchase.bus(rows.get(i), i % 2, 300_000, 120_000, named)).toList();
        assertTotals(programmes, stacked(programmes, one), stacked(programmes, other));
    }

    private static void assertTotals(List<Programme> programmes, AwardLedger one, AwardLedger other) {
        for (int p = 0; p < programmes.size(); p++) {
            assertEquals(one.total(p), other.total(p), CENT);
        }
    }

    /** Without one of its caps or budgets a programme pays at least what it paid with it. */
    @Property(tries = 1000)
    void removingACapNeverLowersWhatTheProgrammePays(@ForAll Random random) {
        List<Programme> programmes = programmes(random);
        List<Purchase> purchases = purchases(random, programmes.size());
        int freed = random.nextInt(programmes.size());
        List<Programme> without = new ArrayList<>(programmes);
        without.set(freed, freed(programmes.get(freed), random.nextInt(5)));
        double before = stacked(programmes, purchases).total(freed);
        double after = stacked(without, purchases).total(freed);
        assertTrue(after >= before - CENT, () -> before + " fell to " + after);
    }

    private static Programme freed(Programme p, int cap) {
        Offer o = p.offer();
        BusAward bus = o.buses().get("C");
        double none = Double.POSITIVE_INFINITY;
        SampleProgramme sample = new SampleProgramme(p);
        return (switch (cap) {
            case 0 -> new SampleProgramme(with(p, new Offer(Map.of("C", new BusAward(bus.amount(), bus.priceShare(),
                    bus.differenceShare(), none)), o.ports(), o.works(), o.training(), o.afterOthers())));
            case 1 -> sample.forPorts(new PortAward(o.ports().amountPerPort(), o.ports().share(), none, o.ports().covers()));
            case 2 -> new SampleProgramme(with(p, new Offer(o.buses(), o.ports(), new ShareAward(o.works().share(), none),
                    o.training(), o.afterOthers())));
            case 3 -> sample.budget(p.budget().maxBuses(), none, p.budget().perYear());
            default -> sample.budget(p.budget().maxBuses(), p.budget().total(), none);
        }).built();
    }

    private static Programme with(Programme p, Offer offer) {
        return new Programme(p.name(), p.kind(), p.priority(), p.firstYear(), p.lastYear(), p.probability(), offer, p.budget(),
                p.match(), p.conditions(), p.payout());
    }
}
