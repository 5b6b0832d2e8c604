package org.amberyard.workbench.views;

import java.util.List;
import java.util.Optional;
import org.amberyard.model.validation.Finding;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.session.ActiveSession;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.ui.part.ViewPart;

/** What is wrong or remarkable in the study and its results; opening a line goes to its field. */
public final class FindingsView extends ViewPart {

    private Grid grid;
    private List<Finding> findings = List.of();

    @Override
    public void createPartControl(Composite parent) {
        grid = new Grid(parent, new FindingsModel(findings));
        grid.markRow();
        grid.onOpen(this::open);
        ActiveSession.follow(grid, this::update);
    }

    private void update(Optional<StudySession> session) {
        List<Finding> next = session.map(s -> s.evaluation().findings()).orElse(List.of());
        if (!next.equals(findings)) {
            findings = next;
            grid.setModel(new FindingsModel(findings));
        }
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
