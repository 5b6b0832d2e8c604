package org.amberyard.core.plan;

import java.util.HashSet;
import java.util.Set;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.OldBus;
import org.amberyard.core.funding.Stacking;

/** Awards for what a plan buys, and the old buses that they have scrapped. */
final class PlanAwards {
    private PlanAwards() {
    }

    /** Awards for the purchases of a plan. */
    static AwardLedger of(PriceBook book, PlanInput plan, PurchaseLines lines) {
        return Stacking.of(book.study().funding(), lines.at(book), plan.certainAwardsOnly());
    }

    /** Numbers of the old buses that are scrapped, because a programme that asks for it pays for the new one. */
    static Set<String> scrapped(StudyInput study, AwardLedger awards) {
        Set<String> units = new HashSet<>();
        for (FundedLine line : awards.lines()) {
            if (line.awards().stream().anyMatch(a -> scraps(study, a))) {
                line.purchase().bus().flatMap(NewBus::old).map(OldBus::unit).ifPresent(units::add);
            }
        }
        return units;
    }

    private static boolean scraps(StudyInput study, Award award) {
        return award.paid() > 0 && study.funding().programmes().get(award.programme()).conditions().scrapsOldBus();
    }
}
