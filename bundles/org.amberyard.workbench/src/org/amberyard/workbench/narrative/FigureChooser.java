package org.amberyard.workbench.narrative;

import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.report.papers.NarrativeFigures;
import org.amberyard.study.FigureName;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.FieldBorder;
import org.eclipse.jface.layout.GridDataFactory;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;

/** The list of figures that texts can name, and a field that looks for one; Enter in either or a double click chooses. */
final class FigureChooser {
    private final Text search;
    private final Grid grid;
    private FigureList list = new FigureList("", Optional.empty());
    private Optional<NarrativeFigures> figures = Optional.empty();

    /**
     * Fills the lines below the first of a parent that lays its children out in two columns.
     *
     * @param chosen takes the name of a figure that is to be put into the text
     */
    FigureChooser(Composite parent, Consumer<FigureName> chosen) {
        search = new Text(parent, SWT.SEARCH | SWT.ICON_SEARCH | SWT.ICON_CANCEL);
        FieldBorder.inDark(search);
        search.setMessage(Messages.Figures_search);
        GridDataFactory.fillDefaults().grab(true, false).span(2, 1).applyTo(search);
        grid = new Grid(parent, list);
        grid.markRow();
        GridDataFactory.fillDefaults().grab(true, true).span(2, 1).applyTo(grid);
        grid.onOpen(place -> list.name(place.y).ifPresent(chosen));
        search.addListener(SWT.DefaultSelection, e -> list.name(grid.selection().row()).ifPresent(chosen));
        search.addListener(SWT.Modify, e -> {
            list();
            grid.goTo(0, 0);
        });
        search.addListener(SWT.KeyDown, this::goDown);
    }

    private void goDown(Event event) {
        if (event.keyCode == SWT.ARROW_DOWN) {
            event.doit = false;
            grid.setFocus();
        }
    }

    Grid grid() {
        return grid;
    }

    /** Shows what the figures are now; empty where that is not known. */
    void show(Optional<NarrativeFigures> now) {
        figures = now;
        list();
    }

    private void list() {
        list = new FigureList(search.getText(), figures);
        grid.renewModel(list);
    }
}
