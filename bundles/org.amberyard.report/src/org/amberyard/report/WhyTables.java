package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.amberyard.core.plan.PlanDifference;
import org.amberyard.core.plan.PriceBreakEvens;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.ResultRows.OfPlan;

/** Tables that say why plans differ and what would have to change for another to win. */
final class WhyTables {
    private WhyTables() {
    }

    /** A step on the way from the baseline to a plan. */
    private record OfStep(OfPlan at, PlanDifference.Step step) {
        static List<OfStep> all(StudyResult result) {
            return others(result).stream().flatMap(p -> PlanDifference.of(result.baseline(), p.plan()).steps().stream()
                    .map(s -> new OfStep(p, s))).toList();
        }
    }

    /** A price and where a plan costs as much as the baseline. */
    private record OfLever(OfPlan at, PriceBreakEvens.OfLever lever) {
        static List<OfLever> all(StudyResult result, Progress progress) {
            List<OfPlan> plans = others(result);
            List<OfLever> levers = new ArrayList<>();
            for (int place = 0; place < plans.size(); place++) {
                OfPlan plan = plans.get(place);
                Progress part = progress.part(place, plans.size());
                PriceBreakEvens.of(result, plan.index(), part).forEach(l -> levers.add(new OfLever(plan, l)));
            }
            return levers;
        }

        String words(UnitSystem system) {
            return lever.at().words(at.plan().name(), at.result().baseline().name(), value -> value(value, system));
        }

        String present(UnitSystem system) {
            return value(lever.lever().present(), system);
        }

        private String value(double value, UnitSystem system) {
            String currency = at.result().input().currency();
            return switch (lever.lever().unit()) {
                case MONEY_PER_LITRE -> String.format(Locale.ROOT, "%.3f %s", Unit.MONEY_PER_LITRE.show(value, system),
                        Unit.MONEY_PER_LITRE.symbol(system, currency));
                case MONEY_PER_KWH -> String.format(Locale.ROOT, "%.0f %s/kWh", value, currency);
                case TIMES -> String.format(Locale.ROOT, "%.2f times the prices of the study", value);
                case RATE -> String.format(Locale.ROOT, "%.2f %%", 100 * value);
            };
        }
    }

    /** Every plan but the baseline. */
    static List<OfPlan> others(StudyResult result) {
        return IntStream.range(0, result.plans().size()).filter(i -> i != result.input().baseline())
                .mapToObj(i -> new OfPlan(result, i)).toList();
    }

    static TableDefinition<?> planDifference() {
        return new TableDefinition<OfStep>("plan_difference", "From the baseline to each plan", OfStep::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .text("group", "Group", "Group of the category.", r -> r.step().category().group().label())
                .text("category", "Category", "Cost category; those without a difference are left out.",
                        r -> r.step().category().label())
                .heads()
                .money("baseline_cost", "Baseline", "Present cost in the baseline.", r -> r.step().from())
                .money("plan_cost", "Plan", "Present cost in the plan.", r -> r.step().to())
                .money("change", "Change", "What the category adds to the present cost of the baseline; the changes sum to the "
                        + "difference of the two plans.", r -> r.step().change());
    }

    static TableDefinition<?> priceBreakEven(Progress progress) {
        return new TableDefinition<OfLever>("price_break_even", "Prices at which a plan costs as much as the baseline",
                r -> OfLever.all(r, progress))
                .text("plan", "Plan", "Name of the plan.", r -> r.at().plan().name())
                .text("price", "Price", "The price that is changed; all else stays as in the study.", r -> r.lever().lever().name()).heads()
                .words("present", "In the study", "Its value in the study.", r -> r::present)
                .words("answer", "Answer", "Where the plan has the lower present cost, in the range that is looked at: a tenth of "
                        + "the price to four times it, discount rates from 0 to 15 %.", r -> r::words);
    }
}
