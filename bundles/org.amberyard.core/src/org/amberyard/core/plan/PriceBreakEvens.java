package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.money.BreakEvenSearch;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.yard.YardMemory;

/**
 * For every price by itself, where a plan costs as much as the baseline in present money, all else as in the study. Where a
 * price decides what is done, as that of packs does, both plans are rolled forward anew for each value.
 */
public final class PriceBreakEvens {
    private static final int STEPS = 24;
    private static final double TOLERANCE = 0.005;

    private final StudyResult result;
    private final int plan;
    /** Knows the yards of the study as it is, most of which stay as they are. */
    private final YardMemory yards;
    private final KnownUpkeep upkeep = new KnownUpkeep();

    private PriceBreakEvens(StudyResult result, int plan) {
        this.result = result;
        this.plan = plan;
        this.yards = result.plans().get(plan).yardComparison().memory().next();
    }

    /**
     * Where a price decides.
     *
     * @param lever the price
     * @param at where the plan is cheaper than the baseline
     */
    public record OfLever(PriceLever lever, BreakEven at) {
    }

    /**
     * All prices of a study, one after the other.
     *
     * @param plan place of the plan, not the baseline
     * @param progress hears how far it is before each price and at each value tried anew; stops the search by what it throws
     */
    public static List<OfLever> of(StudyResult result, int plan, Progress progress) {
        PriceBreakEvens breakEvens = new PriceBreakEvens(result, plan);
        List<OfLever> found = new ArrayList<>();
        List<PriceLever> levers = PriceLever.of(result.input());
        for (PriceLever lever : levers) {
            Progress ofLever = progress.part(found.size(), levers.size());
            ofLever.at(0);
            found.add(new OfLever(lever, BreakEvenSearch.of(value -> breakEvens.difference(lever, value, ofLever), lever.from(), lever.to(),
                    STEPS, TOLERANCE)));
        }
        return found;
    }

    private double difference(PriceLever lever, double value, Progress ofLever) {
        StudyInput edited = lever.set().apply(result.input(), value);
        return StudyRecosting.of(edited, result).map(at -> at.plans().get(plan).measures().presentCost()
                - at.baseline().measures().presentCost()).orElseGet(() -> foundAnew(edited, ofLever));
    }

    private double foundAnew(StudyInput edited, Progress ofLever) {
        ofLever.at(0);
        StudyFigures figures = result.figures().anew(edited, result.duty());
        return presentCost(edited, plan, figures) - presentCost(edited, edited.baseline(), figures);
    }

    private double presentCost(StudyInput edited, int of, StudyFigures figures) {
        return PlanEvaluation.presentCost(edited, edited.plans().get(of), result.duty(), figures, yards, upkeep);
    }
}
