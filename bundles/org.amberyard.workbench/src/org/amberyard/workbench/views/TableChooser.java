package org.amberyard.workbench.views;

import java.util.function.IntConsumer;
import org.amberyard.report.ResultTables;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;

/** Says which table of results is on show, and opens the list of all of them to choose another. */
final class TableChooser {
    private final Button button;
    private final IntConsumer whenChosen;
    private int place;

    /** @param whenChosen hears the place of the table that the user chooses */
    TableChooser(Composite parent, IntConsumer whenChosen) {
        this.whenChosen = whenChosen;
        button = new Button(parent, SWT.PUSH | SWT.LEFT);
        button.setToolTipText(Messages.Results_choose);
        button.addListener(SWT.Selection, e -> open());
        button.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = NLS.bind(Messages.Results_chosen, ResultTables.titles().get(place));
            }
        });
        tell();
    }

    private void open() {
        new TableList(button, place, this::choose).open();
    }

    private void tell() {
        button.setText(ResultTables.titles().get(place).replace("&", "&&") + "  \u25BE");
        button.getParent().layout();
    }

    /** Place of the table chosen. */
    int place() {
        return place;
    }

    /** Chooses a table. */
    void choose(int newPlace) {
        place = newPlace;
        tell();
        whenChosen.accept(place);
    }

    /** Nothing can be chosen as long as there are no results. */
    void setEnabled(boolean enabled) {
        button.setEnabled(enabled);
    }
}
