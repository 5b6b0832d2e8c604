package org.amberyard.workbench.plan;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.model.plans.Plan;
import org.amberyard.workbench.compare.CompareView;
import org.amberyard.workbench.look.DropList;
import org.amberyard.workbench.look.Fonts;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;

/** Chooses the plan on show, and offers what is done with a plan as a whole. */
final class PlanBar {

    private static final int MOST_LINES = 20;

    private final StudySession session;
    private final PlanChoice choice;
    private final Combo plans;
    private final ToolBar tools;
    private final ToolItem delete;
    private final Label note;
    private final Runnable afterwards;

    /** @param afterwards is run after something was done with a plan */
    PlanBar(Composite parent, StudySession session, Runnable afterwards) {
        this.session = session;
        this.afterwards = afterwards;
        this.choice = new PlanChoice(session);
        Composite area = new Composite(parent, SWT.NONE);
        GridLayoutFactory.fillDefaults().spacing(6, 0).numColumns(4).applyTo(area);
        GridDataFactory.fillDefaults().grab(true, false).applyTo(area);
        Label title = new Label(area, SWT.NONE);
        title.setText(Messages.Bar_plan);
        title.setFont(Fonts.TITLE.font());
        title.setForeground(Palette.INK.color());
        plans = DropList.on(area);
        plans.setVisibleItemCount(MOST_LINES);
        plans.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = Messages.Bar_plan;
            }
        });
        plans.addListener(SWT.Selection, e -> choice.choose(session.study().getPlans().get(plans.getSelectionIndex())));
        tools = new ToolBar(area, SWT.FLAT | SWT.RIGHT);
        PlanActions actions = new PlanActions(session);
        tool(Messages.Bar_fill, Messages.Bar_fill_tip, plan -> FillPlan.ask(tools.getShell(), session, plan));
        tool(Messages.Bar_level, Messages.Bar_level_tip, plan -> LevelPlan.ask(tools.getShell(), session, plan));
        tool(Messages.Bar_best, Messages.Bar_best_tip, plan -> BestPlanAsk.ask(tools.getShell(), session, plan));
        new ToolItem(tools, SWT.SEPARATOR);
        tool(Messages.Bar_compare, Messages.Bar_compare_tip, plan -> CompareView.open());
        tool(Messages.Bar_copy, Messages.Bar_copy_tip, plan -> actions.copy(tools.getShell(), plan));
        tool(Messages.Bar_rename, Messages.Bar_rename_tip, plan -> actions.rename(tools.getShell(), plan));
        delete = tool(Messages.Bar_delete, Messages.Bar_delete_tip, actions::delete);
        note = new Label(area, SWT.RIGHT);
        note.setFont(Fonts.SMALL.font());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(note);
    }

    private ToolItem tool(String text, String tip, Consumer<Plan> action) {
        ToolItem item = new ToolItem(tools, SWT.PUSH);
        item.setText(text);
        item.setToolTipText(tip);
        item.setForeground(Palette.INK.color());
        item.addListener(SWT.Selection, e -> {
            choice.plan().ifPresent(action);
            afterwards.run();
        });
        return item;
    }

    /** What keeps the results behind is more urgent than what the signs mean. */
    private void showNote(String reason) {
        boolean behind = !reason.isBlank();
        note.setText(behind ? reason.replace("&", "&&") : Messages.Legend);
        note.setToolTipText(behind ? reason : null);
        note.setForeground(behind ? Palette.WARNING.color() : Palette.MUTED.color());
    }

    /** Offers the plans that the study has now, and says why results lag behind. */
    void update() {
        String[] names = choice.options().names().toArray(String[]::new);
        if (!Arrays.equals(names, plans.getItems())) {
            plans.setItems(names);
            plans.getParent().layout();
        }
        plans.setEnabled(names.length > 0);
        choice.picked().map(p -> p.place()).filter(place -> place != plans.getSelectionIndex()).ifPresent(plans::select);
        Optional<Plan> plan = choice.plan();
        Arrays.stream(tools.getItems()).forEach(t -> t.setEnabled(plan.isPresent()));
        delete.setEnabled(plan.filter(new PlanActions(session)::canDelete).isPresent());
        showNote(session.evaluation().reason());
    }
}
