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
 */
public record Clawback(List<Payment> payments, List<Repayment> repayments) {

    public Clawback {
        payments = List.copyOf(payments);
        repayments = List.copyOf(repayments);
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
        List<Payment> open = new ArrayList<>(payments);
        List<Repayment> repayments = new ArrayList<>();
        for (int line = 0; line < ledger.lines().size(); line++) {
            FundedLine funded = ledger.lines().get(line);
            Optional<Integer> year = funded.purchase().bus().map(b -> left.get(b.unit()));
            if (year.isPresent()) {
                add(line, funded, year.get(), programmes, open, repayments);
            }
        }
        return new Clawback(open, repayments);
    }

    private static void add(int line, FundedLine funded, int year, List<Programme> programmes, List<Payment> open,
            List<Repayment> repayments) {
        int served = year - funded.purchase().year();
        for (Award award : funded.awards()) {
            int hold = programmes.get(award.programme()).conditions().holdYears();
            double amount = withheld(open, line, award.programme(), year, owed(award.paid(), hold, served));
            if (amount > 0) {
                repayments.add(new Repayment(line, award.programme(), year, served, amount));
            }
        }
    }

    /** Takes what is owed off the payments that are still to come, the latest first; gives what they do not cover. */
    private static double withheld(List<Payment> open, int line, int programme, int year, double owed) {
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
