package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Costs a study anew after an edit of prices or payment alone: no bus is driven, no yard charged, no task of the shop planned
 * again. What prices decide is asked again: whether worn buses get another pack, which old buses programmes have scrapped, and
 * what proportion of demand to energy prices a least-cost yard sees. Where that comes out otherwise, or the edit reaches
 * further, the study must be evaluated as a whole.
 */
public final class StudyRecosting {
    private final StudyInput edited;
    private final StudyResult before;

    private StudyRecosting(StudyInput edited, StudyResult before) {
        this.edited = edited;
        this.before = before;
    }

    /** The results of an edited study, the same as its evaluation gives; empty where more than its costs must be found anew. */
    public static Optional<StudyResult> of(StudyInput edited, StudyResult before) {
        return PriceEdits.alone(edited, before.input()) ? new StudyRecosting(edited, before).recosted() : Optional.empty();
    }

    private Optional<StudyResult> recosted() {
        if (!IntStream.range(0, edited.years()).allMatch(year -> PlanYards.demandIndex(edited, year) == PlanYards
                .demandIndex(before.input(), year))) {
            return Optional.empty();
        }
        List<PlanResult> plans = new ArrayList<>();
        for (int i = 0; i < before.plans().size(); i++) {
            PlanResult plan = before.plans().get(i);
            RenewOrRetire packs = new RenewOrRetire(edited, new YearOfDriving(edited, before.duty(),
                    new PortFleet(edited.depot(), plan.plan().ports())), before.figures());
            if (!plan.fleet().decisions().stream().allMatch(packs::holds)) {
                return Optional.empty();
            }
            PlanResult costed = plan.at(edited, edited.plans().get(i), plan.fleet().priced(packs));
            if (!scrapsAlike(costed)) {
                return Optional.empty();
            }
            plans.add(costed);
        }
        return Optional.of(before.at(edited, plans));
    }

    /** Whether programmes pay, and so have old buses scrapped, may hang on prices. */
    private boolean scrapsAlike(PlanResult plan) {
        return PlanAwards.scrapped(edited, plan.funding().awards()).equals(plan.fleet().scrapped());
    }
}
