package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What programmes pay for the lines of a plan when only what these cost is another: the same as {@link Stacking} finds, in numbers
 * without their derivations. Safe for use from several threads.
 */
public final class AwardSums {
    private final FundingInput funding;
    private final List<Line> lines = new ArrayList<>();

    /** What a programme does on a line, whatever it costs. */
    private record Offered(int programme, Programme of, Ask ask, boolean refused) {
    }

    private record Line(int place, Purchase purchase, List<Offered> offers) {
    }

    /**
     * Lines of a plan.
     *
     * @param purchases the lines, in any order; lines that differ in their cost alone keep the order that they have at these costs
     * @param certainOnly true when the plan counts on certain awards only
     */
    public AwardSums(FundingInput funding, List<Purchase> purchases, boolean certainOnly) {
        this.funding = funding;
        IntStream.range(0, purchases.size()).boxed().sorted((a, b) -> Stacking.ORDER.compare(purchases.get(a), purchases.get(b)))
                .forEach(place -> {
                    Purchase purchase = purchases.get(place);
                    List<Offered> offers = Stacking.inOrder(funding, purchase).stream().map(p -> {
                        Programme of = funding.programmes().get(p);
                        return new Offered(p, of, Ask.of(of, purchase), Refusals.refuses(of, purchase, certainOnly));
                    }).toList();
                    lines.add(new Line(place, purchase, offers));
                });
    }

    /** Takes what a programme pays for a line. */
    @FunctionalInterface
    public interface Sink {
        /**
         * An award.
         *
         * @param line place of the line in the list of purchases
         * @param programme place of the programme
         * @param paid what it pays, money of the year of purchase
         */
        void take(int line, int programme, double paid);
    }

    /**
     * Applies all programmes.
     *
     * @param parts cost of each line by part
     * @param likeForLike price of the like-for-like bus of each line; any for other lines
     */
    public void at(double[][] parts, double[] likeForLike, Sink sink) {
        Purse[] purses = new Purse[funding.programmes().size()];
        for (int i = 0; i < purses.length; i++) {
            purses[i] = new Purse(funding.programmes().get(i).budget());
        }
        TaxRoom taxes = new TaxRoom();
        for (Line line : lines) {
            LineStack stack = new LineStack(line.purchase.kind() == Purchase.Kind.PORTS, parts[line.place]);
            for (Offered offered : line.offers) {
                sink.take(line.place, offered.programme, paid(line, offered, stack, likeForLike[line.place],
                        purses[offered.programme], taxes));
            }
        }
    }

    private double paid(Line line, Offered offered, LineStack stack, double likeForLike, Purse purse, TaxRoom taxes) {
        Programme of = offered.of;
        double left = stack.left(of);
        double asked = offered.ask.of(of.offer().afterOthers() ? left : stack.covered(of), likeForLike);
        if (offered.refused || asked <= 0 || excluded(of, stack)) {
            return 0;
        }
        int year = line.purchase.year();
        double paid = roomLeft(of, stack, Math.min(Math.min(asked, offered.ask.cap()), left));
        paid = Math.min(paid, Math.min(purse.left(year), purse.left()));
        if (of.payout().against().isPresent()) {
            paid = Math.min(paid, taxes.left(of.payout().against().get(), year + of.payout().lagYears()));
        }
        if (line.purchase.kind() == Purchase.Kind.BUS) {
            paid = purse.hasBusLeft() ? paid : 0;
            purse.countBus();
        }
        purse.pay(year, paid);
        if (of.payout().against().isPresent()) {
            taxes.use(of.payout().against().get(), year + of.payout().lagYears(), paid);
        }
        stack.take(of, paid);
        return paid;
    }

    /** As much of a sum as the programme itself and those that pay already leave room for. */
    private static double roomLeft(Programme of, LineStack stack, double sum) {
        double room = Math.min(sum, stack.room(of, of));
        for (Programme holder : stack.paying()) {
            room = Math.min(room, stack.room(holder, of));
        }
        return room;
    }

    private boolean excluded(Programme of, LineStack stack) {
        for (Programme paying : stack.paying()) {
            if (funding.exclude(of, paying)) {
                return true;
            }
        }
        return false;
    }
}
