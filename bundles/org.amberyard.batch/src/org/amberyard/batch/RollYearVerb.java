package org.amberyard.batch;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.charts.Figures;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.report.YearVariance;
import org.amberyard.study.StudyFindings;
import org.amberyard.study.StudyUnits;
import org.amberyard.study.roll.ActualProposal;
import org.amberyard.study.roll.PastSteps;
import org.amberyard.study.roll.RollChange;
import org.amberyard.study.roll.RollChoice;
import org.amberyard.study.roll.YearRoll;

/** Writes a study rolled to a later base year. */
final class RollYearVerb implements Verb {
    private static final String OUT = "--out";
    private static final String TO = "--to";
    private static final String PLAN = "--plan";
    private static final String LATE = "--late";
    private static final String TAKE = "--take";
    private static final String SAME_END = "--same-end";
    private static final String ALL = "all";

    @Override
    public String name() {
        return "roll-year";
    }

    @Override
    public String usage() {
        return "roll-year STUDY " + OUT + " NEWSTUDY [" + TO + " YEAR] [" + PLAN + " PLAN] [" + SAME_END + "] [" + LATE + " STEP;…] [" + TAKE
                + " " + Stream.of(ActualProposal.Kind.values()).map(ActualProposal.Kind::key).collect(Collectors.joining(",")) + "|" + ALL + "]";
    }

    @Override
    public String summary() {
        return "writes NEWSTUDY, which is STUDY with the next base year, or YEAR: what the plan PLAN has done by then stands in fleet and "
                + "yard, and each later year is as it was; says what changes, field by field, and how the years that are over went beside the "
                + "plan; steps named with " + LATE + " (such as “2027 B03”) were not carried out; " + TAKE + " puts actuals in the place of "
                + "assumptions; the study keeps its number of years, or its end with " + SAME_END;
    }

    @Override
    public Set<String> options() {
        return Set.of(OUT, TO, PLAN, LATE, TAKE);
    }

    @Override
    public Set<String> flags() {
        return Set.of(SAME_END);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Path file = arguments.study(console.folder());
        Path out = arguments.path(OUT, console.folder());
        if (out.equals(file)) {
            throw new WrongUse(OUT + " is " + out + ", the study itself; give another file, the study stays as it is.");
        }
        Study study = StudyArgument.load(file);
        if (!StudyFindings.canEvaluate(StudyFindings.of(study))) {
            EvaluatedStudy.of(study, console);
            return ExitCode.WRONG_USE;
        }
        YearRoll roll = rolled(study, choice(arguments, study), console);
        List<ActualProposal> taken = taken(arguments, roll.proposals());
        roll.take(taken);
        tell(roll, taken, console);
        StudyArgument.save(roll.study(), out);
        console.out().println("The new study is " + out + "; " + file + " stays as it is.");
        return ExitCode.DONE;
    }

    private static RollChoice choice(Arguments arguments, Study study) throws WrongUse {
        int base = study.getSettings().getBaseYear();
        int to = arguments.whole(TO, base + 1, base + Math.max(1, study.getSettings().getHorizonYears() - 1)).orElse(base + 1);
        Plan plan = plan(arguments, study);
        return new RollChoice(to, plan, arguments.has(SAME_END), late(arguments, PastSteps.of(plan, base, to)));
    }

    /** The plan that is named, else the only one that there is to carry out. */
    private static Plan plan(Arguments arguments, Study study) throws WrongUse {
        Optional<String> named = arguments.value(PLAN);
        if (named.isPresent()) {
            return NamedElement.of(PLAN, named.get(), study.getPlans());
        }
        return PastSteps.likelyCarriedOut(study).orElseThrow(() -> new WrongUse("Option " + PLAN + " is missing: say which plan was carried "
                + "out, one of " + study.getPlans().stream().map(Plan::getName).collect(Collectors.joining(", ")) + "."));
    }

    private static Set<Sourced> late(Arguments arguments, List<Sourced> past) throws WrongUse {
        Set<Sourced> late = new HashSet<>();
        for (String name : arguments.value(LATE).map(l -> l.split(";")).orElse(new String[0])) {
            List<Sourced> steps = past.stream().filter(s -> ElementNames.of(s).equals(name.strip())).toList();
            if (steps.isEmpty()) {
                throw new WrongUse(LATE + " is “" + name.strip() + "”; " + (past.isEmpty() ? "the plan has no step in the years that are over."
                        : "it must be of " + past.stream().map(ElementNames::of).collect(Collectors.joining("; ")) + "."));
            }
            late.addAll(steps);
        }
        return late;
    }

    private static YearRoll rolled(Study study, RollChoice choice, Console console) throws WrongUse {
        try {
            return YearRoll.of(study, choice, console.evaluator()::evaluate);
        } catch (IllegalArgumentException e) {
            throw new WrongUse(e.getMessage());
        }
    }

    private static List<ActualProposal> taken(Arguments arguments, List<ActualProposal> proposals) throws WrongUse {
        String words = arguments.value(TAKE).orElse("");
        Set<String> keys = Arrays.stream(words.split(",")).map(String::strip).filter(k -> !k.isEmpty()).collect(Collectors.toSet());
        List<String> known = proposals.stream().map(p -> p.kind().key()).toList();
        for (String key : keys) {
            if (!key.equals(ALL) && !known.contains(key)) {
                throw new WrongUse(TAKE + " is “" + key + "”; " + (known.isEmpty() ? "the study has no actuals of the years that are over."
                        : "the actuals of the years that are over allow " + String.join(", ", known) + ", " + ALL + "."));
            }
        }
        return proposals.stream().filter(p -> keys.contains(ALL) || keys.contains(p.kind().key())).toList();
    }

    private static List<List<String>> lines(List<YearVariance> variances) {
        List<List<String>> lines = new ArrayList<>();
        lines.add(List.of("Plan against actual", "Year", "Planned", "Actual", "Difference", "%"));
        variances.forEach(v -> lines.add(List.of(v.figure(), String.valueOf(v.year()), Figures.whole(v.planned()), Figures.whole(v.actual()),
                Figures.whole(v.difference()), Double.isNaN(v.share()) ? "" : String.format(Locale.ROOT, "%+.1f", 100 * v.share()))));
        return lines;
    }

    private static void tell(YearRoll roll, List<ActualProposal> taken, Console console) {
        List<YearVariance> variances = YearVariance.of(roll.before(), roll.carriedOut(), roll.years(), StudyUnits.of(roll.study()));
        if (!variances.isEmpty()) {
            console.out().println(TextTable.aligned(lines(variances)));
        }
        for (ActualProposal proposal : roll.proposals()) {
            console.out().println((taken.contains(proposal) ? "Taken: " : "Not taken: ") + proposal.words() + ".");
        }
        roll.changes().stream().map(RollChange::words).forEach(console.out()::println);
        roll.remarks().forEach(console.out()::println);
    }
}
