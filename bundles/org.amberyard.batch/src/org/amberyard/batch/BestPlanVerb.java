package org.amberyard.batch;

import java.util.Optional;
import java.util.Set;
import org.amberyard.core.plan.BestPlanAim;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.study.BestWords;
import org.amberyard.study.PlanBest;

/** Looks for the cheapest plan. */
final class BestPlanVerb implements Verb {
    private static final String WRITE = "--write";

    @Override
    public String name() {
        return "best-plan";
    }

    @Override
    public String usage() {
        return "best-plan STUDY PLAN " + BestPlanOptions.USAGE + " [" + WRITE + "]";
    }

    @Override
    public String summary() {
        return "looks for the cheapest bus replacements of the plan PLAN in STUDY, within its yearly cap, with N electric buses by a year "
                + "where they are asked for, and says below which cost no plan lies and what binds. Works, one-off costs and financing "
                + "stay as they are; ports of the type PORT follow the buses; programmes are those that the plan names where none are "
                + "given; roles are route and spare where none are given; " + WRITE + " writes the steps into STUDY";
    }

    @Override
    public Set<String> options() {
        return BestPlanOptions.OPTIONS;
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
        if (study.getDepot().getPortTypes().isEmpty()) {
            throw new WrongUse("The study has no port types; enter one with the depot.");
        }
        BestPlanAim aim = new BestPlanOptions(arguments, study, plan).aim();
        Optional<EvaluatedStudy> evaluated = EvaluatedStudy.of(study, console);
        if (evaluated.isEmpty()) {
            return ExitCode.WRONG_USE;
        }
        try {
            PlanBest best = new PlanBest(study, plan, aim, PlanBest.search(evaluated.get().result(),
                    of.place(), aim, ProgressLines.afterAWhile(console.err(), "Cheapest plan")));
            BestWords.of(best).forEach(console.out()::println);
            if (arguments.has(WRITE)) {
                best.write();
                of.save(console, "The steps are in");
            }
            return ExitCode.DONE;
        } catch (IllegalArgumentException e) {
            throw new WrongUse(e.getMessage() + "; choose other --roles or a plan whose buses do not move between places.");
        }
    }
}
