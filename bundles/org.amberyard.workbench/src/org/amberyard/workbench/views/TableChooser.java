package org.amberyard.workbench.views;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntConsumer;
import java.util.stream.IntStream;
import org.amberyard.report.ResultTables;
import org.amberyard.workbench.find.Section;
import org.amberyard.workbench.find.SectionList;
import org.amberyard.workbench.language.Words;
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
                event.result = NLS.bind(Messages.Results_chosen, title());
            }
        });
        tell();
    }

    private void open() {
        new SectionList(button.getShell(), sections(), Messages.Results_filter, title(),
                this::location).open();
    }

    private List<Section> sections() {
        List<Section> sections = new ArrayList<>();
        int first = 0;
        for (ResultTables.Group group : ResultTables.groups()) {
            int from = first;
            sections.add(new Section(Words.say(group.title()), IntStream.range(0, group.tables().size())
                    .mapToObj(t -> new Section.Line(Words.say(group.tables().get(t)), () -> choose(from + t))).toList()));
            first += group.tables().size();
        }
        return sections;
    }

    /** Below the button, or above it where the screen ends. */
    private Point location(Point size) {
        Point under = button.toDisplay(0, button.getSize().y);
        Rectangle screen = button.getMonitor().getClientArea();
        return under.y + size.y <= screen.y + screen.height ? under : new Point(under.x, button.toDisplay(0, 0).y - size.y);
    }

    private String title() {
        return Words.say(ResultTables.titles().get(place));
    }

    private void tell() {
        button.setText(title().replace("&", "&&") + "  \u25BE");
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
