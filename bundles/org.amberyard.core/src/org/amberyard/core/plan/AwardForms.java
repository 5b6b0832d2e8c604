package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.amberyard.core.funding.AwardSums;
import org.amberyard.core.funding.Clawback;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Purchase;

/** Awards that are paid in money, summed up without their derivations. */
final class AwardForms implements MovedAwards {
    private final StudyInput study;
    private final List<Purchase> purchases;
    private final PurchaseForms forms;
    private final AwardSums sums;
    private final Effect[][] effects;
    private final boolean[] scrapped;

    /**
     * What 1 awarded for a line takes off the results of a plan.
     *
     * @param scraps true when an old bus is scrapped for it
     */
    private record Effect(double present, int paidIn, double paid, int repaidIn, double repaid, boolean scraps) {
    }

    AwardForms(PlanResult plan, PricePoints points) {
        study = points.book().study();
        purchases = plan.costs().lines().at(points.book());
        forms = new PurchaseForms(plan.costs().lines(), points);
        sums = new AwardSums(study.funding(), purchases, plan.plan().certainAwardsOnly());
        FleetHistory fleet = plan.costs().course().fleet();
        Map<String, Integer> leaving = PlanFunding.leaving(fleet);
        effects = purchases.stream().map(purchase -> study.funding().programmes().stream()
                .map(programme -> effect(purchase, programme, leaving)).toArray(Effect[]::new)).toArray(Effect[][]::new);
        scrapped = new boolean[purchases.size()];
        for (int line = 0; line < scrapped.length; line++) {
            scrapped[line] = purchases.get(line).bus().flatMap(NewBus::old).filter(old -> fleet.scrapped().contains(old.unit()))
                    .isPresent();
        }
    }

    /** What is to be paid back of an award that comes only after the bus has left is not paid at all. */
    private Effect effect(Purchase purchase, Programme programme, Map<String, Integer> leaving) {
        AwardWeights paid = new AwardWeights(study, FundingFlow.Kind.AWARD);
        AwardWeights repaid = new AwardWeights(study, FundingFlow.Kind.REPAYMENT);
        int year = purchase.year() + programme.payout().lagYears();
        boolean scraps = programme.conditions().scrapsOldBus() && purchase.bus().flatMap(NewBus::old).isPresent();
        int left = purchase.bus().map(b -> leaving.getOrDefault(b.unit(), Integer.MAX_VALUE)).orElse(Integer.MAX_VALUE);
        double owed = left == Integer.MAX_VALUE ? 0
                : Clawback.owed(1, programme.conditions().holdYears(), left - purchase.year());
        double kept = year >= left ? 1 - owed : 1;
        double back = year >= left || owed == 0 ? 0 : owed;
        int backIn = back > 0 ? left : year;
        return new Effect(kept * paid.present(year) - back * repaid.present(backIn), paid.counts(year),
                kept * paid.appropriation(year), repaid.counts(backIn), back * repaid.appropriation(backIn), scraps);
    }

    @Override
    public boolean take(double[] prices, double[] results, int presentCost, int appropriations) {
        double[][] parts = new double[purchases.size()][];
        double[] likeForLike = new double[parts.length];
        for (int line = 0; line < parts.length; line++) {
            parts[line] = forms.parts(line, prices);
            likeForLike[line] = forms.likeForLike(line, prices);
        }
        boolean[] scraps = new boolean[parts.length];
        sums.at(parts, likeForLike, (line, programme, paid) -> {
            Effect effect = effects[line][programme];
            results[presentCost] -= paid * effect.present;
            results[appropriations + effect.paidIn] -= paid * effect.paid;
            results[appropriations + effect.repaidIn] += paid * effect.repaid;
            scraps[line] |= effect.scraps && paid > 0;
        });
        return Arrays.equals(scraps, scrapped);
    }
}
