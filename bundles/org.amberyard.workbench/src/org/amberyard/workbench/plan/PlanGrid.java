package org.amberyard.workbench.plan;

import java.util.stream.IntStream;
import org.amberyard.workbench.fields.PageSite;
import org.amberyard.workbench.grid.CellRange;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;

/** A plan as a table of buses and years, to look at and to paint. */
public final class PlanGrid {

    private final PageSite site;
    private final PlanChoice choice;
    private final PlanGridModel model;
    private final Composite area;
    private final PlanBar bar;
    private final BrushBar brushes;
    private final Grid grid;
    private final PlanTool tool;

    /** The grid of the plan that is looked at. */
    public PlanGrid(Composite parent, PageSite site) {
        this.site = site;
        choice = new PlanChoice(session());
        model = new PlanGridModel(session());
        area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_FORCE);
        GridLayoutFactory.fillDefaults().margins(8, 3).spacing(4, 2).applyTo(area);
        bar = new PlanBar(area, session(), this::focus);
        Composite palette = new Composite(area, SWT.NONE);
        palette.setLayout(new FillLayout());
        GridDataFactory.fillDefaults().grab(true, false).applyTo(palette);
        grid = new Grid(area, model);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(grid);
        tool = new PlanTool(grid, model, new PlanEdits(session()), site.refusal(), site.hint());
        brushes = new BrushBar(palette, this::take);
        grid.setTool(tool);
        grid.addListener(SWT.KeyDown, this::pressed);
        grid.comesBy(site.bringOn());
        grid.onRefusal(r -> site.refusal().accept(r == null ? null : r.getMessage()));
        grid.selection().onMove(this::tellCell);
        grid.addListener(SWT.FocusIn, e -> tellCell());
        grid.addListener(SWT.FocusOut, e -> site.hint().accept(""));
        PlanMenu.hook(this);
        update();
    }

    private StudySession session() {
        return site.session();
    }

    /** The control to lay out. */
    public Composite control() {
        return area;
    }

    /** The table itself. */
    public Grid grid() {
        return grid;
    }

    PlanTool tool() {
        return tool;
    }

    /** Reads the study, the results and the user's choice again. */
    public void update() {
        model.update(choice.plan().orElse(null), session().evaluation().result());
        bar.update();
        brushes.show(model.looks());
        grid.refresh();
    }

    private void take(Brush brush) {
        tool.use(brush);
        focus();
    }

    /** Keys, such as that of undo, must reach the cells after a brush, a stroke or a dialog. */
    private void focus() {
        if (grid.isVisible()) {
            grid.setFocus();
        }
    }

    private void pressed(Event event) {
        boolean alt = (event.stateMask & SWT.MODIFIER_MASK) == SWT.ALT;
        if (alt && (event.keyCode == SWT.ARROW_LEFT || event.keyCode == SWT.ARROW_RIGHT)) {
            tool.moveSelected(event.keyCode == SWT.ARROW_LEFT ? -1 : 1);
        } else if (event.keyCode == SWT.ESC) {
            brushes.use(Brush.SELECT);
        }
    }

    /** Takes all steps of the selected buses away. */
    void leaveToRule() {
        CellRange range = grid.selection().range();
        model.board().plan().ifPresent(plan -> new PlanEdits(session()).write(plan,
                IntStream.rangeClosed(range.top(), Math.min(range.bottom(), model.rows() - 1))
                        .mapToObj(row -> model.board().steps(model.bus(row)).none()).toList()));
    }

    /** Asks whether steps are to move so that the plan keeps within its cap. */
    void level() {
        model.board().plan().ifPresent(plan -> LevelPlan.ask(area.getShell(), session(), plan));
    }

    /** Asks what the cheapest plan may decide. */
    void best() {
        model.board().plan().ifPresent(plan -> BestPlanAsk.ask(area.getShell(), session(), plan));
    }

    /** Asks for a rule that fills the plan. */
    void fill() {
        model.board().plan().ifPresent(plan -> FillPlan.ask(area.getShell(), session(), plan));
    }

    private void tellCell() {
        int row = grid.selection().row();
        int column = grid.selection().column();
        boolean within = grid.isFocusControl() && row < model.rows() && column < model.columns();
        if (within) {
            site.hint().accept(grid.words(row, column));
        }
    }
}
