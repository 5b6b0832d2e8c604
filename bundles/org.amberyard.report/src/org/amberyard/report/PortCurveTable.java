package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.Unit;
import org.amberyard.core.yard.PortChoice;
import org.amberyard.core.yard.PortCurve;

/** The table of the cheapest ports by their number. */
final class PortCurveTable {
    private PortCurveTable() {
    }

    /** Some ports of a plan under a policy. */
    record OfChoice(PlanResult plan, PortCurve curve, PortChoice choice) {
        static List<OfChoice> all(StudyResult result, Progress progress) {
            List<OfChoice> rows = new ArrayList<>();
            List<PlanResult> plans = result.plans();
            for (int place = 0; place < plans.size(); place++) {
                PlanResult plan = plans.get(place);
                for (PortCurve curve : plan.yardComparison().ports(progress.part(place, plans.size()))) {
                    choices(curve).forEach(c -> rows.add(new OfChoice(plan, curve, c)));
                }
            }
            return rows;
        }

        /** Those of the curve, then those of the plan where they are none of them. */
        private static Stream<PortChoice> choices(PortCurve curve) {
            return Stream.concat(curve.byNumber().stream(), curve.bought().stream().filter(b -> !curve.byNumber().contains(b)));
        }

        boolean cheapest() {
            return curve.cheapest().filter(choice::equals).isPresent();
        }
    }

    private static String yes(boolean holds) {
        return holds ? "yes" : "no";
    }

    static TableDefinition<OfChoice> of(Progress progress) {
        return new TableDefinition<>("port_curve", "Ports that have every bus ready in every year, by number",
                r -> OfChoice.all(r, progress))
                .text("plan", "Plan", "Name of the plan; one without electric buses has no rows.", r -> r.plan().name())
                .text("policy", "Policy", "How the yard charges.", r -> r.curve().policy().label())
                .count("ports", "Ports", "Number of ports. Numbers left out do not have every bus ready on every day of every year, "
                        + "whatever the types.", r -> r.choice().mix().ports())
                .heads()
                .text("mix", "Types", "The types of that number that cost least with plug swaps and bill, and how "
                        + "many of them then stand unused, or those of the plan.",
                        r -> r.curve().offer().words(r.choice()))
                .number("connected_power", "Connected power", Unit.KILOWATT, "All of these ports at full power.",
                        r -> r.curve().offer().connectedKw(r.choice().mix()))
                .money("port_cost", "Ports per year", "Capital recovery of hardware and installation at the real discount rate, and "
                        + "fees; base-date money, site works left out.", r -> r.choice().mix().portCost())
                .money("swap_cost", "Swaps per year", "Pay for moving plugs in the last year of the plan.",
                        r -> r.choice().mix().swapCost())
                .money("bill", "Bill", "The last year's bill for charging, base-date prices.", r -> r.choice().bill().total())
                .money("cost", "Cost per year", "All three together.", r -> r.choice().cost())
                .text("ready", "All buses ready", "Whether every bus leaves with its charge on every day of every year: yes or no.",
                        r -> yes(r.choice().served()))
                .text("cheapest", "Cheapest", "Whether no other ports that serve cost less under the policy: yes or no.",
                        r -> yes(r.cheapest()))
                .text("bought", "Bought by the plan", "Whether these are the ports that the plan has in its last year: yes or no.",
                        r -> yes(r.curve().buys(r.choice())));
    }
}
