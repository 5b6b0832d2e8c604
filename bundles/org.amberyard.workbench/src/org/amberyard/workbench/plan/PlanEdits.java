package org.amberyard.workbench.plan;

import java.util.Collection;
import java.util.List;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BusSteps;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.osgi.util.NLS;

/** Changes the steps of a plan, each change as one that can be undone. */
final class PlanEdits {

    /** A change of what a plan holds. */
    static final class Edit extends ChangeCommand {
        private final Runnable change;

        Edit(Plan plan, String label, Runnable change) {
            super(plan);
            this.change = change;
            setLabel(label);
        }

        @Override
        protected void doExecute() {
            change.run();
        }
    }

    private final StudySession session;

    PlanEdits(StudySession session) {
        this.session = session;
    }

    /** Gives buses of a plan other steps; nothing happens when they are the ones that it has. */
    void write(Plan plan, Collection<BusSteps> steps) {
        List<BusSteps> changed = steps.stream().filter(s -> !s.equals(BusSteps.of(plan, s.bus()))).toList();
        if (!changed.isEmpty()) {
            session.execute(new Edit(plan, label(changed), () -> changed.forEach(s -> s.write(plan))));
        }
    }

    private static String label(List<BusSteps> changed) {
        return changed.size() == 1 ? NLS.bind(Messages.Edit_one, ElementNames.of(changed.get(0).bus()))
                : NLS.bind(Messages.Edit_many, changed.size());
    }
}
