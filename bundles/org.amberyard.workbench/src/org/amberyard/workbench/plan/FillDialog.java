package org.amberyard.workbench.plan;

import java.util.Optional;
import org.amberyard.core.plan.FillRule;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.FillWords;
import org.amberyard.study.PlanFill;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Shell;

/** Asks for a rule, shows what it writes into a plan and what it leaves as it is; OK writes it. */
public final class FillDialog extends PlanPreviewDialog {

    private final StudyResult result;
    private FillForm form;

    /** @param result results of the study as it stands */
    public FillDialog(Shell parent, StudySession session, Plan plan, StudyResult result) {
        super(parent, session, plan,
                new Texts(Messages.Fill_titleOf, Messages.Fill_accept, Messages.Fill_done, new Point(620, 520)));
        this.result = result;
    }

    @Override
    void createForm(Composite area) {
        form = new FillForm(area, session().study(), PlanFill.usualPayer(plan()), this::opened);
    }

    @Override
    void opened() {
        Optional<FillRule> rule = form.rule();
        Optional<PlanFill> fill = rule.map(r -> PlanFill.of(session().study(), plan(), result, r, form.programme()));
        preview(fill.map(f -> String.join("\n", FillWords.of(f))).orElseGet(form::refusal),
                fill.filter(f -> !f.isEmpty()).map(f -> f::write));
    }
}
