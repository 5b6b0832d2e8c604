package org.amberyard.batch;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.document.DocumentFormat;
import org.amberyard.report.document.Paper;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.DocumentKind;
import org.amberyard.report.papers.GrantTable;
import org.amberyard.report.papers.PaperChoices;

/** What the command line says of the documents wanted. */
final class DocumentOptions {
    private static final String PLAN = "--plan";
    private static final String KIND = "--kind";
    private static final String FORMAT = "--format";
    private static final String TABLES = "--tables";
    private static final String PROGRAMME = "--programme";
    private static final String DATED = "--dated";
    private static final String PAPER = "--paper";
    private static final String WHOLE_VINS = "--whole-vins";
    static final Set<String> OPTIONS = Set.of(OutFolder.OPTION, PLAN, KIND, FORMAT, TABLES, PROGRAMME, DATED, PAPER);
    /** Runs the what-if of the study for the documents. */
    static final String WHAT_IF = "--what-if";
    static final Set<String> FLAGS = Set.of(WHOLE_VINS, WHAT_IF);

    private DocumentOptions() {
    }

    /** Documents and formats; all where none are named. */
    static DocumentFolder.Wanted wanted(Arguments arguments) throws WrongUse {
        return new DocumentFolder.Wanted(words(arguments, KIND, DocumentKind::of, DocumentKind.words(), DocumentKind.values()),
                words(arguments, FORMAT, DocumentFormat::of, DocumentFormat.words(), DocumentFormat.values()));
    }

    private static <T> Set<T> words(Arguments arguments, String option, Function<String, Optional<T>> of, String allowed, T[] all)
            throws WrongUse {
        Optional<String> given = arguments.value(option);
        if (given.isEmpty()) {
            return new LinkedHashSet<>(Arrays.asList(all));
        }
        Set<T> found = new LinkedHashSet<>();
        for (String word : given.get().split(",")) {
            found.add(of.apply(word.strip()).orElseThrow(
                    () -> new WrongUse(option + " has “" + word.strip() + "”; allowed, joined by commas: " + allowed + ".")));
        }
        return found;
    }

    /** Place of the plan: the one named, else the first that is not the baseline. */
    static int plan(Arguments arguments, StudyResult result) throws WrongUse {
        Optional<String> name = arguments.value(PLAN);
        if (name.isPresent()) {
            return compared(result.plans().indexOf(PlanOperand.of(result, name.get())), result);
        }
        return IntStream.range(0, result.plans().size()).filter(p -> p != result.input().baseline()).findFirst()
                .orElse(result.input().baseline());
    }

    private static int compared(int plan, StudyResult result) throws WrongUse {
        int baseline = result.input().baseline();
        if (plan == baseline && result.plans().size() > 1) {
            throw new WrongUse(PLAN + " is “" + result.plans().get(plan).name() + "”, the baseline that plans are compared with; choose one of "
                    + IntStream.range(0, result.plans().size()).filter(p -> p != baseline).mapToObj(p -> "“" + result.plans().get(p).name() + "”")
                            .collect(Collectors.joining(", "))
                    + ".");
        }
        return plan;
    }

    static PaperChoices choices(Arguments arguments, StudyResult result) throws WrongUse {
        Set<GrantTable> tables = words(arguments, TABLES, GrantTable::of, GrantTable.names(), GrantTable.values());
        return new PaperChoices(List.copyOf(tables), programme(arguments, result), arguments.has(WHOLE_VINS), dated(arguments),
                paper(arguments));
    }

    private static Paper paper(Arguments arguments) throws WrongUse {
        Optional<String> word = arguments.value(PAPER);
        return word.isEmpty() ? Paper.LETTER : Paper.of(word.get()).orElseThrow(() -> new WrongUse(PAPER + " is “" + word.get()
                + "”; it must be one of " + Paper.words() + "."));
    }

    private static Optional<String> programme(Arguments arguments, StudyResult result) throws WrongUse {
        Optional<String> name = arguments.value(PROGRAMME);
        List<String> known = result.input().funding().programmes().stream().map(Programme::name).toList();
        if (name.isPresent() && !known.contains(name.get())) {
            throw new WrongUse(PROGRAMME + " is “" + name.get() + "”; it must be one of " + (known.isEmpty()
                    ? "none, since the study has none"
                    : String.join(", ", known)) + ".");
        }
        return name;
    }

    private static Optional<String> dated(Arguments arguments) throws WrongUse {
        Optional<String> date = arguments.value(DATED);
        try {
            return date.map(d -> LocalDate.parse(d).toString());
        } catch (DateTimeParseException e) {
            throw new WrongUse(DATED + " is “" + date.orElseThrow() + "”; it must be a date as 2026-08-31.");
        }
    }
}
