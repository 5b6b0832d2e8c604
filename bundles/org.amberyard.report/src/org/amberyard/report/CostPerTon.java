package org.amberyard.report;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.money.CostEffectiveness;
import org.amberyard.core.plan.ProjectCost;
import org.amberyard.core.plan.ReplacedBuses;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.AirRows.OfBenefit;
import org.amberyard.report.AirRows.OfProject;

/** The table of what a ton less costs, by the capital of a project and by what programmes pay of it. */
final class CostPerTon {
    private static final List<Pollutant> IN_LIFE = List.of(Pollutant.NOX, Pollutant.PM25, Pollutant.CO2);

    private static final MathContext DIGITS = new MathContext(7);

    private CostPerTon() {
    }

    /**
     * A measure of cost-effectiveness.
     *
     * @param project project
     * @param pollutant pollutant that is reduced; empty for several by weight
     * @param measure what is reduced
     * @param basis whose money counts
     * @param cost the money, and how it comes about
     * @param reducedKg what is reduced for it, kg
     * @param perTon money per short ton; not a number where nothing is reduced
     * @param formula how it comes about
     */
    record Line(OfProject project, Optional<Pollutant> pollutant, String measure, String basis, Derivation cost, double reducedKg, double perTon,
            String formula) {
        static List<Line> all(StudyResult result) {
            List<Line> lines = new ArrayList<>();
            for (OfProject project : OfProject.all(result)) {
                ProjectCost cost = ProjectCost.of(result, project.plan(), project.buses());
                add(project, "capital", cost.whyCapital(), lines);
                add(project, "all programmes' money", cost.whyGrant(), lines);
            }
            return lines;
        }

        private static void add(OfProject project, String basis, Derivation cost, List<Line> lines) {
            Masses life = ReplacedBuses.reducedInLife(project.buses());
            for (Pollutant pollutant : IN_LIFE) {
                double kg = life.kg(pollutant);
                lines.add(new Line(project, Optional.of(pollutant), pollutant.label() + ", remaining life", basis, cost, kg,
                        GrantTerms.perShortTon(cost.value(), kg), "cost ÷ short tons reduced in the remaining life of the old buses = "
                                + text(cost.value()) + " ÷ " + text(kg / GrantTerms.KG_PER_SHORT_TON)));
            }
            lines.add(recovered(project, basis, cost));
        }

        private static Line recovered(OfProject project, String basis, Derivation cost) {
            GrantTerms terms = project.result().input().air().grants();
            Masses reduced = ReplacedBuses.reducedPerYear(project.buses());
            Optional<CostEffectiveness> recovered = terms.recovered(cost.value(), reduced);
            String formula = CostEffectiveness.FORMULA + "; yearly reduction = " + text(terms.noxWeight()) + " NOx + "
                    + text(terms.hcWeight()) + " HC + " + text(terms.pmWeight()) + " PM2.5" + recovered.map(c -> ": " + text(cost.value())
                            + " × " + text(c.recoveryFactor()) + " ÷ " + text(c.reducedPerYear())).orElse("");
            return new Line(project, Optional.empty(), "weighted, capital recovery", basis, cost, terms.weightedKg(reduced),
                    recovered.map(CostEffectiveness::costPerUnit).orElse(Double.NaN), formula);
        }

        private static String text(double value) {
            return Double.isNaN(value) ? "not known" : BigDecimal.valueOf(value).round(DIGITS).stripTrailingZeros().toPlainString();
        }
    }

    static TableDefinition<Line> table() {
        return new TableDefinition<>("cost_effectiveness", "Cost of a ton less", Line::all)
                .notForSubmissionWhen(OfBenefit::restsOnPlaceholders)
                .text("plan", "Plan", "Name of the plan.", r -> r.project().plan().name())
                .text("measure", "Measure", "Pollutant and span of time; exhaust of engines and heaters.", Line::measure)
                .text("basis", "Money", "Capital of the project, or only what programmes pay of it.", Line::basis).heads()
                .money("cost", "Cost", "New buses, ports, works, training and tools of the project, less what the baseline buys "
                        + "for its yard too, in the money that the study states, not discounted; or the grants for them.", l -> l.cost().value())
                .why(Line::cost)
                .number("reduced", "Reduced", ColumnUnit.SHORT_TON_OF_KG, "What is reduced; by capital recovery the weighted reduction "
                        + "of a year.", Line::reducedKg)
                .number("reduced_kg", "Reduced", ColumnUnit.KG, "The same in kilograms.", Line::reducedKg)
                .money("cost_per_short_ton", "Cost per short ton", "Money per short ton; no figure where nothing is "
                        + "reduced, as when all old buses would have left in the same years.", Line::perTon)
                .why(GrantWhy::perTon)
                .text("formula", "Formula", "How the figure comes about.", Line::formula);
    }
}
