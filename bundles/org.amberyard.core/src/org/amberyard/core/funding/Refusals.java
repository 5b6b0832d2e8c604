package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
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
        return certainOnly && !programme.isCertain() || !programme.paysIn(purchase.year())
                || !programme.conditions().failedBy(purchase).isEmpty();
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
        if (!programme.paysIn(purchase.year())) {
            refusals.add(Bound.refusal(Limit.WINDOW, "it pays for purchases of other years"));
        }
        stack.paying().stream().filter(p -> funding.exclude(programme, p)).findFirst().ifPresent(p -> refusals.add(
                Bound.refusal(Limit.EXCLUSION, "it may not be combined with " + p.name() + ", which pays first")));
        List<String> failed = programme.conditions().failedBy(purchase);
        if (!failed.isEmpty()) {
            refusals.add(Bound.refusal(Limit.CONDITION, String.join("; ", failed)));
        }
        return refusals;
    }
}
