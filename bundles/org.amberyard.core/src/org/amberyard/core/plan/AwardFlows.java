package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.Payment;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Repayment;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** Awards as money that moves: paid out, or paid back. */
final class AwardFlows {
    private final AwardLedger awards;
    private final List<Programme> programmes;

    AwardFlows(AwardLedger awards, List<Programme> programmes) {
        this.awards = awards;
        this.programmes = programmes;
    }

    FundingFlow of(Payment payment) {
        FundedLine line = awards.lines().get(payment.line());
        Programme programme = programmes.get(payment.programme());
        Derivation award = why(line, payment.programme());
        Derivation paid = payment.amount() == award.value() ? award : Derivation.of("part of the award used in the year",
                payment.amount(), Derivation.MONEY, "what is paid of it at this time: within the tax of the year, less what would have to be paid back", award);
        return new FundingFlow(FundingFlow.Kind.AWARD, programme.name(), line.purchase().row(), payment.year(), paid);
    }

    FundingFlow of(Repayment repayment) {
        FundedLine line = awards.lines().get(repayment.line());
        Programme programme = programmes.get(repayment.programme());
        Derivation why = Derivation.of("award paid back", -repayment.amount(), Derivation.MONEY,
                "the award in proportion to the years that the bus was still to serve", why(line, repayment.programme()),
                Derivation.input("years to serve", programme.conditions().holdYears(), "year",
                        new InputRef("Programme", programme.name(), "holdYears")),
                Derivation.of("years served", repayment.servedYears(), "year", "year of leaving less year of purchase"));
        return new FundingFlow(FundingFlow.Kind.REPAYMENT, programme.name(), line.purchase().row(), repayment.year(), why);
    }

    private Derivation why(FundedLine line, int programme) {
        Award award = line.awards().stream().filter(a -> a.programme() == programme).findFirst().orElseThrow();
        return award.why("award of " + programmes.get(programme).name() + " for " + line.purchase().name());
    }
}
