package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.ServiceAdvice;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.Unit;

/** Tables of what keeps a plan within the electric service. */
final class ServiceTables {
    private ServiceTables() {
    }

    /** A remedy of a plan. */
    record OfRemedy(StudyResult result, PlanResult plan, ServiceAdvice advice, ServiceAdvice.Remedy remedy) {
        static List<OfRemedy> all(StudyResult result, Progress progress) {
            List<OfRemedy> rows = new ArrayList<>();
            List<PlanResult> plans = result.plans();
            for (int place = 0; place < plans.size(); place++) {
                PlanResult plan = plans.get(place);
                ServiceAdvice advice = ServiceAdvice.of(result.input(), plan, progress.part(place, plans.size()));
                advice.remedies().forEach(r -> rows.add(new OfRemedy(result, plan, advice, r)));
            }
            return rows;
        }

        String calendar(OptionalInt year) {
            return year.isPresent() ? String.valueOf(result.input().baseYear() + year.getAsInt()) : "never";
        }

        String order() {
            return remedy.orderYear().isPresent() ? calendar(remedy.orderYear()) : "any time";
        }
    }

    static TableDefinition<OfRemedy> serviceRemedies(Progress progress) {
        return new TableDefinition<>("service_remedies", "What keeps a plan within the electric service",
                r -> OfRemedy.all(r, progress))
                .text("plan", "Plan", "Name of the plan; a plan whose ports stay within the service at full power has no rows.",
                        r -> r.plan().name())
                .text("remedy", "Remedy", "What would do. Local code, the utility and a licensed electrician decide; managed "
                        + "charging counts only under a listed load-management system.", r -> r.remedy().words())
                .heads()
                .text("connected_from", "Full power exceeds from", "First year in which all ports at full power exceed the service.",
                        r -> r.calendar(r.advice().connectedFrom()))
                .text("planned_from", "Planned charging exceeds from", "First year in which even charging as planned exceeds it.",
                        r -> r.calendar(r.advice().plannedFrom()))
                .year("year", "Judged in", "Year of the highest connected load.",
                        r -> r.result().input().baseYear() + r.advice().year())
                .number("load", "Load", Unit.KILOVOLTAMPERE, "Load that the service then sees.", r -> r.remedy().loadKva())
                .money("cost", "Cost per year", "Beyond the plan as it is, base-date money, capital by its recovery over its life; "
                        + "negative when it saves.", r -> r.remedy().costPerYear())
                .text("order", "Order by", "Year in which it must be ordered to be there in time.", OfRemedy::order);
    }
}
