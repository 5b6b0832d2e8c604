package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.amberyard.core.why.Derivation;

/**
 * Applies programmes to the lines of a plan: lines by year, buses before ports, works and training, buses for the oldest
 * engines first and then by number, so that the order of the fleet list decides nothing; on each line the programmes
 * that the plan names for it by their priority. Each gets what it asks within its limits, and all of them together never more
 * than the cost.
 */
public final class Stacking {
    /** Which buses come first, for tables; {@link #ORDER} in words. */
    public static final String ORDER_WORDS = "by year of purchase, in a year buses for the oldest engines first, then by number";

    static final Comparator<Purchase> ORDER = Comparator.comparingInt(Purchase::year).thenComparing(Purchase::kind)
            .thenComparingInt(Stacking::engineReplaced).thenComparing(Purchase::name).thenComparingDouble(Purchase::cost)
            .thenComparingInt(Purchase::count).thenComparing(p -> p.programmes().toString());

    private final FundingInput funding;
    private final boolean certainOnly;
    private final List<Purse> purses;
    private final TaxRoom taxes = new TaxRoom();

    private Stacking(FundingInput funding, boolean certainOnly) {
        this.funding = funding;
        this.certainOnly = certainOnly;
        this.purses = funding.programmes().stream().map(p -> new Purse(p.budget())).toList();
    }

    /**
     * Awards of the lines of a plan.
     *
     * @param funding the programmes and which of them exclude each other
     * @param purchases the lines, in any order
     * @param certainOnly true when the plan counts on certain awards only
     */
    public static AwardLedger of(FundingInput funding, List<Purchase> purchases, boolean certainOnly) {
        Stacking stacking = new Stacking(funding, certainOnly);
        return new AwardLedger(purchases.stream().sorted(ORDER).map(stacking::line).toList());
    }

    /** Model year of the engine that leaves for a bus; what replaces none comes last. */
    private static int engineReplaced(Purchase purchase) {
        return purchase.bus().flatMap(NewBus::old).map(OldBus::engineModelYear).orElse(Integer.MAX_VALUE);
    }

    private FundedLine line(Purchase purchase) {
        LineStack stack = new LineStack(purchase);
        List<Award> awards = new ArrayList<>();
        inOrder(funding, purchase).forEach(p -> awards.add(award(p, purchase, stack)));
        return new FundedLine(purchase, awards);
    }

    /** Programmes that the plan names for a line, in the order in which they are applied. */
    static List<Integer> inOrder(FundingInput funding, Purchase purchase) {
        return purchase.programmes().stream().distinct().sorted(Comparator
                .comparingInt((Integer p) -> funding.programmes().get(p).priority()).thenComparingInt(p -> p)).toList();
    }

    private Award award(int place, Purchase purchase, LineStack stack) {
        Programme programme = funding.programmes().get(place);
        Purse purse = purses.get(place);
        Derivation asked = Asking.of(programme, purchase, stack);
        List<Bound> bounds = new Refusals(funding, certainOnly).of(place, purchase, asked, stack);
        bounds.addAll(new Limits(programme, purchase, stack, purse, taxes).bounds());
        Award award = new Award(place, asked, bounds);
        if (award.takesPart() && purchase.kind() == Purchase.Kind.BUS) {
            purse.countBus();
        }
        purse.pay(purchase.year(), award.paid());
        programme.payout().against().ifPresent(tax -> taxes.use(tax, purchase.year() + programme.payout().lagYears(), award.paid()));
        stack.take(programme, award.paid());
        return award;
    }
}
