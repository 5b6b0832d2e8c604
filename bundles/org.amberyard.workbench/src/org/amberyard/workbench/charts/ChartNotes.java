package org.amberyard.workbench.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.amberyard.charts.ChartPoint;
import org.amberyard.charts.ChartRemark;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.study.ChartNote;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.jface.dialogs.IInputValidator;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/**
 * Notes on the chart of a canvas, kept in the study: made where its menu was opened, or in the middle with the key n; changed and
 * deleted from the menu. A note shows as long as the same plan, bus, year are chosen as when it was made.
 */
final class ChartNotes {
    private static final int LONGEST_IN_MENU = 40;

    private final ChartCanvas canvas;
    private final Supplier<StudySession> session;
    private String shown = "";
    private List<Noted> notes = List.of();
    private Optional<Point> asked = Optional.empty();

    /** A note and the chart that it is on. */
    record Noted(String chart, ChartRemark remark) {
    }

    ChartNotes(ChartCanvas canvas, Supplier<StudySession> session) {
        this.canvas = canvas;
        this.session = session;
        canvas.addListener(SWT.MenuDetect, this::remember);
        canvas.addListener(SWT.KeyDown, e -> {
            if (e.character == 'n' && (e.stateMask & SWT.MODIFIER_MASK) == 0 && canvas.picture().isPresent()) {
                asked = Optional.empty();
                write();
            }
        });
    }

    /** Shows the notes of what is chosen. */
    void show(String nowShown) {
        shown = nowShown;
        List<Noted> next = session.get().study().getChartNotes().stream().filter(n -> shown.equals(n.getShown())).map(ChartNotes::noted)
                .toList();
        if (!next.equals(notes)) {
            notes = next;
            canvas.note(next);
        }
    }

    private static Noted noted(ChartNote note) {
        return new Noted(note.getChart(), new ChartRemark(text(note),
                new ChartPoint(note.getUnits() == null ? "" : note.getUnits(), note.getAcross(), note.getUpward())));
    }

    private static String text(ChartNote note) {
        return note.getNote() == null ? "" : note.getNote();
    }

    private void remember(Event event) {
        asked = event.detail == SWT.MENU_KEYBOARD ? Optional.empty() : Optional.of(canvas.toControl(event.x, event.y));
    }

    /** Adds a menu of the notes of the chart. */
    void addTo(Menu menu) {
        MenuItem item = new MenuItem(menu, SWT.CASCADE);
        item.setText(Messages.Menu_notes);
        Menu all = new Menu(menu);
        item.setMenu(all);
        all.addListener(SWT.Show, e -> fill(all));
    }

    private void fill(Menu menu) {
        for (MenuItem item : menu.getItems()) {
            item.dispose();
        }
        item(menu, Messages.Menu_noteHere, this::write);
        for (ChartNote note : ofChart()) {
            new MenuItem(menu, SWT.SEPARATOR);
            item(menu, NLS.bind(Messages.Menu_noteChange, brief(note)), () -> change(note));
            item(menu, NLS.bind(Messages.Menu_noteDelete, brief(note)), () -> session.get().execute(RemoveCommand.create(session.get().domain(), note),
                    NLS.bind(Messages.Note_deleted, brief(note))));
        }
    }

    private static void item(Menu menu, String text, Runnable action) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(text);
        item.addListener(SWT.Selection, e -> action.run());
    }

    private static String brief(ChartNote note) {
        String text = text(note).replace("&", "&&");
        return text.length() <= LONGEST_IN_MENU ? text : text.substring(0, LONGEST_IN_MENU) + "\u2026";
    }

    private List<ChartNote> ofChart() {
        String chart = canvas.chart().orElseThrow().name();
        return new ArrayList<>(session.get().study().getChartNotes().stream()
                .filter(n -> chart.equals(n.getChart()) && shown.equals(n.getShown())).toList());
    }

    private void write() {
        ChartPicture picture = canvas.picture().orElseThrow();
        String chosen = shown;
        ask("").ifPresent(text -> {
            ChartPoint at = picture.at(asked.map(p -> canvas.inPicture(p.x, p.y)).orElseGet(() -> middle(picture.plotArea())));
            ChartNote note = StudyFactory.eINSTANCE.createChartNote();
            note.setChart(picture.chart().name());
            note.setShown(chosen);
            note.setUnits(at.units());
            note.setAcross(at.across());
            note.setUpward(at.upward());
            note.setNote(text);
            session.get().execute(AddCommand.create(session.get().domain(), session.get().study(), StudyPackage.Literals.STUDY__CHART_NOTES, note),
                    Messages.Note_title);
        });
    }

    private static Point middle(Rectangle area) {
        return new Point(area.x + area.width / 2, area.y + area.height / 2);
    }

    private void change(ChartNote note) {
        ask(text(note)).ifPresent(text -> session.get().set(note, CommonPackage.Literals.SOURCED__NOTE, text));
    }

    private Optional<String> ask(String before) {
        IInputValidator filled = text -> text.isBlank() ? "" : null;
        InputDialog dialog = new InputDialog(canvas.getShell(), Messages.Note_title, Messages.Note_ask, before, filled);
        return dialog.open() == Window.OK ? Optional.of(dialog.getValue().strip()) : Optional.empty();
    }
}
