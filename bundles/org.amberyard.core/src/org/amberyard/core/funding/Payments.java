package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;

/**
 * Turns awards into payments: cash after the programme's lag, or a credit that lowers the tax of later years, oldest credits
 * first, until its years to be carried forward are over. An award is no more than what can be used by then.
 */
public final class Payments {
    private final List<Programme> programmes;
    private final TaxRoom taxes = new TaxRoom();
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
            taxes.use(payout.against().get(), first, award.paid())
                    .forEach((year, amount) -> pay(line, award.programme(), year, amount));
        } else {
            pay(line, award.programme(), first, award.paid());
        }
    }

    private void pay(int line, int programme, int year, double amount) {
        if (amount > 0) {
            payments.add(new Payment(line, programme, year, amount));
        }
    }
}
