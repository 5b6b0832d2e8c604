package org.amberyard.study;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.plan.CapLevelling.Unmet;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;

/** Says in which years a plan breaks its cap as it is, and by how much. */
final class CapWords {
    private CapWords() {
    }

    /** The sentence; empty where no year is above the cap. */
    static Optional<String> broken(Study study, Plan plan, List<Unmet> above) {
        int base = study.getSettings().getBaseYear();
        return above.isEmpty() ? Optional.empty() : Optional.of("As it is, the plan breaks its cap of " + money(study, plan.getYearlyCap())
                + " a year in " + above.size() + " of " + study.getSettings().getHorizonYears() + " years, by: "
                + above.stream().map(u -> base + u.year() + " " + money(study, u.above())).collect(Collectors.joining("; ")) + ".");
    }

    private static String money(Study study, double amount) {
        return String.format(Locale.ROOT, "%s %,.0f", StudyUnits.currency(study), amount);
    }
}
