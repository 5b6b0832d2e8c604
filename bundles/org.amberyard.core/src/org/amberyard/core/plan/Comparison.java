package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.FlowTime;
import org.amberyard.core.money.Payback;

/**
 * A plan against the baseline. What is left at the end of the study counts in the present cost but not in the payback: a
 * plan does not pay back by being sold.
 *
 * @param plan place of the plan in the study
 * @param presentSaving present cost of the baseline less that of the plan
 * @param simple payback of the saving in stated money without discounting
 * @param discounted payback of the discounted saving
 * @param co2eSavingKg greenhouse gas of the baseline less that of the plan, kg
 */
public record Comparison(int plan, double presentSaving, Payback simple, Payback discounted, double co2eSavingKg) {

    /** Every plan but the baseline. */
    static List<Comparison> all(StudyInput study, List<PlanResult> plans) {
        return IntStream.range(0, plans.size()).filter(i -> i != study.baseline())
                .mapToObj(i -> of(i, plans.get(i), plans.get(study.baseline()))).toList();
    }

    private static Comparison of(int index, PlanResult plan, PlanResult baseline) {
        double saving = baseline.measures().presentCost() - plan.measures().presentCost();
        double air = baseline.measures().co2eKg() - plan.measures().co2eKg();
        return new Comparison(index, saving, payback(plan.ledger(), baseline.ledger(), false),
                payback(plan.ledger(), baseline.ledger(), true), air);
    }

    /** Points in time are the start of each year, after its purchases, and its end; discounting follows the study's timing. */
    private static Payback payback(CostLedger plan, CostLedger baseline, boolean discounted) {
        int points = 2 * plan.years();
        double[] times = new double[points];
        double[] saving = new double[points];
        double sum = 0;
        for (int point = 0; point < points; point++) {
            int year = point / 2;
            FlowTime time = point % 2 == 0 ? FlowTime.START : FlowTime.RUNNING;
            times[point] = time.years(year, false);
            sum += cost(baseline, year, time, discounted) - cost(plan, year, time, discounted);
            saving[point] = sum;
        }
        return Payback.of(times, saving);
    }

    private static double cost(CostLedger ledger, int year, FlowTime time, boolean discounted) {
        return ledger.amount(year, time) * (discounted ? ledger.rules().presentFactor(time, year) : 1);
    }
}
