package org.amberyard.workbench.plan;

import org.amberyard.workbench.compare.CompareView;
import org.amberyard.workbench.fields.CellMenu;

/** What can be done with the selected cells of the plan grid and with its plan. */
final class PlanMenu {
    private PlanMenu() {
    }

    static void hook(PlanGrid plan) {
        CellMenu menu = new CellMenu(plan.grid());
        menu.addSeparator();
        menu.add(Messages.Menu_earlier, () -> plan.tool().moveSelected(-1));
        menu.add(Messages.Menu_later, () -> plan.tool().moveSelected(1));
        menu.add(Messages.Menu_rule, plan::leaveToRule);
        menu.addSeparator();
        menu.add(Messages.Menu_fill, plan::fill);
        menu.add(Messages.Menu_level, plan::level);
        menu.add(Messages.Menu_best, plan::best);
        menu.add(Messages.Menu_compare, CompareView::open);
    }
}
