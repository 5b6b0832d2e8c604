package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Repayment in proportion: of an award for a bus that must stay in service for some years and leaves earlier, the share of the
 * years that it still owes. The amount that was awarded counts, without interest.
 */
public final class Clawback {
    private Clawback() {
    }

    /**
     * Repayments within a study.
     *
     * @param ledger the awards
     * @param programmes the programmes
     * @param left year in which buses left the fleet, by their number; a bus that stays is not in it
     */
    public static List<Repayment> of(AwardLedger ledger, List<Programme> programmes, Map<String, Integer> left) {
        List<Repayment> repayments = new ArrayList<>();
        for (int line = 0; line < ledger.lines().size(); line++) {
            FundedLine funded = ledger.lines().get(line);
            Optional<Integer> year = funded.purchase().bus().map(b -> left.get(b.unit()));
            if (year.isPresent()) {
                add(line, funded, year.get(), programmes, repayments);
            }
        }
        return repayments;
    }

    private static void add(int line, FundedLine funded, int year, List<Programme> programmes, List<Repayment> repayments) {
        int served = year - funded.purchase().year();
        for (Award award : funded.awards()) {
            int hold = programmes.get(award.programme()).conditions().holdYears();
            double amount = owed(award.paid(), hold, served);
            if (amount > 0) {
                repayments.add(new Repayment(line, award.programme(), year, served, amount));
            }
        }
    }

    /** What is paid back of an award for a number of years to hold after a number of years of service. */
    public static double owed(double award, int holdYears, int servedYears) {
        return servedYears < holdYears ? award * (holdYears - servedYears) / holdYears : 0;
    }
}
