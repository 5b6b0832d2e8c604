package org.amberyard.core.plan;

import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.FlowTime;

/**
 * The arithmetic of a sweep over prices of running a fleet as plain arrays, written down anew from the costs of the plans, for a
 * loop in C: series of prices, then sums of quantities at prices for present cost and each year's appropriation.
 */
public final class FlatPrices {
    private final StudyResult base;
    private final List<PriceField> fields;
    private final Map<String, Integer> series = new HashMap<>();
    private final StringBuilder seriesText = new StringBuilder();
    private final StringBuilder sumsText = new StringBuilder();

    public FlatPrices(StudyResult base, List<PriceField> fields) {
        this.base = base;
        this.fields = fields;
    }

    /** Numbers for the C loop. */
    public String text() {
        int years = base.input().years();
        for (PlanResult plan : base.plans()) {
            addSums(plan, years);
        }
        return fields.size() + " " + (years + 1) + " " + series.size() + "\n" + seriesText + base.plans().size() * (1 + years) + "\n"
                + sumsText;
    }

    private void addSums(PlanResult plan, int years) {
        MoneyWeights weights = new MoneyWeights(base.input().money());
        for (int sum = 0; sum <= years; sum++) {
            Map<Integer, Double> terms = new HashMap<>();
            int year = sum - 1;
            for (CostItem item : plan.costs().items()) {
                if (item.amount().linear() && (year < 0 || item.year() == year)) {
                    double weight = year < 0 ? weights.present(item.category(), item.year())
                            : weights.appropriation(item.category(), item.year());
                    item.amount().terms(weight, item.year(), item.category(), (q, price, at, category, insured) -> {
                        int place = place(price, at, category.time());
                        if (place >= 0) {
                            terms.merge(place, insured ? q * base.input().rules().insuranceShare() : q, Double::sum);
                        }
                    });
                }
            }
            sumsText.append(terms.size());
            terms.forEach((place, q) -> sumsText.append(String.format(Locale.ROOT, " %d %.17g", place, q)));
            sumsText.append('\n');
        }
    }

    private int place(UnitPrice price, int year, FlowTime time) {
        List<PriceField> bases = price.kind().bases(price.of());
        int field = bases.isEmpty() ? -1 : fields.indexOf(bases.get(0));
        int rise = price.kind().rise(base.input(), price.of()).map(fields::indexOf).orElse(-1);
        if (field < 0 && rise < 0) {
            return -1;
        }
        int of = series.computeIfAbsent(price + " " + time, key -> {
            double present = price.kind().at(base.input(), price.of(), 0, CostCategory.at(FlowTime.START));
            double fixed = price.kind().path(base.input(), price.of()).realRise();
            seriesText.append(String.format(Locale.ROOT, "%d %d %.17g %.17g %d%n", field, rise, present, fixed,
                    time == FlowTime.START ? 0 : 1));
            return series.size();
        });
        return of * (base.input().years() + 1) + year;
    }
}
