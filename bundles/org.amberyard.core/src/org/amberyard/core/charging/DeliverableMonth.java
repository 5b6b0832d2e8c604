package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.List;

/**
 * A month without the energy that no schedule can deliver.
 *
 * @param problem the month, its sessions asking for what they can get
 * @param shortfalls what was left out
 * @param flows flows of its stretches
 * @param levels bounds of its demand levels
 */
record DeliverableMonth(MonthProblem problem, List<SessionShortfall> shortfalls, List<StretchFlow> flows, MonthLevels levels) {

    static DeliverableMonth of(MonthProblem asked) {
        MonthLevels levels = MonthLevels.of(asked);
        List<StretchProblem> stretches = new ArrayList<>();
        List<SessionShortfall> shortfalls = new ArrayList<>();
        List<StretchFlow> flows = new ArrayList<>();
        for (StretchProblem stretch : asked.stretches()) {
            StretchFlow flow = flow(asked, stretch);
            List<SessionShortfall> lacking = flow.shortfalls(stretches.size(), stretch, levels.usefulKw());
            shortfalls.addAll(lacking);
            stretches.add(lacking.isEmpty() ? stretch : stretch.without(lacking));
            flows.add(lacking.isEmpty() ? flow : flow(asked, stretch.without(lacking)));
        }
        return new DeliverableMonth(asked.with(stretches), shortfalls, flows, levels);
    }

    private static StretchFlow flow(MonthProblem month, StretchProblem stretch) {
        return new StretchFlow(stretch, ReducedStretch.of(stretch), month.siteLimitKw(), month.demandPrices().length);
    }
}
