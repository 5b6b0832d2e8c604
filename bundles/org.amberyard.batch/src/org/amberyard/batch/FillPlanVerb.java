package org.amberyard.batch;

import java.util.HashSet;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.FillRule;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.study.FillWords;
import org.amberyard.study.PlanFill;

/** Writes the steps of a plan by a rule. */
final class FillPlanVerb implements Verb {
    private static final String PROGRAMME = "--programme";

    @Override
    public String name() {
        return "fill-plan";
    }

    @Override
    public String usage() {
        return "fill-plan STUDY PLAN " + FillRuleOptions.USAGE + " [" + PROGRAMME + " PROGRAMME]";
    }

    @Override
    public String summary() {
        return "writes the steps of the plan PLAN in STUDY: each bus at the age of N years, N buses a year or all by the "
                + "last year, the oldest first; electric where a type does the route, with --engine like for like; with ports "
                + "of the type PORT, one for X buses (1 where it is left out), in place of the plan's, and with the programme "
                + "that pays. Roles are route (where none is given), spare, activity, separated by commas";
    }

    @Override
    public Set<String> options() {
        Set<String> all = new HashSet<>(FillRuleOptions.OPTIONS);
        all.add(PROGRAMME);
        return all;
    }

    @Override
    public Set<String> flags() {
        return Set.of(FillRuleOptions.ENGINE);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        StudyPlan of = StudyPlan.of(arguments, console);
        Study study = of.study();
        Plan plan = of.plan();
        FillRule rule = new FillRuleOptions(arguments, study).rule();
        Optional<String> named = arguments.value(PROGRAMME);
        Optional<Programme> programme = named.isEmpty() ? Optional.empty()
                : Optional.of(NamedElement.of(PROGRAMME, named.get(), study.getProgrammes()));
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(study, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        PlanFill fill = PlanFill.of(study, plan, evaluated.get().result(), rule, programme);
        FillWords.of(fill).forEach(console.out()::println);
        if (fill.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        fill.write();
        of.save(console, "The steps are in");
        return ExitCode.DONE;
    }
}
