package org.amberyard.workbench.views;

import java.util.List;
import java.util.Optional;
import org.amberyard.workbench.fields.CellMenu;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.language.Counted;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.EditHistory;
import org.amberyard.workbench.session.HistoryStep;
import org.amberyard.workbench.session.KeptStep;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Label;
import org.eclipse.ui.part.ViewPart;

/** Every edit of the session in words; opening a line brings the study to where it was after that edit, and forward again. */
public final class HistoryView extends ViewPart {

    private Grid grid;
    private Label state;
    private Button go;
    private StyledText details;
    private StudySession shown;
    private HistoryModel model = new HistoryModel(List.of(), List.of(), 0);

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        area.setBackgroundMode(SWT.INHERIT_DEFAULT);
        GridLayoutFactory.fillDefaults().numColumns(2).margins(6, 4).spacing(8, 4).applyTo(area);
        state = new Label(area, SWT.NONE);
        state.setForeground(Palette.MUTED.color());
        GridDataFactory.fillDefaults().grab(true, false).align(SWT.FILL, SWT.CENTER).applyTo(state);
        go = new Button(area, SWT.PUSH);
        go.setText(Messages.History_go);
        go.setToolTipText(Messages.History_go_tip);
        go.addListener(SWT.Selection, e -> goTo(grid.selection().row()));
        createTable(area);
        ActiveSession.here().follow(grid, this::update);
    }

    private void createTable(Composite area) {
        grid = new Grid(area, model);
        grid.markRow();
        grid.onOpen(place -> goTo(place.y));
        grid.selection().onMove(this::tell);
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).hint(200, 60).applyTo(grid);
        CellMenu.ofReading(grid).add(Messages.History_go_menu, () -> goTo(grid.selection().row()));
        details = new StyledText(area, SWT.WRAP | SWT.READ_ONLY | SWT.MULTI | SWT.V_SCROLL);
        details.setAlwaysShowScrollBars(false);
        details.setForeground(Palette.INK.color());
        details.setBackground(Palette.BAND.color());
        details.setMargins(8, 4, 8, 4);
        details.setCaret(null);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).hint(100, 60).applyTo(details);
    }

    private void update(Optional<StudySession> session) {
        shown = session.orElse(null);
        EditHistory history = session.map(StudySession::history).orElse(null);
        List<HistoryStep> steps = history == null ? List.of() : history.steps();
        List<KeptStep> kept = history == null ? List.of() : history.kept();
        int done = history == null ? 0 : history.done();
        if (!model.isSame(steps, kept, done)) {
            model = new HistoryModel(steps, kept, done);
            grid.setModel(model);
            grid.goTo(model.here(), 0);
        }
        int back = steps.size() - done;
        state.setText(history == null ? Messages.Headline_none
                : back == 0 ? Counted.said(done, Messages.History_stateOne, Messages.History_state)
                : NLS.bind(Counted.of(done, Messages.History_state_backOne, Messages.History_state_back), done, back));
        tell();
    }

    private void tell() {
        int row = grid.selection().row();
        String words = model.details(row);
        if (!words.equals(details.getText())) {
            details.setText(words);
        }
        go.setEnabled(shown != null && row != model.here() && model.isPlace(row));
    }

    private void goTo(int row) {
        if (shown != null && row < model.rows() && model.isPlace(row) && StudyEditors.entered(getSite().getPage())) {
            shown.history().goTo(model.doneAt(row));
        }
    }

    @Override
    public void setFocus() {
        grid.setFocus();
    }
}
