package org.amberyard.study.whatif;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.plan.PlanOutcome;
import org.amberyard.core.plan.PriceField;
import org.amberyard.core.plan.PriceFields;
import org.amberyard.core.plan.PriceSweep;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.study.Study;

/**
 * Evaluates a study whose uncertain inputs are all prices by these alone: on sums, or where debts, taxes or aids hang on its costs,
 * costed anew. Safe for use from several threads.
 */
final class PricedDraws {
    private final PriceInputs inputs;
    private final StudyResult base;
    private final Optional<PriceSweep> sweep;

    private PricedDraws(PriceInputs inputs, StudyResult base, YardMemory yards) {
        this.inputs = inputs;
        this.base = base;
        this.sweep = PriceSweep.of(base, inputs.fields(), yards);
    }

    /** Empty when an input reaches further than prices. */
    static Optional<PricedDraws> of(Study study, StudyResult base, UncertainInputs inputs, YardMemory yards) {
        return PriceInputs.of(new StudyVariants(study), base.input(), inputs).map(prices -> new PricedDraws(prices, base, yards));
    }

    /** True when draws are found from sums at their prices. */
    boolean onSums() {
        return sweep.isPresent();
    }

    /** Draws of a block: many where one takes microseconds. */
    int blockDraws(int few, int many) {
        return sweep.isPresent() ? many : few;
    }

    /**
     * An evaluation.
     *
     * @param columns where results of plans stand
     */
    Evaluation evaluation(OutcomeColumns columns) {
        return new Evaluation(columns);
    }

    /** With memory of its own, for one thread. */
    final class Evaluation {
        private final OutcomeColumns columns;
        private final Optional<PriceSweep.Evaluation> evaluation = sweep.map(PriceSweep::evaluation);
        private final List<PriceField> fields = inputs.fields();
        private final double[] prices = new double[fields.size()];

        private Evaluation(OutcomeColumns columns) {
            this.columns = columns;
        }

        /**
         * Evaluates all plans at values of the inputs.
         *
         * @return false when the study must be evaluated as a whole
         */
        boolean at(double[] values, double[] results) {
            return inputs.write(values, prices) && (evaluation.isPresent() ? evaluation.get().at(prices, results) : recosted(results));
        }

        private boolean recosted(double[] results) {
            Map<PriceField, Double> drawn = new HashMap<>();
            for (int i = 0; i < prices.length; i++) {
                drawn.put(fields.get(i), prices[i]);
            }
            StudyInput variant = PriceFields.at(base.input(), field -> drawn.getOrDefault(field, field.in(base.input())));
            Optional<List<PlanOutcome>> plans = PlanOutcome.recosted(variant, base);
            plans.ifPresent(outcomes -> columns.write(outcomes, results));
            return plans.isPresent();
        }
    }
}
