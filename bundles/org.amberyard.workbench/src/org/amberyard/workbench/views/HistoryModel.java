package org.amberyard.workbench.views;

import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.Change;
import org.amberyard.workbench.session.HistoryStep;
import org.amberyard.workbench.session.StepWords;
import org.eclipse.osgi.util.NLS;

/** Edits as a table, newest first; the last row is the study as it was opened. */
final class HistoryModel implements GridModel {

    private static final List<String> HEADERS = List.of(Messages.History_time, Messages.History_edit, Messages.History_where,
            Messages.History_field, Messages.History_before, Messages.History_after);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final CellLook UNDONE = new CellLook(Palette.PAPER, Palette.FADED, null);
    private static final CellLook HERE = new CellLook(Palette.PAPER, Palette.INK, Palette.AMBER);

    private final List<HistoryStep> steps;
    private final int done;

    HistoryModel(List<HistoryStep> steps, int done) {
        this.steps = steps;
        this.done = done;
    }

    /** Number of edits that the study holds at a row. */
    int doneAt(int row) {
        return steps.size() - row;
    }

    /** Row of the study as it is. */
    int here() {
        return steps.size() - done;
    }

    /** True when it shows the very same edits; their changes need not be compared one by one. */
    boolean isSame(List<HistoryStep> otherSteps, int otherDone) {
        return done == otherDone && steps.size() == otherSteps.size()
                && IntStream.range(0, steps.size()).allMatch(i -> steps.get(i) == otherSteps.get(i));
    }

    @Override
    public int rows() {
        return steps.size() + 1;
    }

    @Override
    public int columns() {
        return HEADERS.size();
    }

    @Override
    public String header(int column) {
        return HEADERS.get(column);
    }

    @Override
    public String text(int row, int column) {
        if (row == steps.size()) {
            return column == 1 ? Messages.History_opened : "";
        }
        HistoryStep step = steps.get(doneAt(row) - 1);
        return switch (column) {
            case 0 -> TIME.format(step.time());
            case 1 -> step.label();
            default -> step.count() == 1 && step.changes().size() == 1 ? value(step.changes().get(0), column) : summary(step, column);
        };
    }

    private static String value(Change change, int column) {
        return switch (column) {
            case 2 -> change.element();
            case 3 -> change.field();
            case 4 -> change.before();
            default -> change.after();
        };
    }

    /** An import or a fill is one line that says how much it changed. */
    private static String summary(HistoryStep step, int column) {
        return column == 2 && step.count() > 0 ? NLS.bind(Messages.History_many, step.count()) : "";
    }

    /** All that an edit has changed, line by line. */
    String details(int row) {
        if (row >= steps.size()) {
            return Messages.History_opened_tip;
        }
        return StepWords.details(steps.get(doneAt(row) - 1));
    }

    @Override
    public CellLook look(int row, int column) {
        if (row == here() && column == 0) {
            return HERE;
        }
        return row < here() ? UNDONE : CellLook.PLAIN;
    }

    @Override
    public String words(int row, int column) {
        String state = row == here() ? Messages.History_here : row < here() ? Messages.History_undone : "";
        return header(column) + ": " + text(row, column) + (state.isEmpty() ? "" : ". " + state);
    }

    @Override
    public String tip(int row, int column) {
        return details(row);
    }

    @Override
    public boolean stretchesLast() {
        return true;
    }
}
