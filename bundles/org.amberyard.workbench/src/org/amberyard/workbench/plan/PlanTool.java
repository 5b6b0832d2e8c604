package org.amberyard.workbench.plan;

import java.util.Collection;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.model.plans.Plan;
import org.amberyard.study.BusSteps;
import org.amberyard.workbench.grid.CellRange;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.grid.GridTool;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;

/** Paints steps with a brush, and drags steps to other years without one. */
final class PlanTool implements GridTool {

    private final Grid grid;
    private final PlanGridModel model;
    private final PlanEdits edits;
    private final Consumer<String> objections;
    private final Consumer<String> replaced;
    private Brush brush = Brush.SELECT;
    private Stroke stroke;
    private Point pressed;

    /**
     * A tool.
     *
     * @param objections hears why cells stay as they are; null when there is no reason any more
     * @param replaced hears which steps of other years a stroke has taken away
     */
    PlanTool(Grid grid, PlanGridModel model, PlanEdits edits, Consumer<String> objections, Consumer<String> replaced) {
        this.grid = grid;
        this.model = model;
        this.edits = edits;
        this.objections = objections;
        this.replaced = replaced;
    }

    void use(Brush other) {
        brush = other;
    }

    @Override
    public boolean press(int row, int column, boolean more) {
        if (row >= model.rows() || !model.isYear(column)) {
            return false;
        }
        pressed = new Point(column, row);
        if (isPainting()) {
            stroke = new PaintStroke(model, brush, more, row, column);
            show();
            return true;
        }
        stroke = isStep(row, column) ? new StepMove(model, heldBlock(row, column), column) : null;
        return stroke != null;
    }

    private boolean isStep(int row, int column) {
        return row < model.rows() && model.isYear(column)
                && model.board().steps(model.bus(row)).in(model.year(column)).isPresent();
    }

    /** A step within the selected block takes the others of the block with it. */
    private CellRange heldBlock(int row, int column) {
        CellRange block = grid.selection().range();
        return block.contains(row, column) ? block : new CellRange(row, column, row, column);
    }

    private void show() {
        model.board().plan().ifPresent(plan -> model.board().preview(stroke.outcome(plan)));
        objections.accept(stroke.objection().orElse(null));
        grid.redraw();
    }

    @Override
    public void drag(int row, int column) {
        stroke.to(Math.min(row, model.rows() - 1), column);
        show();
    }

    @Override
    public void release() {
        Stroke done = stroke;
        cancel();
        if (done instanceof StepMove move && move.by() == 0) {
            grid.goTo(pressed.y, pressed.x);
        } else {
            model.board().plan().ifPresent(plan -> apply(done, plan));
        }
    }

    private void apply(Stroke done, Plan plan) {
        Collection<BusSteps> outcome = done.outcome(plan).values();
        if (done instanceof StepMove move) {
            edits.write(plan, outcome);
            follow(move.by());
        } else {
            Optional<String> gone = ReplacedSteps.words(plan, outcome);
            edits.write(plan, outcome);
            gone.ifPresent(replaced);
        }
    }

    /** The selection goes with the steps that have moved. */
    private void follow(int by) {
        CellRange block = grid.selection().range();
        int first = model.column(model.board().firstYear());
        grid.selection().select(new CellRange(block.top(), Math.max(first, block.left() + by), block.bottom(),
                Math.min(model.columns() - 1, block.right() + by)));
    }

    @Override
    public void cancel() {
        stroke = null;
        model.board().preview(Map.of());
        grid.redraw();
    }

    /** Moves the steps of the selected cells by some years, as dragging does. */
    void moveSelected(int by) {
        CellRange block = grid.selection().range();
        StepMove move = new StepMove(model, block, block.left());
        move.to(block.top(), block.left() + by);
        model.board().plan().filter(plan -> !move.isEmpty()).ifPresent(plan -> apply(move, plan));
    }

    @Override
    public boolean isPainting() {
        return brush.kind() != Brush.Kind.SELECT;
    }

    @Override
    public int cursor(int row, int column) {
        if (isPainting()) {
            return model.isYear(column) ? SWT.CURSOR_CROSS : SWT.CURSOR_ARROW;
        }
        return isStep(row, column) ? SWT.CURSOR_HAND : SWT.CURSOR_ARROW;
    }
}
