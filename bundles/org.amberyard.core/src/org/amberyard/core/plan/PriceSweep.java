package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.yard.YardMemory;

/**
 * A study laid out for evaluation at very many prices: all that does not move with them is summed up once, and an evaluation is a
 * pass over plain arrays. It gives what the whole evaluation gives. Where prices decide something, it is asked again at each:
 * what programmes pay, what minimum bills come to, which schedule a least-cost yard drives; where a worn pack would be replaced
 * in place of its bus or the other way round, it says that the study must be evaluated as a whole. Safe for use from several
 * threads.
 */
public final class PriceSweep {
    private static final int BEFORE_YEARS = 2;

    private final PricePoints points;
    private final List<PlanForms> plans;
    private final int years;
    private final int size;

    private PriceSweep(StudyResult base, List<PriceField> fields, YardMemory yards) {
        StudyInput study = base.input();
        points = new PricePoints(study, fields);
        plans = base.plans().stream().map(plan -> new PlanForms(base, plan, points, yards)).toList();
        years = study.years();
        size = points.size();
    }

    /**
     * A study of which some prices vary; empty where debts, income taxes or operating aids hang on its costs, which are found by
     * costing it anew.
     *
     * @param base results of the study
     * @param fields the prices that vary
     * @param yards years of yards that are known
     */
    public static Optional<PriceSweep> of(StudyResult base, List<PriceField> fields, YardMemory yards) {
        StudyInput study = base.input();
        boolean financed = study.plans().stream().anyMatch(p -> !p.payment().financing().isEmpty());
        boolean apart = financed || study.rules().taxes().rate() > 0 || !study.funding().aids().isEmpty();
        return apart ? Optional.empty() : Optional.of(new PriceSweep(base, fields, yards));
    }

    /** Number of results: for each plan present cost, greenhouse gas in kg, and appropriations by year. */
    public int results() {
        return plans.size() * (BEFORE_YEARS + years);
    }

    /** An evaluation with memory of its own, for one thread. */
    public Evaluation evaluation() {
        return new Evaluation(new double[size]);
    }

    /** Evaluates the study at prices. For use from one thread. */
    public final class Evaluation {
        private final double[] prices;

        private Evaluation(double[] prices) {
            this.prices = prices;
        }

        /**
         * Evaluates all plans.
         *
         * @param values values of the fields, in their order
         * @param results takes the results
         * @return false when these prices decide otherwise than those of the study, so that it must be evaluated as a whole; the results
         *     are then what it would come to if all stayed as the study decides it
         */
        public boolean at(double[] values, double[] results) {
            points.write(values, prices);
            boolean decided = true;
            for (int plan = 0; plan < plans.size(); plan++) {
                decided &= plans.get(plan).write(prices, results, plan * (BEFORE_YEARS + years));
            }
            return decided;
        }
    }
}
