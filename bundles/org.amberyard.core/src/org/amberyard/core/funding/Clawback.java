package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Repayment in proportion: of an award for a bus that must stay in service for some years and leaves earlier, the share of the
 * years that it still owes. The amount that was awarded counts, without interest. What has not been paid out by then is not paid
 * any more, and only the rest is paid back.
 *
 * @param payments payments that are made
 * @param repayments what is paid back
 * @param withheld what is not paid any more
 */
public record Clawback(List<Payment> payments, List<Repayment> repayments, List<Withheld> withheld) {

    public Clawback {
        payments = List.copyOf(payments);
        repayments = List.copyOf(repayments);
        withheld = List.copyOf(withheld);
    }

    /**
     * Repayments within a study.
     *
     * @param ledger the awards
     * @param programmes the programmes
     * @param payments payments of the awards if every bus stayed
     * @param left year in which buses left the fleet, by their number; a bus that stays is not in it
     */
    public static Clawback of(AwardLedger ledger, List<Programme> programmes, List<Payment> payments, Map<String, Integer> left) {
        Settling settling = new Settling(programmes, new ArrayList<>(payments), new ArrayList<>(), new ArrayList<>());
        for (int line = 0; line < ledger.lines().size(); line++) {
            FundedLine funded = ledger.lines().get(line);
            Optional<Integer> year = funded.purchase().bus().map(b -> left.get(b.unit()));
            if (year.isPresent()) {
                settling.settle(line, funded, year.get());
            }
        }
        return new Clawback(settling.open, settling.repayments, settling.withheld);
    }

    /** Awards being settled, one bus that leaves after the other. */
    private record Settling(List<Programme> programmes, List<Payment> open, List<Repayment> repayments, List<Withheld> withheld) {

        void settle(int line, FundedLine funded, int year) {
            int served = year - funded.purchase().year();
            for (Award award : funded.awards()) {
                int hold = programmes.get(award.programme()).conditions().holdYears();
                double owed = owed(award.paid(), hold, served);
                double back = paidBack(open, line, award.programme(), year, owed);
                if (back > 0) {
                    repayments.add(new Repayment(line, award.programme(), year, served, back));
                }
                if (owed > back) {
                    withheld.add(new Withheld(line, award.programme(), year, owed - back));
                }
            }
        }
    }

    /** Takes what is owed off the payments that are still to come, the latest first; gives what they do not cover. */
    private static double paidBack(List<Payment> open, int line, int programme, int year, double owed) {
        double left = owed;
        List<Payment> toCome = open.stream().filter(p -> p.line() == line && p.programme() == programme && p.year() >= year)
                .sorted(Comparator.comparingInt(Payment::year).reversed()).toList();
        for (Payment payment : toCome) {
            double taken = Math.min(left, payment.amount());
            left -= taken;
            int place = open.indexOf(payment);
            if (taken < payment.amount()) {
                open.set(place, new Payment(line, programme, payment.year(), payment.amount() - taken));
            } else {
                open.remove(place);
            }
        }
        return left;
    }

    /** What is paid back of an award for a number of years to hold after a number of years of service. */
    public static double owed(double award, int holdYears, int servedYears) {
        return servedYears < holdYears ? award * (holdYears - servedYears) / holdYears : 0;
    }
}
