package org.amberyard.model.validation;

import java.util.EnumSet;
import java.util.Set;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.funding.BusAward;
import org.amberyard.model.funding.FundingPackage.Literals;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;

/** A programme's years are in order and it names each body type once. */
final class ProgrammeRule implements Rule {

    @Override
    public void check(Study study, Findings findings) {
        for (Programme programme : study.getProgrammes()) {
            if (programme.getFirstYear() > programme.getLastYear()) {
                findings.error(programme, Literals.PROGRAMME__LAST_YEAR, "its first year " + programme.getFirstYear()
                        + " is after its last year " + programme.getLastYear() + "; were they swapped?");
            }
            checkAwards(programme, findings);
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
}
