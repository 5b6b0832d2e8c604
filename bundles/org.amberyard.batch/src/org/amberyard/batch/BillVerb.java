package org.amberyard.batch;

import java.io.IOException;
import java.time.Month;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.YardDetail;
import org.amberyard.core.yard.YardInput;
import org.amberyard.report.BillText;

/** Prints a month's electric bill of a plan. */
final class BillVerb implements Verb {
    private static final String POLICY = "--policy";
    private static final int OPERANDS = 4;
    private static final int MONTH_OPERAND = 3;

    @Override
    public String name() {
        return "bill";
    }

    @Override
    public String usage() {
        return "bill STUDY PLAN YEAR MONTH [--policy POLICY]";
    }

    @Override
    public String summary() {
        return "prints the electric bill of the plan PLAN for a month, such as January or 1, of the year YEAR, and what set each "
                + "demand; POLICY is " + policies();
    }

    @Override
    public Set<String> options() {
        return Set.of(POLICY);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse, IOException {
        List<String> operands = arguments.operands(OPERANDS, "a study, a plan, a year and a month");
        int month = month(operands.get(MONTH_OPERAND));
        Optional<ChargePolicy> policy = policy(arguments.value(POLICY));
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(arguments.studyOf(operands.get(0), console.folder()), console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        StudyResult result = evaluated.get().result();
        PlanResult plan = PlanOperand.of(result, operands.get(1));
        YardInput yard = yard(result.input(), plan, operands.get(2));
        if (policy.isPresent() && !yard.rule().comparable().contains(policy.get())) {
            throw new WrongUse(POLICY + " is “" + policy.get().label() + "”, but the study has no cap on charging; enter one for its depot.");
        }
        YardInput charged = policy.map(p -> yard.under(p)).orElse(yard);
        console.out().print(BillText.of(result.input(), "plan “" + plan.name() + "”, " + operands.get(2), YardDetail.of(charged),
                month));
        return ExitCode.DONE;
    }

    private static YardInput yard(StudyInput study, PlanResult plan, String year) throws WrongUse {
        YardInput yard = plan.yards().get(YearOperand.of(study, year)).input();
        if (yard.buses().isEmpty() && yard.ports().isEmpty()) {
            throw new WrongUse("YEAR is " + year + ", in which the plan “" + plan.name()
                    + "” has neither electric buses nor ports; choose a year or a plan with them.");
        }
        return yard;
    }

    private static int month(String word) throws WrongUse {
        return IntStream.range(0, Month.values().length)
                .filter(m -> String.valueOf(m + 1).equals(word) || name(Month.of(m + 1)).equalsIgnoreCase(word)).findFirst()
                .orElseThrow(() -> new WrongUse("MONTH is “" + word + "”; it must be a month from January to December, or from 1 "
                        + "to 12."));
    }

    private static String name(Month month) {
        return MonthNames.full(month.getValue() - 1);
    }

    private static Optional<ChargePolicy> policy(Optional<String> word) throws WrongUse {
        if (word.isEmpty()) {
            return Optional.empty();
        }
        String asked = word.get().toLowerCase(Locale.ROOT);
        List<ChargePolicy> named = policies(p -> p.label().equals(asked));
        List<ChargePolicy> meant = named.isEmpty() ? policies(p -> p.label().startsWith(asked)) : named;
        if (meant.size() != 1) {
            throw new WrongUse(POLICY + " is “" + word.get() + "”; it must be one of " + policies() + ", or how just one of them "
                    + "begins.");
        }
        return Optional.of(meant.get(0));
    }

    private static List<ChargePolicy> policies(Predicate<ChargePolicy> chosen) {
        return Arrays.stream(ChargePolicy.values()).filter(chosen).toList();
    }

    private static String policies() {
        return Arrays.stream(ChargePolicy.values()).map(p -> "“" + p.label() + "”").collect(Collectors.joining(", "));
    }
}
