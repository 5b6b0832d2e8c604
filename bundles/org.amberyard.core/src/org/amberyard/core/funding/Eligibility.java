package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * Whether a programme may pay for a purchase: by the purchase, the rules of the programme and what else pays for it. Whether the
 * plan applies for it, and whether the award is certain, says nothing of that.
 *
 * @param line the purchase with its awards
 * @param applied true when the plan names the programme for it
 * @param refusals rules that refuse it; empty when it is eligible
 */
public record Eligibility(FundedLine line, boolean applied, List<Refusal> refusals) {

    public Eligibility {
        refusals = List.copyOf(refusals);
    }

    /** True when no rule refuses it. */
    public boolean isEligible() {
        return refusals.isEmpty();
    }

    /** True when nothing speaks against it but that what the programme asks for is not told. */
    public boolean isNotTold() {
        return !refusals.isEmpty() && refusals.stream().allMatch(Refusal::notTold);
    }

    /**
     * Of every purchase of a plan, in the order in which programmes pay. Of the buses that a programme takes at most, those that
     * the plan applies for take their places first; others may have what places are left, in the same order.
     *
     * @param funding the programmes and which of them exclude each other
     * @param place place of the programme
     * @param awards purchases of the plan with their awards
     */
    public static List<Eligibility> of(FundingInput funding, int place, AwardLedger awards) {
        Programme programme = funding.programmes().get(place);
        List<Eligibility> byRules = awards.lines().stream().map(line -> new Eligibility(line, awardOf(line, place).isPresent(),
                byRules(funding, place, line))).toList();
        int left = programme.budget().maxBuses() - (int) byRules.stream().filter(e -> e.takesPlace(place)).count();
        int applied = 0;
        int others = 0;
        List<Eligibility> found = new ArrayList<>();
        for (Eligibility each : byRules) {
            boolean beyond = false;
            if (each.takesPlace(place)) {
                beyond = ++applied > programme.budget().maxBuses();
            } else if (each.isBus() && !each.applied() && each.isEligible()) {
                beyond = ++others > left;
            }
            found.add(beyond ? each.beyond(programme.budget().maxBuses()) : each);
        }
        return List.copyOf(found);
    }

    private static Optional<Award> awardOf(FundedLine line, int place) {
        return line.awards().stream().filter(a -> a.programme() == place).findFirst();
    }

    private static List<Refusal> byRules(FundingInput funding, int place, FundedLine line) {
        Programme programme = funding.programmes().get(place);
        List<Refusal> refusals = new ArrayList<>();
        Ask.refusal(programme, line.purchase()).ifPresent(refusals::add);
        refusals.addAll(Refusals.byRules(programme, line.purchase()));
        line.awards().stream().filter(a -> a.programme() != place && a.paid() > 0).map(a -> funding.programmes().get(a.programme()))
                .filter(other -> funding.exclude(programme, other)).findFirst().ifPresent(other -> refusals.add(new Refusal(
                        Limit.EXCLUSION, "excludes", "it may not be combined with " + other.name() + ", which pays for this")));
        return refusals;
    }

    private boolean isBus() {
        return line.purchase().kind() == Purchase.Kind.BUS;
    }

    /** A bus that is applied for takes one of the places as it does when awards are made, were they certain or not. */
    private boolean takesPlace(int place) {
        return isBus() && isEligible() && awardOf(line, place).filter(a -> a.bounds().stream().map(Bound::limit)
                .noneMatch(l -> l.refuses() && l != Limit.UNCERTAIN)).isPresent();
    }

    private Eligibility beyond(int mostBuses) {
        return new Eligibility(line, applied, List.of(new Refusal(Limit.BUS_COUNT, "maxBuses",
                "beyond the " + mostBuses + " buses the programme takes")));
    }
}
