package org.amberyard.core.funding;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.why.Derivation;

/** Lines for tests. */
final class SamplePurchase {
    /** The old bus of {@link #bus}. */
    static final OldBus OLD = new OldBus("B01", "C", true, 2009, true);

    private SamplePurchase() {
    }

    /** An electric bus in place of {@link #OLD}. */
    static Purchase bus(int row, int year, double price, double likeForLike, Integer... programmes) {
        return bus(row, year, price, likeForLike, Optional.of(OLD), programmes);
    }

    static Purchase bus(int row, int year, double price, double likeForLike, Optional<OldBus> old, Integer... programmes) {
        NewBus bus = new NewBus("N" + row + "-" + year, "C", true, false, money("like for like", likeForLike), old,
                old.isPresent() && old.get().leaves());
        return new Purchase(Purchase.Kind.BUS, bus.unit(), row, year, 1, List.of(money("price", price)), Optional.of(bus), false,
                List.of(programmes));
    }

    static Purchase ports(int year, int count, double hardware, double installation, Integer... programmes) {
        return new Purchase(Purchase.Kind.PORTS, count + " ports", 9, year, count,
                List.of(money("hardware", hardware), money("installation", installation)), Optional.empty(), true,
                List.of(programmes));
    }

    static Purchase work(int year, double price, Integer... programmes) {
        return new Purchase(Purchase.Kind.SITE_WORK, "Trench", 9, year, 1, List.of(money("price", price)), Optional.empty(), true,
                List.of(programmes));
    }

    private static Derivation money(String name, double value) {
        return Derivation.of(name, value, Derivation.MONEY, "given");
    }

    static AwardLedger stacked(List<Programme> programmes, Purchase... purchases) {
        return Stacking.of(FundingInput.of(programmes), List.of(purchases), false);
    }

    static double[] paid(FundedLine line) {
        return IntStream.range(0, line.awards().size()).mapToDouble(i -> line.awards().get(i).paid()).toArray();
    }
}
