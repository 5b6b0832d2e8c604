package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Ports for the electric buses of a plan that a rule has filled: those that the rule buys, those of today, and those of steps that stay.
 * Ports that the plan buys before the rule's first year stay too.
 */
final class FilledPorts {
    private final StudyInput study;
    private final PlanInput plan;
    private final FillRule rule;
    private final Map<Integer, PlanFilling.Step> filled = new HashMap<>();

    FilledPorts(StudyInput study, PlanInput plan, FillRule rule, List<PlanFilling.Step> steps) {
        this.study = study;
        this.plan = plan;
        this.rule = rule;
        steps.forEach(s -> filled.put(s.place(), s));
    }

    /** Enough ports for the electric buses that are there in each year, from the rule's first year on. */
    List<PlanFilling.Ports> bought() {
        List<PlanFilling.Ports> bought = new ArrayList<>();
        int have = plan.ports().stream().filter(p -> p.year() < rule.firstYear()).mapToInt(PlanInput.PortPurchase::count).sum();
        for (int year = rule.firstYear(); year < study.years(); year++) {
            int need = (int) Math.ceil(electric(year) / rule.ports().busesPerPort() - 1e-9);
            if (need > have) {
                bought.add(new PlanFilling.Ports(year, need - have));
                have = need;
            }
        }
        return bought;
    }

    private double electric(int year) {
        double count = 0;
        for (int place = 0; place < study.buses().size(); place++) {
            int type = type(place, year);
            count += type >= 0 && study.types().get(type).electric().isPresent() ? 1 : 0;
        }
        return count;
    }

    /** Type of the bus in a place in a year; below 0 where none stands there. */
    private int type(int place, int year) {
        PlanFilling.Step step = filled.get(place);
        if (step != null) {
            return step.year() <= year ? step.type() : study.buses().get(place).type();
        }
        return plan.replacements().stream().filter(r -> r.place() == place && r.year() <= year)
                .max(Comparator.comparingInt(PlanInput.Replacement::year)).map(r -> r.newType().orElse(-1))
                .orElse(study.buses().get(place).type());
    }
}
