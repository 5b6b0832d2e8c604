package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Turns awards into payments: cash after the programme's lag, or a credit that lowers the tax of later years, oldest credits
 * first, until its years to be carried forward are over. What is not used by then is lost.
 */
public final class Payments {
    private final List<Programme> programmes;
    private final Map<Integer, Map<Integer, Double>> taxUsed = new HashMap<>();
    private final List<Payment> payments = new ArrayList<>();

    private Payments(List<Programme> programmes) {
        this.programmes = programmes;
    }

    /** Payments of all awards, in the order of the lines. */
    public static List<Payment> of(AwardLedger ledger, List<Programme> programmes) {
        Payments made = new Payments(programmes);
        for (int line = 0; line < ledger.lines().size(); line++) {
            FundedLine funded = ledger.lines().get(line);
            for (Award award : funded.awards()) {
                made.add(line, award, funded.purchase().year());
            }
        }
        return List.copyOf(made.payments);
    }

    private void add(int line, Award award, int purchased) {
        Payout payout = programmes.get(award.programme()).payout();
        int first = purchased + payout.lagYears();
        if (payout.against().isPresent()) {
            setAgainst(payout.against().get(), line, award, first);
        } else {
            pay(line, award.programme(), first, award.paid());
        }
    }

    private void setAgainst(Payout.Tax tax, int line, Award award, int first) {
        Map<Integer, Double> used = taxUsed.computeIfAbsent(award.programme(), p -> new HashMap<>());
        double left = award.paid();
        for (int year = first; year <= first + tax.carryYears() && left > 0; year++) {
            double amount = Math.min(left, tax.perYear() - used.getOrDefault(year, 0.0));
            if (amount > 0) {
                used.merge(year, amount, Double::sum);
                pay(line, award.programme(), year, amount);
                left -= amount;
            }
        }
    }

    private void pay(int line, int programme, int year, double amount) {
        if (amount > 0) {
            payments.add(new Payment(line, programme, year, amount));
        }
    }
}
