package org.amberyard.core.plan;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.finance.FinanceLedger;
import org.amberyard.core.finance.FinanceLine;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.NominalCosts;
import org.amberyard.core.why.Derivation;

/**
 * What must be appropriated for a plan in a fiscal year, money of the time of payment; receipts are negative. What is left at
 * the end of the study is no receipt.
 *
 * @param year year of the study
 * @param purchases purchases at their price: buses, packs, ports, site works, training and tools
 * @param funding awards received, credits and aid, less awards paid back
 * @param sales sales of buses
 * @param borrowed money drawn, and price of what is leased
 * @param debtService fees, interest, principal, lease payments and sinking funds
 * @param running energy, upkeep and fees
 * @param taxes income tax
 * @param cap most that may be appropriated; empty without a limit
 */
public record BudgetYear(int year, double purchases, double funding, double sales, double borrowed, double debtService,
        double running, double taxes, OptionalDouble cap) {
    /** Less than half a cent above the cap is within it. */
    private static final double WITHIN = 0.005;

    static BudgetYear of(NominalCosts costs, FinanceLedger finance, int year, OptionalDouble cap) {
        double capital = 0;
        double funding = 0;
        double sales = 0;
        double running = 0;
        for (CostCategory category : CostCategory.values()) {
            double amount = category.time() == FlowTime.END ? 0 : costs.amount(year, category);
            switch (category.group()) {
                case CAPITAL -> capital += amount;
                case FUNDING -> funding += amount;
                case RESIDUAL -> sales += amount;
                default -> running += amount;
            }
        }
        return new BudgetYear(year, capital, funding, sales, finance.amount(year, FinanceLine.BORROWED),
                finance.amount(year, FinanceLine::debtService), running, finance.amount(year, FinanceLine.TAXES), cap);
    }

    /** What must be appropriated: the sum of the parts. */
    public double appropriation() {
        return purchases + funding + sales + borrowed + debtService + running + taxes;
    }

    /** By how much the appropriation is above the cap; zero within it, empty without one. */
    public OptionalDouble aboveCap() {
        if (cap.isEmpty()) {
            return cap;
        }
        double above = appropriation() - cap.getAsDouble();
        return OptionalDouble.of(above > WITHIN ? above : 0);
    }

    /** How the appropriation comes about. */
    public Derivation whyAppropriation() {
        return Derivation.sum("Appropriation", Derivation.MONEY, List.of(part("Purchases", purchases, "at their price"),
                part("Funding", funding, "awards, credits and aid of the year, less awards paid back"),
                part("Sales", sales, "of buses in the year"),
                part("Borrowed", borrowed, "drawn at the start of the year"),
                part("Debt service", debtService, "fees, interest, principal, lease payments and sinking funds"),
                part("Running costs", running, "energy, upkeep and fees"), part("Income tax", taxes, "of the year")));
    }

    private static Derivation part(String name, double amount, String rule) {
        return Derivation.of(name, amount, Derivation.MONEY, rule);
    }
}
