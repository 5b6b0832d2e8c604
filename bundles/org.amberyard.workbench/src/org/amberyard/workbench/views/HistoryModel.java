package org.amberyard.workbench.views;

import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.workbench.grid.CellLook;
import org.amberyard.workbench.grid.ListModel;
import org.amberyard.workbench.language.Counted;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.session.Change;
import org.amberyard.workbench.session.HistoryStep;
import org.amberyard.workbench.session.KeptStep;
import org.amberyard.workbench.session.StepWords;

/**
 * Edits as a table, newest first; the last row is the study as it was opened. Between them stands what was kept with the study and is no edit.
 */
final class HistoryModel extends ListModel<HistoryModel.Line> {

    private static final List<String> HEADERS = List.of(Messages.History_time, Messages.History_edit, Messages.History_where,
            Messages.History_field, Messages.History_before, Messages.History_after);
    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("HH:mm:ss", Locale.ROOT);
    private static final CellLook UNDONE = new CellLook(Palette.PAPER, Palette.FADED, null);
    private static final CellLook KEPT = new CellLook(Palette.PAPER, Palette.MUTED, null);
    private static final CellLook HERE = new CellLook(Palette.PAPER, Palette.INK, Palette.AMBER);

    private final List<HistoryStep> steps;
    private final List<KeptStep> kept;
    private final int done;

    /** The study behind a number of edits, or something that was kept while it held so many. */
    record Line(int done, Optional<KeptStep> kept) {
    }

    HistoryModel(List<HistoryStep> steps, List<KeptStep> kept, int done) {
        super(HEADERS, lines(steps, kept));
        this.steps = steps;
        this.kept = kept;
        this.done = done;
    }

    private static List<Line> lines(List<HistoryStep> steps, List<KeptStep> kept) {
        List<Line> lines = new ArrayList<>();
        IntStream.rangeClosed(0, steps.size()).forEach(edits -> {
            lines.add(new Line(edits, Optional.empty()));
            kept.stream().filter(k -> k.after() == edits).forEach(k -> lines.add(new Line(edits, Optional.of(k))));
        });
        Collections.reverse(lines);
        return lines;
    }

    /** Number of edits that the study holds at a row. */
    int doneAt(int row) {
        return line(row).done();
    }

    /** True for a row of an edit, or of the study as it was opened: where the study can be brought to. */
    boolean isPlace(int row) {
        return line(row).kept().isEmpty();
    }

    /** Row of the study as it is. */
    int here() {
        return lines().indexOf(new Line(done, Optional.empty()));
    }

    /** True when it shows the very same edits; their changes need not be compared one by one. */
    boolean isSame(List<HistoryStep> otherSteps, List<KeptStep> otherKept, int otherDone) {
        return done == otherDone && kept.equals(otherKept) && steps.size() == otherSteps.size()
                && IntStream.range(0, steps.size()).allMatch(i -> steps.get(i) == otherSteps.get(i));
    }

    @Override
    public String text(int row, int column) {
        return line(row).kept().map(k -> text(TIME.format(k.time()), k.label(), column))
                .orElseGet(() -> doneAt(row) == 0 ? text("", Messages.History_opened, column) : text(steps.get(doneAt(row) - 1), column));
    }

    private static String text(String time, String label, int column) {
        return column == 0 ? time : column == 1 ? label : "";
    }

    private static String text(HistoryStep step, int column) {
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
        return column == 2 && step.count() > 0 ? Counted.said(step.count(), Messages.History_manyOne, Messages.History_many) : "";
    }

    /** All that an edit has changed, line by line. */
    String details(int row) {
        Optional<KeptStep> keptHere = line(row).kept();
        if (keptHere.isPresent()) {
            return keptHere.get().label() + "\n" + Messages.History_kept;
        }
        return doneAt(row) == 0 ? Messages.History_opened_tip : StepWords.details(steps.get(doneAt(row) - 1));
    }

    @Override
    public CellLook look(int row, int column) {
        if (row == here() && column == 0) {
            return HERE;
        }
        return isPlace(row) ? row < here() ? UNDONE : CellLook.PLAIN : KEPT;
    }

    @Override
    public String words(int row, int column) {
        String state = !isPlace(row) ? Messages.History_kept : row == here() ? Messages.History_here : row < here() ? Messages.History_undone : "";
        return header(column) + ": " + text(row, column) + (state.isEmpty() ? "" : ". " + state);
    }

    @Override
    public String tip(int row, int column) {
        return details(row);
    }
}
