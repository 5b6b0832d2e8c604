package org.amberyard.study.whatif;

import java.util.Optional;
import org.amberyard.core.plan.PriceSweep;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.YardMemory;
import org.amberyard.model.study.Study;

/** Evaluates a study whose uncertain inputs are all prices by these alone. Safe for use from several threads. */
final class PricedDraws {
    private final PriceInputs inputs;
    private final PriceSweep sweep;

    private PricedDraws(PriceInputs inputs, PriceSweep sweep) {
        this.inputs = inputs;
        this.sweep = sweep;
    }

    /** Empty when an input reaches further than prices, or more than costs hangs on them. */
    static Optional<PricedDraws> of(Study study, StudyResult base, UncertainInputs inputs, YardMemory yards) {
        return PriceInputs.of(new StudyVariants(study), base.input(), inputs)
                .flatMap(prices -> PriceSweep.of(base, prices.fields(), yards).map(sweep -> new PricedDraws(prices, sweep)));
    }

    Evaluation evaluation() {
        return new Evaluation();
    }

    /** With memory of its own, for one thread. */
    final class Evaluation {
        private final PriceSweep.Evaluation evaluation = sweep.evaluation();
        private final double[] prices = new double[inputs.fields().size()];

        /**
         * Evaluates all plans at values of the inputs.
         *
         * @return false when the study must be evaluated as a whole
         */
        boolean at(double[] values, double[] results) {
            return inputs.write(values, prices) && evaluation.at(prices, results);
        }
    }
}
