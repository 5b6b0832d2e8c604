package org.amberyard.workbench.views;

import java.util.Optional;
import org.amberyard.workbench.fields.CellMenu;
import org.amberyard.workbench.fields.NoteDialog;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.language.Counted;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.part.ViewPart;

/** All notes of the study; opening a line goes to its element, the menu changes the note. */
public final class NotesView extends ViewPart {

    private static final int SEARCH_WIDTH = 220;

    private Text search;
    private Label state;
    private Grid grid;
    private StudySession session;
    private NotesModel model = NotesModel.empty();
    private int revision = -1;

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_DEFAULT);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(8, 4).applyTo(area);
        search = new Text(area, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        search.setMessage(Messages.Notes_search);
        search.setToolTipText(Messages.Notes_search_tip);
        search.addListener(SWT.Modify, e -> grid.rearrange(this::show));
        GridDataFactory.fillDefaults().hint(SEARCH_WIDTH, SWT.DEFAULT).applyTo(search);
        state = new Label(area, SWT.NONE);
        state.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(state);
        grid = new Grid(area, model);
        grid.markRow();
        grid.onFilter(search::setFocus);
        grid.onOpen(place -> open(place.y));
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(200, 60).applyTo(grid);
        CellMenu menu = CellMenu.ofReading(grid);
        menu.add(Messages.Notes_open, () -> open(grid.selection().row()));
        menu.add(Messages.Notes_change, () -> change(grid.selection().row()));
        ActiveSession.here().follow(grid, this::update);
    }

    private void update(Optional<StudySession> active) {
        int now = active.map(StudySession::revision).orElse(-1);
        if (active.orElse(null) != session || now != revision) {
            session = active.orElse(null);
            revision = now;
            show();
        }
    }

    private void show() {
        model = session == null ? NotesModel.empty() : NotesModel.of(session.study(), search.getText());
        grid.renewModel(model);
        state.setText(session == null ? Messages.Headline_none
                : model.rows() == 0 ? Messages.Notes_none : Counted.said(model.rows(), Messages.Notes_countOne, Messages.Notes_count));
    }

    private void open(int row) {
        if (row < model.rows()) {
            StudyEditors.open(getSite().getPage(), model.element(row), null);
        }
    }

    private void change(int row) {
        if (row < model.rows()) {
            new NoteDialog(getSite().getShell(), session, model.element(row), Optional.empty()).open();
        }
    }

    @Override
    public void setFocus() {
        grid.setFocus();
    }
}
