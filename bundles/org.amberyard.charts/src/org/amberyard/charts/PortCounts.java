package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.yard.PortChoice;
import org.amberyard.core.yard.PortCurve;

/** Costs of ports by their number, in words and figures. */
final class PortCounts {
    private final StudyResult result;
    private final int plan;
    private final List<PortCurve> curves;

    PortCounts(StudyResult result, int plan, List<PortCurve> curves) {
        this.result = result;
        this.plan = plan;
        this.curves = curves;
    }

    private String currency() {
        return result.input().currency();
    }

    private String plan() {
        return "Plan “" + result.plans().get(plan).name() + "”";
    }

    private int lastYear() {
        return result.input().baseYear() + result.input().years() - 1;
    }

    /** Why there is nothing to show. */
    String none() {
        return plan() + (curves.isEmpty() ? " has no electric bus in any year."
                : " has buses that no number of the ports on offer has ready on every day, whatever the policy.");
    }

    /** True when some ports serve under some policy. */
    boolean any() {
        return curves.stream().anyMatch(c -> !c.byNumber().isEmpty());
    }

    /** What stands under the title. */
    String caption() {
        return plan() + ", every bus ready; ports, plug swaps and the bill of " + lastYear() + " at today's tariff";
    }

    private String heading() {
        return plan() + ": the cheapest ports of each number that have every bus ready in every year; per year, ports and plug swaps "
                + "with the bill of " + lastYear() + " at today's tariff";
    }

    /** The answer by policy. */
    String sentences() {
        return heading() + ". " + curves.stream().map(this::sentence).collect(Collectors.joining(" "));
    }

    private String sentence(PortCurve curve) {
        Optional<PortChoice> cheapest = curve.cheapest();
        if (cheapest.isEmpty()) {
            return "Charged " + curve.policy().label() + ", no number of the ports on offer serves" + bought(curve) + ".";
        }
        String fewest = curve.fewest().equals(cheapest) ? ", which are also the fewest that serve"
                : "; " + ports(curve, curve.fewest().orElseThrow()) + " are the fewest that serve";
        return "Charged " + curve.policy().label() + ", " + ports(curve, cheapest.get()) + " cost least, " + money(cheapest.get())
                + " a year" + fewest + bought(curve) + ".";
    }

    private String bought(PortCurve curve) {
        return curve.bought().map(b -> "; those of the plan, " + ports(curve, b) + ", cost " + money(b)
                + (b.served() ? "" : " and leave a bus short on some day")).orElse("");
    }

    private static String ports(PortCurve curve, PortChoice choice) {
        return curve.offer().words(choice);
    }

    private String money(PortChoice choice) {
        return Figures.exactMoney(currency(), choice.cost());
    }

    /** Words for a point. */
    String tip(PortCurve curve, PortChoice choice) {
        return curve.policy().label() + ", " + ports(curve, choice) + ": " + money(choice) + " a year (ports "
                + Figures.whole(choice.mix().portCost()) + ", plug swaps " + Figures.whole(choice.mix().swapCost()) + ", bill "
                + Figures.whole(choice.bill().total()) + ")" + marks(curve, choice);
    }

    private static String marks(PortCurve curve, PortChoice choice) {
        return (isCheapest(curve, choice) ? "; cheapest" : "") + (curve.buys(choice) ? "; as the plan buys" : "")
                + (choice.served() ? "" : "; leaves a bus short on some day");
    }

    private static boolean isCheapest(PortCurve curve, PortChoice choice) {
        return curve.cheapest().filter(choice::equals).isPresent();
    }

    ChartData data() {
        String money = " (" + currency() + "/yr)";
        List<List<Object>> rows = new ArrayList<>();
        for (PortCurve curve : curves) {
            Stream<PortChoice> apart = curve.bought().stream().filter(b -> !curve.byNumber().contains(b));
            Stream.concat(curve.byNumber().stream(), apart).forEach(c -> rows.add(List.of(curve.policy().label(), c.mix().ports(),
                    ports(curve, c), c.mix().portCost(), c.mix().swapCost(), c.bill().total(), c.cost(), yes(c.served()),
                    yes(isCheapest(curve, c)), yes(curve.buys(c)))));
        }
        return new ChartData(List.of("Policy", "Ports", "Types", "Ports" + money, "Plug swaps" + money, "Bill" + money,
                "Total" + money, "All buses ready", "Cheapest", "Bought by the plan"), rows);
    }

    private static String yes(boolean holds) {
        return holds ? "yes" : "no";
    }
}
