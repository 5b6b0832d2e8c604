package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.yard.YardMemory;

/** A plan's present cost and appropriations as functions of prices, as long as these decide what they decided before. */
final class PlanForms {
    private static final Set<CostCategory> OF_THE_YARD = EnumSet.of(CostCategory.ELECTRIC_ENERGY, CostCategory.ELECTRIC_DEMAND,
            CostCategory.ELECTRIC_FIXED, CostCategory.PLUG_SWAPS, CostCategory.CREDIT_REVENUE);
    private static final Set<CostCategory> OF_AWARDS = EnumSet.of(CostCategory.FUNDING, CostCategory.FUNDING_REPAID,
            CostCategory.AWARDS_DUE);

    private final PriceForm presentCost;
    private final List<PriceForm> appropriations;
    private final double co2eKg;
    private final List<Decision> decisions;
    private final YardForms yards;
    private final Optional<MovedAwards> awards;

    /** A choice whose sign decides. */
    private record Decision(PriceForm difference, boolean above) {
    }

    PlanForms(StudyResult base, PlanResult plan, PricePoints points, YardMemory memory) {
        StudyInput study = base.input();
        awards = MovedAwards.move(plan, points) ? Optional.of(MovedAwards.of(plan, points)) : Optional.empty();
        yards = new YardForms(study, plan.costs().course(), points, memory);
        decisions = decisions(base, plan, points);
        PriceForm.Builder present = new PriceForm.Builder();
        List<PriceForm.Builder> byYear = Stream.generate(PriceForm.Builder::new).limit(study.years()).toList();
        addItems(study, plan, points, present, byYear);
        addFunding(study, plan, present, byYear);
        presentCost = present.build();
        appropriations = byYear.stream().map(PriceForm.Builder::build).toList();
        co2eKg = plan.air().stream().mapToDouble(air -> air.totalKg() - air.gridKg()).sum();
    }

    private static List<Decision> decisions(StudyResult base, PlanResult plan, PricePoints points) {
        RenewOrRetire packs = new RenewOrRetire(base.input(), new YearOfDriving(base.input(), base.duty(),
                new PortFleet(base.input().depot(), plan.plan().ports())), base.figures());
        AmountForms forms = new AmountForms(points);
        List<Decision> decisions = new ArrayList<>();
        for (PackDecision decision : plan.fleet().decisions()) {
            packs.choice(decision).map(c -> forms.of(c.difference(), 0, CostCategory.BUS_PURCHASE)).filter(f -> !f.isConstant())
                    .ifPresent(f -> decisions.add(new Decision(f, decision.retires())));
        }
        return decisions;
    }

    private static void addItems(StudyInput study, PlanResult plan, PricePoints points, PriceForm.Builder present,
            List<PriceForm.Builder> byYear) {
        AmountForms forms = new AmountForms(points);
        MoneyWeights weights = new MoneyWeights(study.money());
        for (CostItem item : plan.costs().items()) {
            if (!OF_THE_YARD.contains(item.category())) {
                forms.add(item.amount(), weights.present(item.category(), item.year()), item.year(), item.category(), present);
                forms.add(item.amount(), weights.appropriation(item.category(), item.year()), item.year(), item.category(),
                        byYear.get(item.year()));
            }
        }
    }

    /** Money of programmes that does not move with prices. */
    private void addFunding(StudyInput study, PlanResult plan, PriceForm.Builder present, List<PriceForm.Builder> byYear) {
        MoneyWeights weights = new MoneyWeights(study.money());
        for (CostCategory category : OF_AWARDS) {
            for (int year = 0; awards.isEmpty() && year < study.years(); year++) {
                double stated = plan.ledger().amount(year, category);
                present.add(stated * weights.presentOfStated(category, year));
                byYear.get(year).add(stated * weights.appropriationOfStated(category, year));
            }
        }
    }

    /**
     * Writes present cost, greenhouse gas and appropriations of the plan.
     *
     * @param prices prices at their places
     * @param results takes them from a place on
     * @return false when prices decide otherwise than before, so that the plan must be evaluated as a whole; what is written is what
     *     it comes to as long as nobody decides otherwise
     */
    boolean write(double[] prices, double[] results, int from) {
        boolean decided = true;
        for (Decision decision : decisions) {
            decided &= decision.difference.at(prices) > 0 == decision.above;
        }
        int first = from + 2;
        results[from] = presentCost.at(prices);
        results[from + 1] = co2eKg;
        for (int year = 0; year < appropriations.size(); year++) {
            results[first + year] = appropriations.get(year).at(prices);
        }
        decided &= yards.add(prices, results, from);
        return (awards.isEmpty() || awards.get().take(prices, results, from, first)) && decided;
    }
}
