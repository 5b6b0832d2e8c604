package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.why.Derivation;

/** Why a programme does not take part in a line at all. */
final class Refusals {
    private final FundingInput funding;
    private final boolean certainOnly;

    Refusals(FundingInput funding, boolean certainOnly) {
        this.funding = funding;
        this.certainOnly = certainOnly;
    }

    /** True when a programme takes no part in a line whatever this costs and whoever pays before. */
    static boolean refuses(Programme programme, Purchase purchase, boolean certainOnly) {
        return certainOnly && !programme.isCertain() || !byRules(programme, purchase).isEmpty();
    }

    List<Bound> of(int place, Purchase purchase, Derivation asked, LineStack stack) {
        Programme programme = funding.programmes().get(place);
        List<Bound> refusals = new ArrayList<>();
        if (asked.value() <= 0) {
            refusals.add(Bound.refusal(Limit.NO_AWARD, "it has no award for this"));
        }
        if (certainOnly && !programme.isCertain()) {
            refusals.add(Bound.refusal(Limit.UNCERTAIN, "the plan counts on certain awards only"));
        }
        outOfWindow(programme, purchase).ifPresent(r -> refusals.add(Bound.refusal(r.limit(), r.words())));
        stack.paying().stream().filter(p -> funding.exclude(programme, p)).findFirst().ifPresent(p -> refusals.add(
                Bound.refusal(Limit.EXCLUSION, "it may not be combined with " + p.name() + ", which pays first")));
        List<Refusal> failed = programme.conditions().failedBy(purchase);
        if (!failed.isEmpty()) {
            refusals.add(Bound.refusal(Limit.CONDITION, failed.stream().map(Refusal::words).collect(Collectors.joining("; "))));
        }
        return refusals;
    }

    /** What the rules of a programme have against a line, whatever this costs and whoever pays besides. */
    static List<Refusal> byRules(Programme programme, Purchase purchase) {
        return Stream.concat(outOfWindow(programme, purchase).stream(), programme.conditions().failedBy(purchase).stream()).toList();
    }

    private static Optional<Refusal> outOfWindow(Programme programme, Purchase purchase) {
        return programme.paysIn(purchase.year()) ? Optional.empty() : Optional.of(new Refusal(Limit.WINDOW,
                purchase.year() < programme.firstYear() ? "firstYear" : "lastYear", "it pays for purchases of other years"));
    }
}
