package org.amberyard.workbench.views;

import java.util.List;
import java.util.function.Consumer;
import org.amberyard.workbench.lists.SectionList;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.graphics.Rectangle;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Says which table of results is on show, and opens the list of all of them to choose another. */
final class TableChooser {
    private final Button button;
    private final Consumer<String> whenChosen;
    private TableList tables = new TableList(List.of());
    private String name;

    /**
     * @param name name of the table on show
     * @param whenChosen hears the name of the table that the user chooses
     */
    TableChooser(Composite parent, String name, Consumer<String> whenChosen) {
        this.name = name;
        this.whenChosen = whenChosen;
        button = new Button(parent, SWT.PUSH | SWT.LEFT);
        button.setToolTipText(Messages.Results_choose);
        button.addListener(SWT.Selection, e -> open());
        button.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = NLS.bind(Messages.Results_chosen, title());
            }
        });
        tell();
    }

    private void open() {
        new SectionList(button.getShell(), tables.sections(this::choose), Messages.Results_filter, title(),
                this::location).open();
    }

    /** Below the button, or above it where the screen ends. */
    private Point location(Point size) {
        Point under = button.toDisplay(0, button.getSize().y);
        Rectangle screen = button.getMonitor().getClientArea();
        return under.y + size.y <= screen.y + screen.height ? under : new Point(under.x, button.toDisplay(0, 0).y - size.y);
    }

    private String title() {
        return tables.title(name);
    }

    private void tell() {
        button.setText(title().replace("&", "&&") + "  \u25BE");
        button.getParent().layout();
    }

    /** Name of the table on show. */
    String name() {
        return name;
    }

    /** The tables that can be chosen. */
    TableList tables() {
        return tables;
    }

    /** The user chooses a table. */
    void choose(String newName) {
        show(newName);
        whenChosen.accept(newName);
    }

    /** Another table is on show. */
    void show(String newName) {
        name = newName;
        tell();
    }

    /** There are other tables than before, of which one is on show. */
    void show(TableList newTables, String newName) {
        tables = newTables;
        show(newName);
    }

    /** Nothing can be chosen as long as there are no results. */
    void setEnabled(boolean enabled) {
        button.setEnabled(enabled);
    }
}
