package org.amberyard.batch;

import java.io.IOException;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.plan.BenefitWhy;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.plan.ReplacedBuses;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.WhyText;

/** Prints how an amount of a plan, or what a replaced bus emitted more, comes about, down to the inputs and their sources. */
final class WhyVerb implements Verb {
    private static final int OPERANDS = 5;
    private static final int CATEGORY_OPERAND = 4;

    @Override
    public String name() {
        return "why";
    }

    @Override
    public String usage() {
        return "why STUDY PLAN YEAR BUS CATEGORY|POLLUTANT";
    }

    @Override
    public String summary() {
        return "prints how the cost of CATEGORY, such as “Fuel”, of the bus BUS, or “Yard” for what all share, in the year YEAR "
                + "of the plan PLAN comes about, down to inputs and their sources; or how much less of POLLUTANT, such as “NOx”, is "
                + "emitted over the remaining life of an engine bus, and in a year of it, because BUS takes its place in the year YEAR";
    }

    @Override
    public Set<String> options() {
        return Set.of();
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        List<String> operands = arguments.operands(OPERANDS, "a study, a plan, a year, a bus, and a category or a pollutant");
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(arguments.studyOf(operands.get(0), console.folder()), console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        StudyInput study = evaluated.get().result().input();
        PlanResult plan = PlanOperand.of(evaluated.get().result(), operands.get(1));
        int year = YearOperand.of(study, operands.get(2));
        int row = row(plan, year, operands.get(3));
        String asked = operands.get(CATEGORY_OPERAND);
        Optional<Pollutant> pollutant = pollutant(asked);
        Derivation why = pollutant.isPresent() ? less(evaluated.get().result(), plan, year, row, pollutant.get())
                : plan.costs().why(row, year, category(asked));
        WhyText.of(evaluated.get().study(), why).forEach(line -> console.out().println(line.text()));
        return ExitCode.DONE;
    }

    /** A place, or the place in which the bus of a number stands in the year. */
    private static int row(PlanResult plan, int year, String bus) throws WrongUse {
        List<String> rows = plan.ledger().rows();
        IntStream places = IntStream.range(0, rows.size()).filter(i -> rows.get(i).equalsIgnoreCase(bus));
        IntStream buses = plan.fleet().inYear(year).stream().filter(r -> r.vehicle().unit().equalsIgnoreCase(bus))
                .mapToInt(VehicleYear::place);
        return IntStream.concat(buses, places).findFirst().orElseThrow(() -> new WrongUse("BUS is “" + bus
                + "”; it must be a bus of that year or one of the places " + String.join(", ", rows) + "."));
    }

    private static Optional<Pollutant> pollutant(String name) {
        return Arrays.stream(Pollutant.values()).filter(p -> p.label().equalsIgnoreCase(name)).findFirst();
    }

    /** What is emitted less in a place because of the change of a year, in that year and over the remaining life of the old bus. */
    private static Derivation less(StudyResult result, PlanResult plan, int year, int row, Pollutant pollutant) throws WrongUse {
        int at = IntStream.range(0, result.plans().size()).filter(i -> result.plans().get(i) == plan).findFirst().orElseThrow();
        List<ReplacedBus> all = ReplacedBuses.of(result, at);
        ReplacedBus bus = all.stream().filter(b -> b.place() == row && b.year() == year).findFirst()
                .orElseThrow(() -> new WrongUse(notReplaced(result, plan, all)));
        return new BenefitWhy(result).lifetime(bus, pollutant);
    }

    private static String notReplaced(StudyResult result, PlanResult plan, List<ReplacedBus> replaced) {
        if (plan == result.baseline()) {
            return "“" + plan.name() + "” is the baseline, with which the other plans are compared; name one of them.";
        }
        String where = replaced.stream().map(b -> result.input().baseYear() + b.year() + " " + plan.ledger().rows().get(b.place()))
                .collect(Collectors.joining(", "));
        return "No engine bus is replaced there in that year otherwise than in the baseline; the plan does so "
                + (where.isEmpty() ? "nowhere." : "in: " + where + ".");
    }

    private static CostCategory category(String name) throws WrongUse {
        return Arrays.stream(CostCategory.values()).filter(c -> c.label().equalsIgnoreCase(name)).findFirst()
                .orElseThrow(() -> new WrongUse("CATEGORY is “" + name + "”; it must be one of "
                        + Arrays.stream(CostCategory.values()).map(CostCategory::label).collect(Collectors.joining(", "))
                        + ", or one of the pollutants "
                        + Arrays.stream(Pollutant.values()).map(Pollutant::label).collect(Collectors.joining(", ")) + "."));
    }
}
