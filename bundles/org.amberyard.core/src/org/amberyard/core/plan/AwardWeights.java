package org.amberyard.core.plan;

import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.money.CostCategory;

/** What money of a programme that moves in a year takes off a plan's present cost, and off the appropriation of a year. */
final class AwardWeights {
    private final StudyInput study;
    private final MoneyWeights weights;
    private final FundingFlow.Kind kind;

    AwardWeights(StudyInput study, FundingFlow.Kind kind) {
        this.study = study;
        this.weights = new MoneyWeights(study.money());
        this.kind = kind;
    }

    /** Off the present cost, for 1 that moves in a year. */
    double present(int year) {
        return FundingCosts.factor(study, kind, year) * weights.presentOfStated(category(year), counts(year));
    }

    /** Off the appropriation of the year in which it counts, for 1 that moves in a year. */
    double appropriation(int year) {
        return FundingCosts.factor(study, kind, year) * weights.appropriationOfStated(category(year), counts(year));
    }

    /** Year in which it counts: the last of the study for what moves later. */
    int counts(int year) {
        return Math.min(year, study.years() - 1);
    }

    private CostCategory category(int year) {
        return FundingCosts.category(study, kind, year);
    }
}
