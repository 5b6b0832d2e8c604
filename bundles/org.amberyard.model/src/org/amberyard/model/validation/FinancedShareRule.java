package org.amberyard.model.validation;

import java.util.List;
import org.amberyard.model.plans.FinancedPurchases;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;

/** No purchase is financed more than once. */
final class FinancedShareRule implements Rule {
    private static final double ROUNDING = 1e-9;

    @Override
    public void check(Study study, Findings findings) {
        Settings settings = study.getSettings();
        if (settings == null) {
            return;
        }
        for (Plan plan : study.getPlans()) {
            check(plan, FinancedPurchases.BUSES, "buses", settings, findings);
            check(plan, FinancedPurchases.PORTS_AND_WORKS, "ports and site works", settings, findings);
        }
    }

    private static void check(Plan plan, FinancedPurchases purchases, String words, Settings settings, Findings findings) {
        for (int year = settings.getBaseYear(); year < settings.getBaseYear() + settings.getHorizonYears(); year++) {
            List<Financing> covering = covering(plan, purchases, year);
            double share = covering.stream().mapToDouble(Financing::getShare).sum();
            if (share > 1 + ROUNDING) {
                Financing last = covering.get(covering.size() - 1);
                findings.error(last, Literals.FINANCING__SHARE, "with it " + Math.round(100 * share) + " % of the " + words
                        + " of " + year + " are financed; together it may be at most 100 %.");
                return;
            }
        }
    }

    private static List<Financing> covering(Plan plan, FinancedPurchases purchases, int year) {
        return plan.getFinancing().stream().filter(f -> f.getKind() != FinancingKind.CASH && f.getDrawnSum() == 0
                && (f.getCovers() == FinancedPurchases.ALL || f.getCovers() == purchases)
                && year >= f.getFirstYear() && (f.getLastYear() == 0 || year <= f.getLastYear())).toList();
    }
}
