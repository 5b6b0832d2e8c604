package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.why.Derivation;

/**
 * What the project of a plan costs: the new buses that replace others otherwise than the baseline does, and ports, works, training
 * and tools as they are first bought, less those that the baseline buys too, in the money that the study states, not discounted.
 * Renewals are no part of it, and awards count whenever they are paid; low-carbon credits and operating aid are no grants.
 *
 * @param lines what is bought, and what the baseline would have bought with the other sign
 */
public record ProjectCost(List<Line> lines) {
    private static final ProjectCost NOTHING = new ProjectCost(List.of());

    /**
     * A thing that is bought.
     *
     * @param name what it is
     * @param capital what it costs
     * @param grant what programmes award for it and do not take back
     * @param less true where it is taken off, because the baseline buys it too
     */
    public record Line(String name, double capital, double grant, boolean less) {

        private Line takenOff() {
            return new Line(name + ", bought in the baseline too", -capital, -grant, true);
        }
    }

    public ProjectCost {
        lines = List.copyOf(lines);
    }

    /** The whole project of a plan. */
    public static ProjectCost of(StudyResult result, PlanResult plan, List<ReplacedBus> buses) {
        List<Line> lines = new ArrayList<>();
        buses.forEach(bus -> lines.addAll(of(plan, bus).lines()));
        lines.addAll(yard(plan));
        yard(result.baseline()).forEach(line -> lines.add(line.takenOff()));
        return new ProjectCost(lines);
    }

    private static List<Line> yard(PlanResult plan) {
        return plan.funding().awards().lines().stream().filter(line -> line.purchase().bus().isEmpty()).map(line -> of(plan, line)).toList();
    }

    /** One bus; a bus that only moved costs nothing. */
    public static ProjectCost of(PlanResult plan, ReplacedBus bus) {
        return plan.funding().awards().lines().stream().filter(line -> bus.bought() && line.purchase().bus().map(NewBus::unit)
                .filter(bus.now().vehicle().unit()::equals).isPresent()).findFirst()
                .map(line -> new ProjectCost(List.of(of(plan, line)))).orElse(NOTHING);
    }

    private static Line of(PlanResult plan, FundedLine line) {
        MoneyRules rules = plan.ledger().rules();
        int year = line.purchase().year();
        CostCategory category = CostCategory.FUNDING;
        double stated = rules.stated(1, category, year) / rules.rates().inflationFactor(rules.time(category, year));
        return new Line(line.purchase().name(), line.purchase().cost() * stated, (line.funded() - plan.funding().takenBack(line)) * stated,
                false);
    }

    /** What is bought. */
    public double capital() {
        return sum(Line::capital);
    }

    /** What programmes award for it. */
    public double grant() {
        return sum(Line::grant);
    }

    private double sum(ToDoubleFunction<Line> of) {
        return lines.stream().mapToDouble(of).sum();
    }

    /** What the baseline buys too, as it is taken off: no more than zero in either sum. */
    public ProjectCost takenOff() {
        return new ProjectCost(lines.stream().filter(Line::less).toList());
    }

    /** How the capital comes about. */
    public Derivation whyCapital() {
        return why("capital of the project", Line::capital);
    }

    /** How the grants come about. */
    public Derivation whyGrant() {
        return why("grants for the project", Line::grant);
    }

    private Derivation why(String name, ToDoubleFunction<Line> of) {
        return Derivation.sum(name, Derivation.MONEY, lines.stream().filter(l -> of.applyAsDouble(l) != 0)
                .map(l -> Derivation.of(l.name(), of.applyAsDouble(l), Derivation.MONEY, "in the money that the study states")).toList());
    }
}
