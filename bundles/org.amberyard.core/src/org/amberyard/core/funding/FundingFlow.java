package org.amberyard.core.funding;

import org.amberyard.core.money.CostCategory;
import org.amberyard.core.why.Derivation;

/**
 * Money from a programme, a credit or an aid, or back to it.
 *
 * @param kind what it is
 * @param source name of the programme, credit or aid
 * @param row row of the ledger that it goes to
 * @param year year of the study in which it moves; may lie after the study
 * @param why how its amount comes about
 */
public record FundingFlow(Kind kind, String source, int row, int year, Derivation why) {

    /** What the money is. */
    public enum Kind {
        AWARD(CostCategory.FUNDING), REPAYMENT(CostCategory.FUNDING_REPAID), CREDIT(CostCategory.CREDIT_REVENUE),
        AID(CostCategory.OPERATING_AID);

        private final CostCategory category;

        Kind(CostCategory category) {
            this.category = category;
        }

        /** Category of the ledger in which it stands while it moves within the study. */
        public CostCategory category() {
            return category;
        }
    }

    /** Its amount in money of the time when it moves; negative where it is paid back. */
    public double amount() {
        return why.value();
    }
}
