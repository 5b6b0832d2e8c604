package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.common.Month;
import org.amberyard.model.site.MonthClimate;
import org.amberyard.model.site.Site;
import org.amberyard.model.site.SitePackage.Literals;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** The climate names each month once, and its temperatures are in order. */
final class ClimateRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        Site site = study.getSite();
        if (site == null) {
            return;
        }
        checkMonths(site, findings);
        for (MonthClimate month : site.getClimate()) {
            checkOrder(month, Literals.MONTH_CLIMATE__MEAN_LOW_C, Literals.MONTH_CLIMATE__MEAN_HIGH_C, findings);
            checkOrder(month, Literals.MONTH_CLIMATE__COLDEST_LOW_C, Literals.MONTH_CLIMATE__COLDEST_HIGH_C, findings);
            checkExtremes(month, findings);
        }
    }

    private static void checkMonths(Site site, Findings findings) {
        List<Month> missing = new ArrayList<>(Month.VALUES);
        Set<Month> seen = EnumSet.noneOf(Month.class);
        for (MonthClimate month : site.getClimate()) {
            missing.remove(month.getMonth());
            if (!seen.add(month.getMonth())) {
                findings.error(month, Literals.MONTH_CLIMATE__MONTH, "the month appears more than once; keep one.");
            }
        }
        if (!missing.isEmpty()) {
            findings.error(site, Literals.SITE__CLIMATE, "the climate lacks "
                    + missing.stream().map(Month::getLiteral).collect(Collectors.joining(", ")) + "; add a row for each.");
        }
    }

    private static void checkOrder(MonthClimate month, EAttribute low, EAttribute high, Findings findings) {
        if ((double) month.eGet(low) > (double) month.eGet(high)) {
            findings.error(month, low, findings.fact(month, low) + ", above the " + Findings.label(high) + " of "
                    + findings.value(month, high) + "; were they swapped?");
        }
    }

    private static void checkExtremes(MonthClimate month, Findings findings) {
        if (month.getColdestLowC() > month.getMeanLowC()) {
            warn(month, Literals.MONTH_CLIMATE__COLDEST_LOW_C, "above", Literals.MONTH_CLIMATE__MEAN_LOW_C, findings);
        }
        if (month.getHottestHighC() < month.getMeanHighC()) {
            warn(month, Literals.MONTH_CLIMATE__HOTTEST_HIGH_C, "below", Literals.MONTH_CLIMATE__MEAN_HIGH_C, findings);
        }
    }

    private static void warn(MonthClimate month, EAttribute extreme, String side, EAttribute mean, Findings findings) {
        findings.warning(month, extreme, findings.fact(month, extreme) + ", " + side + " the " + Findings.label(mean)
                + " of " + findings.value(month, mean) + "; check both.");
    }
}
