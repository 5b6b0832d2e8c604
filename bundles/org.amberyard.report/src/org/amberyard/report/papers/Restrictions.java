package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.Exclusion;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Programme;

/** What a programme asks for, as clauses in one line. */
final class Restrictions {
    private Restrictions() {
    }

    static String of(FundingInput funding, Programme programme) {
        List<String> clauses = new ArrayList<>();
        Conditions asks = programme.conditions();
        add(clauses, asks.newOnly(), "new buses only");
        add(clauses, asks.scrapsOldBus(), "old bus scrapped");
        add(clauses, asks.oldDiesel(), "old bus is diesel");
        asks.latestEngineYear().ifPresent(y -> clauses.add("old engine of model year " + y + " or older"));
        add(clauses, asks.sameBodyType(), "same body type");
        add(clauses, asks.oneForOne(), "one for one");
        add(clauses, asks.domesticContent(), "domestic content declared");
        add(clauses, asks.holdYears() > 0, "held for " + asks.holdYears() + " years");
        if (programme.match().share() > 0) {
            clauses.add(String.format(Locale.ROOT, "match of %.1f %% from %s", 100 * programme.match().share(), programme.match()
                    .from().label()));
        }
        for (Exclusion exclusion : funding.exclusions()) {
            if (exclusion.one().equals(programme.name()) || exclusion.other().equals(programme.name())) {
                clauses.add("not with " + (exclusion.one().equals(programme.name()) ? exclusion.other() : exclusion.one()));
            }
        }
        return String.join("; ", clauses);
    }

    private static void add(List<String> clauses, boolean holds, String clause) {
        if (holds) {
            clauses.add(clause);
        }
    }
}
