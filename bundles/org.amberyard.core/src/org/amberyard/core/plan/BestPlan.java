package org.amberyard.core.plan;

import java.util.List;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.optimum.ChoiceBound;
import org.amberyard.core.optimum.ChoiceSearch;
import org.amberyard.core.progress.Progress;

/**
 * The cheapest plan found, and a cost below which none lies of the plans that replace each bus once, by a new one, no later than its
 * rule or the plan does, with ports by the rule of the aim. Each place is weighed by itself ({@link PlaceProbe}); a search over
 * all places ({@link ChoiceSearch}) puts them together under the yearly cap, the programmes' number of buses and the number of
 * electric buses to be reached; what it proposes is evaluated whole, with its ports, its charging and its bills, and the search goes
 * on with the price of electricity that came out. The bound is the least of such a search where that is proven, else that of
 * {@link ChoiceBound}, with each kWh at the tariff's least price without demand or fixed charges (those of electric buses that stay and
 * of the building's meter too), ports in parts and without their cash under the cap, and programmes as generous as they can be: it is safe and somewhat too low, and the gap holds both what the search
 * may have missed and what the bound leaves out.
 *
 * @param evaluated the plan found, evaluated whole
 * @param steps the steps that it takes in the places decided on, by year
 * @param decided places decided on
 * @param presentCostBefore present cost after financing of the plan from which the search started, constant money at the base date
 * @param unmetBefore years in which that plan is above the cap
 * @param bound present cost below which no plan lies; empty where {@code noBound} says why
 * @param noBound why there is no bound
 * @param boundWithoutCap true where the bound is one for plans that need not keep the cap, because awards, debts or what is shared
 *            move money between years; it holds for those that keep it all the more
 * @param scarce what binds by the bound, and what more of it would save
 * @param electricShort electric buses missing to the number to be reached
 */
public record BestPlan(PlanResult evaluated, List<PlanInput.Replacement> steps, List<Integer> decided, double presentCostBefore,
        List<CapLevelling.Unmet> unmetBefore, OptionalDouble bound, List<NoBound> noBound, boolean boundWithoutCap, List<Scarce> scarce,
        int electricShort) {

    /** Why no bound can be told: what a place costs then depends on the others. */
    public enum NoBound {
        /** The operator is taxed on its sums. */
        TAXED,
        /** Operating aid is paid on sums. */
        OPERATING_AID,
        /** Credits are earned on the energy charged. */
        ENERGY_CREDITS,
        /** No plan was found that keeps the cap. */
        NOTHING_WITHIN,
        /** Steps that stay take part in the same programmes, or more programmes are asked than are weighed in every combination. */
        SHARED_PROGRAMMES,
        /** The tariff has a minimum bill, or prices below zero or by demand, so that a kWh may cost less than its least price. */
        TARIFF
    }

    /** What can be scarce. */
    public enum Kind {
        /** Money of a year under the cap. */
        CAP,
        /** Buses that a programme pays for. */
        PROGRAMME,
        /** Electric buses to be reached. */
        GOAL
    }

    /**
     * Something that binds.
     *
     * @param kind what
     * @param of year of the study for the cap, place of the programme; empty for the goal
     * @param worth present cost that one unit more of it saves, at the bound: money of the cap, a bus of the programme, a bus less to
     *            be reached
     */
    public record Scarce(Kind kind, OptionalInt of, double worth) {
    }

    public BestPlan {
        steps = List.copyOf(steps);
        decided = List.copyOf(decided);
        unmetBefore = List.copyOf(unmetBefore);
        noBound = List.copyOf(noBound);
        scarce = List.copyOf(scarce);
    }

    /**
     * The best plan of a study that has been evaluated.
     *
     * @param plan place of the plan whose other steps, works, financing and cap hold
     * @param progress told how far the search has come; stops it when the answer is not wanted any more
     * @throws IllegalArgumentException when there is no place to decide on
     */
    public static BestPlan of(StudyResult result, int plan, BestPlanAim aim, Progress progress) {
        return new BestPlanSearch(result, result.plans().get(plan), aim, progress).answer();
    }

    /** Present cost after financing of the plan found, constant money at the base date. */
    public double presentCost() {
        return evaluated.presentCostAfterFinancing();
    }

    /** Ports that the plan found buys. */
    public List<PlanInput.PortPurchase> ports() {
        return evaluated.plan().ports();
    }

    /** Years that stay above the cap, with by how much, money of the year. */
    public List<CapLevelling.Unmet> unmet() {
        return CapLevelling.Unmet.of(evaluated);
    }

    /** By how much the plan found may be dearer than the cheapest one at most, as a share of its cost; empty where it keeps not all. */
    public OptionalDouble gapShare() {
        return bound.isPresent() && presentCost() != 0 && unmet().isEmpty() && electricShort == 0
                ? OptionalDouble.of(Math.max(0, presentCost() - bound.getAsDouble()) / Math.abs(presentCost())) : OptionalDouble.empty();
    }
}
