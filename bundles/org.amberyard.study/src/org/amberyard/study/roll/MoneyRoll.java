package org.amberyard.study.roll;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.Payment;
import org.amberyard.core.plan.Debt;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What the years that are over leave of money: debts that still run, budgets that are used, awards that are still due. */
final class MoneyRoll {
    /** Less than half a cent is nothing. */
    private static final double NOTHING = 0.005;

    private final Study study;
    private final RollLog log;
    private final PlanResult carriedOut;
    private final int oldBase;
    private final int years;

    /**
     * @param carriedOut result of the plan that was carried out
     * @param years years that are over, from the old base year on
     */
    MoneyRoll(Study study, RollLog log, PlanResult carriedOut, int oldBase, int years) {
        this.study = study;
        this.log = log;
        this.carriedOut = carriedOut;
        this.oldBase = oldBase;
        this.years = years;
    }

    void write(Plan plan) {
        repaid();
        List<Financing> terms = List.copyOf(plan.getFinancing());
        for (Debt debt : carriedOut.finance().debts()) {
            if (debt.financing().drawn().isEmpty() && debt.year() < years && runs(debt.year(), debt.schedule().years())) {
                terms.stream().filter(f -> f.getKind() != FinancingKind.CASH && f.getName().equals(debt.financing().name()))
                        .findFirst().ifPresent(f -> study.getPlans().forEach(p -> goesOn(p, f, debt)));
            }
        }
        study.getProgrammes().forEach(this::budget);
        awardsDue();
        if (study.getSettings().getIncomeTaxRate() > 0) {
            log.remark("Buses, ports and works of the years that are over count as written off: what is left of their depreciation is "
                    + "not carried over.");
        }
    }

    private boolean runs(int drawn, int lasts) {
        return drawn + lasts > years;
    }

    /** Debts of earlier years that are paid back by now. */
    private void repaid() {
        for (Plan plan : study.getPlans()) {
            for (Financing debt : List.copyOf(plan.getFinancing())) {
                if (debt.getDrawnSum() > 0 && !runs(debt.getDrawnYear() - oldBase, debt.getYears())) {
                    log.goes(debt, "paid back");
                    plan.getFinancing().remove(debt);
                }
            }
        }
    }

    private void goesOn(Plan plan, Financing terms, Debt debt) {
        Financing drawn = EcoreUtil.copy(terms);
        drawn.setName(terms.getName() + " of " + (oldBase + debt.year()));
        drawn.setDrawnYear(oldBase + debt.year());
        drawn.setDrawnSum(debt.drawn().value());
        plan.getFinancing().add(drawn);
        log.added(drawn, "drawn in the years that are over: "
                + new RoundedText(study).shown(Literals.FINANCING__DRAWN_SUM, drawn.getDrawnSum()));
    }

    private void budget(Programme programme) {
        int place = study.getProgrammes().indexOf(programme);
        AwardLedger awards = carriedOut.funding().awards();
        List<FundedLine> over = awards.lines().stream().filter(l -> l.purchase().year() < years && paid(l, place) > 0).toList();
        int buses = awards.busesTakingPart(place, years);
        double used = over.stream().mapToDouble(l -> paid(l, place)).sum();
        log.set(programme, FundingPackage.Literals.PROGRAMME__MAX_BUSES, Math.max(0, programme.getMaxBuses() - buses),
                "the others are taken");
        if (programme.getBudget() != null) {
            log.set(programme, FundingPackage.Literals.PROGRAMME__BUDGET, Math.max(0, programme.getBudget() - used), "the rest is used");
        }
        if (used > NOTHING && programme.getHoldYears() > 0) {
            log.remark("Programme " + programme.getName() + " wants buses of the years that are over kept for " + programme.getHoldYears()
                    + " years; what it would take back of their awards is not carried over.");
        }
    }

    private static double paid(FundedLine line, int programme) {
        return line.awards().stream().filter(a -> a.programme() == programme).mapToDouble(Award::paid).sum();
    }

    /** Awards for purchases of the years that are over that come later. */
    private void awardsDue() {
        List<FundedLine> lines = carriedOut.funding().awards().lines();
        Map<Integer, Double> due = carriedOut.funding().payments().stream()
                .filter(p -> p.year() >= years && lines.get(p.line()).purchase().year() < years)
                .collect(Collectors.groupingBy(Payment::year, TreeMap::new, Collectors.summingDouble(Payment::amount)));
        due.forEach((year, amount) -> log.remark("Awards of "
                + new RoundedText(study).shown(Literals.FINANCING__DRAWN_SUM, amount) + " for purchases of the years that are over "
                + "are due in " + (oldBase + year) + "; they are not carried over."));
        int lag = study.getOperatingAids().stream().mapToInt(a -> a.getLagYears()).max().orElse(0);
        if (lag > 0) {
            log.remark("Operating aid for the years that are over that is paid later, and for depreciation of what was bought in them, "
                    + "is not carried over.");
        }
    }
}
