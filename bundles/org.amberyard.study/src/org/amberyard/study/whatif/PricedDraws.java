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

/**
 * Evaluates a study by its uncertain prices alone: on sums, or where debts, taxes or aids hang on its costs, costed anew. Inputs that
 * are no prices stay as they are. Safe for use from several threads.
 */
final class PricedDraws {
    private final PriceInputs inputs;
    private final StudyResult base;
    private final Optional<PriceSweep> sweep;

    /** Of a study whose results are known. */
    PricedDraws(PriceInputs inputs, StudyResult base, YardMemory yards) {
        this.inputs = inputs;
        this.base = base;
        this.sweep = PriceSweep.of(base, inputs.fields(), yards);
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
            inputs.write(values, prices);
            return inputs.allow(values) && (evaluation.isPresent() ? evaluation.get().at(prices, results) : recosted(results));
        }

        /**
         * Evaluates all plans on sums at values of the inputs, as if prices decided nothing otherwise than in the study.
         *
         * @throws java.util.NoSuchElementException when draws are not found from sums
         */
        void asDecided(double[] values, double[] results) {
            inputs.write(values, prices);
            evaluation.orElseThrow().at(prices, results);
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
