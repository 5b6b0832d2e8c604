package org.amberyard.study;

import java.util.Map;
import java.util.stream.Collectors;
import org.amberyard.core.funding.Budget;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Match;
import org.amberyard.core.funding.MoneyKind;
import org.amberyard.core.funding.Offer;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.funding.PortAward;
import org.amberyard.core.funding.ShareAward;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.study.Study;

/** Compiles funding programmes. */
final class FundingCompiler {
    private final Study study;
    private final int baseYear;

    FundingCompiler(Study study) {
        this.study = study;
        this.baseYear = study.getSettings().getBaseYear();
    }

    FundingInput compile() {
        return FundingInput.of(study.getProgrammes().stream().map(this::programme).toList());
    }

    private org.amberyard.core.funding.Programme programme(Programme programme) {
        return new org.amberyard.core.funding.Programme(programme.getName(), MoneyKind.STATE, 1,
                programme.getFirstYear() - baseYear, programme.getLastYear() - baseYear, 1, offer(programme),
                Budget.ofBuses(programme.getMaxBuses()), Match.NONE,
                programme.isScrapsOldBus() ? Conditions.SCRAP : Conditions.NONE, Payout.ADVANCE);
    }

    private static Offer offer(Programme programme) {
        Map<String, BusAward> buses = programme.getBusAwards().stream().collect(Collectors.toMap(
                a -> a.getBodyType().getLiteral(), a -> new BusAward(a.getAmount(), 0, a.getPriceDifferenceShare(), a.getCap())));
        return new Offer(buses, new PortAward(0, programme.getInfrastructureShare(), programme.getCapPerPort(), PortAward.Cover.ALL),
                new ShareAward(programme.getInfrastructureShare(), Double.POSITIVE_INFINITY), ShareAward.NONE, false);
    }
}
