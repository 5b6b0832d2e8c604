package org.amberyard.model.validation;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.funding.BusAward;
import org.amberyard.model.funding.CreditUse;
import org.amberyard.model.funding.FundingPackage.Literals;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** A programme's years and dates are in order, it names each body type once, and what it pays can be used. */
final class ProgrammeRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Programme programme : study.getProgrammes()) {
            if (programme.getFirstYear() > programme.getLastYear()) {
                findings.error(programme, Literals.PROGRAMME__LAST_YEAR, "its first year " + programme.getFirstYear()
                        + " is after its last year " + programme.getLastYear() + "; were they swapped?");
            }
            checkDates(programme, findings);
            checkAwards(programme, findings);
            checkUse(programme, findings);
        }
    }

    private static Optional<LocalDate> checkedDate(Programme programme, EAttribute field, Findings findings) {
        String date = (String) programme.eGet(field);
        if (date == null || date.isBlank()) {
            return Optional.empty();
        }
        Optional<LocalDate> day = IsoDay.of(date);
        if (day.isEmpty()) {
            findings.error(programme, field, Findings.label(field) + " is “" + date
                    + "”; it must be a day of the calendar as year, month and day, such as 2026-07-01.");
        }
        return day;
    }

    private static void checkDates(Programme programme, Findings findings) {
        checkedDate(programme, Literals.PROGRAMME__AWARD_DATE, findings);
        Optional<LocalDate> from = checkedDate(programme, Literals.PROGRAMME__FIRST_DATE, findings);
        Optional<LocalDate> by = checkedDate(programme, Literals.PROGRAMME__LAST_DATE, findings);
        if (from.isPresent() && by.isPresent() && from.get().isAfter(by.get())) {
            findings.error(programme, Literals.PROGRAMME__LAST_DATE, "its first date " + from.get() + " is after its last date "
                    + by.get() + "; were they swapped?");
        }
    }

    private static void checkAwards(Programme programme, Findings findings) {
        Set<BodyType> seen = EnumSet.noneOf(BodyType.class);
        for (BusAward award : programme.getBusAwards()) {
            if (!seen.add(award.getBodyType())) {
                findings.error(award, Literals.BUS_AWARD__BODY_TYPE, "there is more than one award for body type "
                        + award.getBodyType().getLiteral() + "; keep one.");
            }
        }
    }

    private static void checkUse(Programme programme, Findings findings) {
        if (programme.getExcludes().contains(programme)) {
            findings.error(programme, Literals.PROGRAMME__EXCLUDES, "it is said not to be combined with itself; name others only.");
        }
        if (programme.getCreditUse() == CreditUse.AGAINST_TAX && programme.getTaxPerYear() == 0) {
            findings.warning(programme, Literals.PROGRAMME__TAX_PER_YEAR,
                    "it is set against tax and no tax is owed, so it brings nothing; enter the tax or have it paid in cash.");
        }
    }
}
