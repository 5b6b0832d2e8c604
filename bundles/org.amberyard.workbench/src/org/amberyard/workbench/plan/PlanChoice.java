package org.amberyard.workbench.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.session.Choices.Chosen;
import org.amberyard.workbench.session.Choices.Kind;
import org.amberyard.workbench.session.Options;
import org.amberyard.workbench.session.StudySession;

/** The plan of a study that is looked at: the one that the charts show too. */
public final class PlanChoice {

    private final StudySession session;

    /** The choice in a study that is open. */
    public PlanChoice(StudySession session) {
        this.session = session;
    }

    private Study study() {
        return session.study();
    }

    /** The plans to choose from; the first that is not the baseline is preferred. */
    Options options() {
        List<Plan> plans = study().getPlans();
        int preferred = IntStream.range(0, plans.size()).filter(p -> plans.get(p) != study().getBaseline()).findFirst().orElse(0);
        return Options.upTo(plans.size(), p -> ElementNames.of(plans.get(p)), preferred);
    }

    /** Place of the plan among those of the study; empty when it has none. */
    Optional<Chosen> picked() {
        return options().pick(session.choices().of(Kind.PLAN));
    }

    /** The plan; empty when the study has none. */
    public Optional<Plan> plan() {
        return picked().map(p -> study().getPlans().get(p.place()));
    }

    /** Looks at a copy of a plan; results show the plan itself until they know the copy. */
    void chooseCopy(Plan copy, Plan of) {
        session.choices().choose(Kind.PLAN,
                new Chosen(ElementNames.of(copy), study().getPlans().indexOf(copy), ElementNames.of(of)));
    }

    /** Looks at a plan. */
    public void choose(Plan plan) {
        chooseCopy(plan, plan);
    }
}
