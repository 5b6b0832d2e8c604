package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** The limits in money of an award that is not refused. Limits that cannot bite are left out. */
final class Limits {
    private final Programme programme;
    private final Purchase purchase;
    private final LineStack stack;
    private final Purse purse;
    private final TaxRoom taxes;
    private final List<Bound> bounds = new ArrayList<>();

    Limits(Programme programme, Purchase purchase, LineStack stack, Purse purse, TaxRoom taxes) {
        this.programme = programme;
        this.purchase = purchase;
        this.stack = stack;
        this.purse = purse;
        this.taxes = taxes;
    }

    List<Bound> bounds() {
        addCap();
        add(Limit.COST, "what the programmes before it leave of the cost", Derivation.of("Cost left", stack.left(programme),
                Derivation.MONEY, "cost less what the programmes before it pay", purchase.covered(programme)));
        Stream.concat(stack.paying().stream(), Stream.of(programme)).forEach(this::addMatch);
        if (purchase.kind() == Purchase.Kind.BUS && !purse.hasBusLeft()) {
            bounds.add(Bound.refusal(Limit.BUS_COUNT, "it pays for " + programme.budget().maxBuses() + " buses at most"));
        }
        add(Limit.YEAR_BUDGET, "its budget of the year", less("Budget of the year left", purse.left(purchase.year()),
                "budgetPerYear", programme.budget().perYear()));
        add(Limit.BUDGET, "its budget", less("Budget left", purse.left(), "budget", programme.budget().total()));
        programme.payout().against().ifPresent(this::addTax);
        return bounds;
    }

    private void addTax(Payout.Tax tax) {
        double left = taxes.left(tax, purchase.year() + programme.payout().lagYears());
        add(Limit.TAX, "the tax that it can be set against", Derivation.of("Tax left", left, Derivation.MONEY,
                "tax of the years to which it can be carried less what other credits take of it",
                input("Tax of a year", tax.perYear(), "taxPerYear")));
    }

    private void addCap() {
        switch (purchase.kind()) {
            case BUS -> purchase.bus().map(b -> programme.offer().buses().get(b.bodyType())).ifPresent(a -> add(Limit.CAP,
                    "its cap per bus", Derivation.input("Cap per bus", a.cap(), Derivation.MONEY, new InputRef("BusAward",
                            programme.name() + " / " + purchase.bus().orElseThrow().bodyType(), "cap"))));
            case PORTS -> add(Limit.CAP, "its cap per port", Derivation.product("Cap of the ports", Derivation.MONEY,
                    input("Cap per port", programme.offer().ports().capPerPort(), "capPerPort"),
                    Derivation.of("Ports", purchase.count(), "", "step of the plan")));
            case SITE_WORK -> add(Limit.CAP, "its cap per site work",
                    input("Cap per site work", programme.offer().works().cap(), "capPerWork"));
            case TRAINING -> add(Limit.CAP, "its cap for training and tools",
                    input("Cap for training and tools", programme.offer().training().cap(), "trainingCap"));
        }
    }

    private void addMatch(Programme holder) {
        double room = stack.room(holder, programme);
        Derivation amount = Derivation.of("Room that the match leaves", room, Derivation.MONEY,
                "cost of which the match is still met",
                new Derivation[] {Derivation.input("Match", holder.match().share(), "",
                        new InputRef("Programme", holder.name(), "matchShare")),
                    matchBase(holder)});
        add(Limit.MATCH, "match of " + holder.name() + " from " + holder.match().from().label(), amount);
    }

    private Derivation matchBase(Programme holder) {
        return switch (holder.match().base()) {
            case COVERED -> purchase.covered(holder);
            case WHOLE -> Derivation.of("Whole cost", stack.matchBase(holder), Derivation.MONEY, "cost of the purchase, all of it");
            case AWARD -> Derivation.of("Award of " + holder.name(), stack.matchBase(holder), Derivation.MONEY,
                    "what it pays of the purchase so far; of what it pays beyond that the match is a share as well");
        };
    }

    private Derivation less(String name, double left, String field, double total) {
        return Derivation.of(name, left, Derivation.MONEY, "budget less what is paid already", input("Budget", total, field));
    }

    private Derivation input(String name, double value, String field) {
        return Derivation.input(name, value, Derivation.MONEY, new InputRef("Programme", programme.name(), field));
    }

    private void add(Limit limit, String words, Derivation amount) {
        if (amount.value() < Double.POSITIVE_INFINITY) {
            bounds.add(new Bound(limit, words, amount));
        }
    }
}
