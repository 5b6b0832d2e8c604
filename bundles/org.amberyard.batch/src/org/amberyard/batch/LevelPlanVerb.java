package org.amberyard.batch;

import java.util.Optional;
import java.util.Set;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.study.LevelWords;
import org.amberyard.study.PlanLevel;

/** Moves the bus replacements of a plan to years in which it keeps within its cap. */
final class LevelPlanVerb implements Verb {
    private static final String WRITE = "--write";

    @Override
    public String name() {
        return "level-plan";
    }

    @Override
    public String usage() {
        return "level-plan STUDY PLAN [" + WRITE + "]";
    }

    @Override
    public String summary() {
        return "says which bus replacements of the plan PLAN in STUDY would move to which years so that no year is above the plan's "
                + "cap, what that costs, and which years cannot be met; " + WRITE + " moves them in STUDY";
    }

    @Override
    public Set<String> options() {
        return Set.of();
    }

    @Override
    public Set<String> flags() {
        return Set.of(WRITE);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        StudyPlan of = StudyPlan.of(arguments, console);
        Study study = of.study();
        Plan plan = of.plan();
        if (!PlanLevel.hasCap(plan)) {
            throw new WrongUse("Plan “" + ElementNames.of(plan) + "” has no budget cap per year; enter one above 0 with the plan.");
        }
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(study, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        PlanLevel level = new PlanLevel(study, plan,
                PlanLevel.levelling(evaluated.get().result(), of.place(), Progress.NONE));
        LevelWords.of(level).forEach(console.out()::println);
        if (arguments.has(WRITE) && !level.isEmpty()) {
            level.write();
            of.save(console, "The steps are moved in");
        }
        return ExitCode.DONE;
    }
}
