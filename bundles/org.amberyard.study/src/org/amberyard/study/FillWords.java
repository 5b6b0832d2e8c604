package org.amberyard.study;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.function.ToIntFunction;
import java.util.stream.Collectors;
import org.amberyard.core.plan.PlanFilling;
import org.amberyard.core.plan.PlanFilling.Reason;
import org.amberyard.model.meta.ElementNames;

/** What a rule writes into a plan, and what it leaves as it is, in sentences. */
public final class FillWords {
    private final PlanFill fill;

    private FillWords(PlanFill fill) {
        this.fill = fill;
    }

    /** Sentences for the user, the most important first. */
    public static List<String> of(PlanFill fill) {
        return new FillWords(fill).sentences();
    }

    private List<String> sentences() {
        List<String> all = new ArrayList<>();
        if (fill.isEmpty()) {
            all.add("The rule replaces no bus.");
        } else {
            all.add(counted(fill.steps().size(), "bus is", "buses are") + " replaced: "
                    + tally(fill.steps(), s -> String.valueOf(s.year()), s -> 1, " in ") + ".");
            all.add("Bought: " + tally(fill.steps(), s -> ElementNames.of(s.type()), s -> 1, " × ") + ".");
        }
        addPorts(all);
        addPayer(all);
        addReplaced(all);
        addLeft(all);
        return all;
    }

    private void addPorts(List<String> all) {
        fill.portType().ifPresent(type -> {
            List<PlanFilling.Ports> ports = fill.filling().ports();
            int count = ports.stream().mapToInt(PlanFilling.Ports::count).sum();
            String name = "ports " + ElementNames.of(type);
            all.add(count == 0 ? "No " + name + " are bought." : count + " " + name + ": "
                    + tally(ports, p -> String.valueOf(fill.year(p.year())), PlanFilling.Ports::count, " in ") + ".");
        });
    }

    private void addPayer(List<String> all) {
        fill.programme().ifPresent(programme -> {
            long paid = fill.steps().stream().filter(s -> !s.programmes().isEmpty()).count();
            all.add("Programme " + ElementNames.of(programme) + " pays for " + (paid == 0 ? "none" : paid) + " of them.");
        });
        long gone = fill.replaced().stream().filter(r -> !StepFunding.of(r).isEmpty()).count();
        if (fill.programme().isEmpty() && gone > 0) {
            all.add("No programme pays, as none is chosen; of the steps that go, " + gone + (gone == 1 ? " has one." : " have one."));
        }
    }

    private void addReplaced(List<String> all) {
        int steps = fill.replaced().size();
        int ports = fill.replacedPorts().size();
        if (steps + ports > 0) {
            all.add("In their place go "
                    + (steps > 0 ? counted(steps, "step", "steps") + " that the plan has for these buses" : "")
                    + (steps > 0 && ports > 0 ? " and " : "")
                    + (ports > 0 ? counted(ports, "port purchase", "port purchases") + " of the plan" : "") + ".");
        }
    }

    private void addLeft(List<String> all) {
        Map<Reason, List<String>> left = fill.filling().left().stream().collect(Collectors.groupingBy(PlanFilling.Left::why,
                () -> new EnumMap<>(Reason.class), Collectors.mapping(l -> ElementNames.of(fill.bus(l.place())),
                        Collectors.toList())));
        left.forEach((why, buses) -> all.add("Left as " + (buses.size() == 1 ? "it is" : "they are") + ": "
                + String.join(", ", buses) + " – " + reason(why) + "."));
    }

    private String reason(Reason why) {
        return switch (why) {
            case ELECTRIC_ALREADY -> "electric already";
            case NO_TYPE_DOES_IT -> "no electric type does the work with an aged pack";
            case TOO_LATE -> "the turn would come after " + fill.year(fill.rule().lastYear());
        };
    }

    private static String counted(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** How many of each, such as “4 in 2027, 2 in 2028”, in the order in which they come. */
    private static <T> String tally(List<T> list, Function<T, String> name, ToIntFunction<T> count, String between) {
        Map<String, Integer> counts = new LinkedHashMap<>();
        list.forEach(e -> counts.merge(name.apply(e), count.applyAsInt(e), Integer::sum));
        return counts.entrySet().stream().map(e -> e.getValue() + between + e.getKey()).collect(Collectors.joining(", "));
    }
}
