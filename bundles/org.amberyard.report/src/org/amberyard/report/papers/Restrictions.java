package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.Exclusion;
import org.amberyard.core.funding.Programme;

/** What a programme pays, up to which limit, and what it asks for, as clauses in one line. */
final class Restrictions {
    private Restrictions() {
    }

    static String of(PaperInput in, Programme programme) {
        List<String> clauses = new ArrayList<>(ProgrammeTerms.of(in, programme));
        Conditions asks = programme.conditions();
        if (!programme.offer().buses().isEmpty()) {
            addOfBuses(clauses, asks, in.facts().dates().of(programme.name()).scrapDays());
        }
        add(clauses, asks.domesticContent(), "domestic content declared");
        if (programme.match().share() > 0) {
            clauses.add("match of " + ProgrammeTerms.percent(programme.match().share()) + " of " + programme.match().base().label()
                    + " from " + programme.match().from().label());
        }
        for (Exclusion exclusion : in.study().funding().exclusions()) {
            if (exclusion.one().equals(programme.name()) || exclusion.other().equals(programme.name())) {
                clauses.add("not with " + (exclusion.one().equals(programme.name()) ? exclusion.other() : exclusion.one()));
            }
        }
        int closeOut = in.facts().dates().of(programme.name()).closeOutDays();
        add(clauses, closeOut > 0, "closed out within " + Milestone.count(closeOut, "day") + " of the last purchase");
        String others = in.facts().funding().ofProgramme(programme.name()).restrictions();
        add(clauses, !others.isEmpty(), others);
        return String.join("; ", clauses);
    }

    private static void addOfBuses(List<String> clauses, Conditions asks, int scrapDays) {
        add(clauses, asks.newOnly(), "new buses only");
        add(clauses, asks.scrapsOldBus(), "old bus scrapped" + (scrapDays > 0 ? " within " + Milestone.count(scrapDays, "day") : ""));
        add(clauses, asks.oldDiesel(), "old bus is diesel");
        asks.latestEngineYear().ifPresent(y -> clauses.add("old engine of model year " + y + " or older"));
        asks.oldBus().words().forEach(clauses::add);
        add(clauses, asks.sameBodyType(), "same body type");
        add(clauses, asks.oneForOne(), "one for one");
        add(clauses, asks.holdYears() > 0, "held for " + Milestone.count(asks.holdYears(), "year"));
    }

    private static void add(List<String> clauses, boolean holds, String clause) {
        if (holds) {
            clauses.add(clause);
        }
    }
}
