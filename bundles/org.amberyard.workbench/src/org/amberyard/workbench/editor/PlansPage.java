package org.amberyard.workbench.editor;

import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.compare.CompareView;
import org.amberyard.workbench.fields.Columns;
import org.amberyard.workbench.fields.ElementList;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.fields.Sheets;
import org.amberyard.workbench.plan.BestPlanAsk;
import org.amberyard.workbench.plan.FillPlan;
import org.amberyard.workbench.plan.LevelPlan;
import org.amberyard.workbench.plan.PlanActions;
import org.amberyard.workbench.plan.PlanChoice;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.widgets.Composite;

/** Plans, and what the one in focus buys, when and how it pays. */
final class PlansPage extends StudyPage {

    private FeatureTable plans;
    private boolean following;

    PlansPage(PageSite site) {
        super(site);
    }

    @Override
    Composite create(Composite parent) {
        SashForm columns = columns(parent);
        plans = rows(columns, Messages.Table_plans, list(StudyPackage.Literals.STUDY__PLANS, PlansPackage.Literals.PLAN),
                Columns.with(PlansPackage.Literals.PLAN, 1, PlansPackage.Literals.PLAN__YEARLY_CAP));
        plans.addCommand(Messages.Plan_copy, () -> withPlan(plans,
                plan -> new PlanActions(session()).copy(parent.getShell(), plan).ifPresent(copy -> plans.reveal(copy, null))));
        plans.addTool(Messages.Plan_compare, Messages.Plan_compare_tip, CompareView::open);
        plans.addCommand(Messages.Plan_fill, () -> withPlan(plans, plan -> FillPlan.ask(parent.getShell(), session(), plan)));
        plans.addCommand(Messages.Plan_level, () -> withPlan(plans, plan -> LevelPlan.ask(parent.getShell(), session(), plan)));
        plans.addCommand(Messages.Plan_best, () -> withPlan(plans, plan -> BestPlanAsk.ask(parent.getShell(), session(), plan)));
        FeatureTable replacements = rows(columns, Messages.Table_replacements, plans::selected,
                PlansPackage.Literals.PLAN__REPLACEMENTS, PlansPackage.Literals.REPLACEMENT);
        Sheets sheets = new Sheets(columns);
        FeatureTable ports = rows(sheets.area(), Messages.Table_portPurchases, plans::selected,
                PlansPackage.Literals.PLAN__PORT_PURCHASES, PlansPackage.Literals.PORT_PURCHASE);
        FeatureTable works = rows(sheets.area(), Messages.Table_workOrders, plans::selected,
                PlansPackage.Literals.PLAN__WORK_ORDERS, PlansPackage.Literals.WORK_ORDER);
        FeatureTable oneOffs = rows(sheets.area(), Messages.Table_oneOffs, plans::selected,
                PlansPackage.Literals.PLAN__ONE_OFF_COSTS, PlansPackage.Literals.ONE_OFF_COST);
        FeatureTable financing = transposed(sheets.area(), Messages.Table_financing, new ElementList(session(), plans::selected,
                PlansPackage.Literals.PLAN__FINANCING, PlansPackage.Literals.FINANCING),
                Columns.of(PlansPackage.Literals.FINANCING));
        sheets.share(ports, works, oneOffs, financing);
        drive(plans, replacements, ports, works, oneOffs, financing);
        plans.drives(this::chosen);
        columns.setWeights(28, 34, 38);
        choiceChanged();
        return columns;
    }

    /** The plan in focus is the one that all views show. */
    private void chosen() {
        if (!following && plans.selected() instanceof Plan plan && study().getPlans().contains(plan)) {
            new PlanChoice(session()).choose(plan);
        }
    }

    @Override
    void update() {
        super.update();
        choiceChanged();
    }

    /** The plan that the views show is the one in focus. */
    @Override
    void choiceChanged() {
        Optional<Plan> plan = new PlanChoice(session()).plan().filter(p -> p != plans.selected());
        following = true;
        plan.ifPresent(p -> plans.reveal(p, plans.field().orElse(null)));
        following = false;
    }

    private static void withPlan(FeatureTable plans, Consumer<Plan> action) {
        if (plans.selected() instanceof Plan plan) {
            action.accept(plan);
        }
    }
}
