package org.amberyard.workbench.views;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.amberyard.model.validation.Finding;
import org.amberyard.workbench.fields.CellMenu;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.language.Words;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.ViewChrome;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.jface.layout.GridLayoutFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** What is wrong or remarkable in the study and its results; opening a line goes to its field. */
public final class FindingsView extends ViewPart {

    private Grid grid;
    private StyledText whole;
    private List<Finding> findings = List.of();

    @Override
    public void createPartControl(Composite parent) {
        ViewChrome.withoutToolbar(getSite());
        Composite area = new Composite(parent, SWT.NONE);
        area.setBackground(Palette.PAPER.color());
        GridLayoutFactory.fillDefaults().spacing(0, 4).applyTo(area);
        grid = new Grid(area, new FindingsModel(findings));
        grid.markRow();
        grid.onOpen(this::open);
        CellMenu.ofReading(grid);
        grid.selection().onMove(this::tellWhole);
        GridDataFactory.fillDefaults().grab(true, true).applyTo(grid);
        whole = new StyledText(area, SWT.WRAP | SWT.READ_ONLY | SWT.MULTI | SWT.V_SCROLL);
        whole.setAlwaysShowScrollBars(false);
        whole.setForeground(Palette.INK.color());
        whole.setBackground(Palette.BAND.color());
        whole.setMargins(8, 4, 8, 4);
        whole.setCaret(null);
        GridDataFactory.fillDefaults().grab(true, false).hint(100, 60).applyTo(whole);
        ActiveSession.here().follow(grid, this::update);
    }

    /** What keeps the study from being evaluated comes first; else they stand in the order in which they were found. */
    private void update(Optional<StudySession> session) {
        List<Finding> next = session.map(s -> s.evaluation().findings()).orElse(List.of()).stream()
                .sorted(Comparator.comparing(Finding::severity)).toList();
        if (!next.equals(findings)) {
            findings = next;
            grid.setModel(new FindingsModel(findings));
            tellWhole();
        }
    }

    /** Findings are sentences; the one in focus stands below the table at full length. */
    private void tellWhole() {
        int row = grid.selection().row();
        whole.setText(row < findings.size() ? Words.say(findings.get(row).message()) : "");
    }

    private void open(Point place) {
        if (place.y < findings.size()) {
            Finding finding = findings.get(place.y);
            StudyEditors.open(getSite().getPage(), finding.element(), finding.feature());
        }
    }

    @Override
    public void setFocus() {
        grid.setFocus();
    }
}
