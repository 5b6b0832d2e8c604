package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.why.Derivation;

/** Costs of a plan: what it needs and does, counted, at the prices of a study. */
public final class PlanCosts {
    private final PlanInput plan;
    private final PlanCourse course;
    private final List<CostItem> items;
    private final PricedItems priced;
    private final PurchaseLines lines;
    private final PriceBook book;
    private final PlanFunding funding;
    private final FundingCosts fundingCosts;
    private final CostLedger ledger;

    private PlanCosts(StudyInput study, PlanInput plan, PlanCourse course, List<CostItem> items, PricedItems priced,
            PurchaseLines lines) {
        this.plan = plan;
        this.course = course;
        this.items = items;
        this.priced = priced;
        this.lines = lines;
        this.book = new PriceBook(study);
        CostLedger costs = priced.at(book);
        this.funding = PlanFunding.of(book, PlanAwards.of(book, plan, lines), course, costs);
        this.fundingCosts = new FundingCosts(study, funding.flows());
        this.ledger = fundingCosts.added(costs);
    }

    static PlanCosts of(StudyInput study, PlanInput plan, PlanCourse course) {
        List<CostItem> items = Stream.concat(FleetCosts.of(study, plan, course).stream(),
                YardCosts.of(study, plan, course).stream()).toList();
        return new PlanCosts(study, plan, course, items, new PricedItems(FleetCosts.rows(study), study.years(), items),
                new PurchaseLines(study, plan, course.fleet()));
    }

    /** The same at the prices of a study that differs in prices alone. */
    PlanCosts at(StudyInput other) {
        return new PlanCosts(other, plan, course, items, priced, lines);
    }

    /** What happens in the plan. */
    PlanCourse course() {
        return course;
    }

    /** Costs one by one, without funding. */
    List<CostItem> items() {
        return items;
    }

    /** What programmes may pay for. */
    PurchaseLines lines() {
        return lines;
    }

    /** What programmes, credits and aids bring. */
    PlanFunding funding() {
        return funding;
    }

    /** What a flow of funding takes off the costs, in the money that the study states; after the study what it is worth at its end. */
    public double stated(FundingFlow flow) {
        return fundingCosts.stated(flow);
    }

    /** Costs by place, year and category. */
    public CostLedger ledger() {
        return ledger;
    }

    /** The costs taken apart into quantities and prices. */
    public CostQuantities quantities() {
        return CostQuantities.of(book, items);
    }

    /** How a cell of the ledger comes about, in the money that the study states. */
    public Derivation why(int row, int year, CostCategory category) {
        if (FundingCosts.isFunding(category)) {
            return fundingCosts.why(row, year, category);
        }
        List<Derivation> parts = items.stream()
                .filter(i -> i.row() == row && i.year() == year && i.category() == category)
                .map(i -> i.amount().why(book, year, category)).toList();
        Derivation constant = parts.size() == 1 ? parts.get(0) : Derivation.sum(category.label(), Derivation.MONEY, parts);
        double stated = book.study().money().stated(1, category, year);
        return stated == 1 ? constant : Derivation.product(category.label() + " in money of the year", Derivation.MONEY, constant,
                Derivation.of("general inflation to the time of payment", stated, "", "(1 + inflation) to the years"));
    }
}
