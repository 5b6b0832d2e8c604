package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.workbench.charts.ChartCanvas;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PartInitException;

/** A view of a chart in the window. */
record View(OpenStudy study, Composite control) {

    static View of(OpenStudy study, String name) {
        IViewPart part = study.display().syncCall(() -> show(name));
        Composite whole = study.display().syncCall(() -> (Composite) study.display().getFocusControl().getParent());
        assertNotNull(part);
        View view = new View(study, whole);
        study.await(() -> view.canvas().chart().isPresent());
        return view;
    }

    private static IViewPart show(String name) {
        try {
            return OpenStudy.page().showView("org.amberyard.workbench." + name);
        } catch (PartInitException e) {
            throw new AssertionError(e);
        }
    }

    ChartCanvas canvas() {
        return all(control, ChartCanvas.class).get(0);
    }

    Combo combo(int place) {
        return all(control, Combo.class).get(place);
    }

    String text() {
        return study.display().syncCall(() -> canvas().textAlternative());
    }

    String chosen(int place) {
        return study.display().syncCall(() -> combo(place).getText());
    }

    void choose(int place, String text) {
        study.display().syncExec(() -> {
            Combo combo = combo(place);
            assertTrue(combo.indexOf(text) >= 0, text + " in " + List.of(combo.getItems()));
            combo.select(combo.indexOf(text));
            combo.notifyListeners(SWT.Selection, new Event());
        });
    }

    void awaitText(String start) {
        study.await(() -> canvas().textAlternative().startsWith(start));
    }

    void inputs() {
        study.display().syncExec(() -> all(control, Button.class).get(0).notifyListeners(SWT.Selection, new Event()));
    }

    /** Controls of a kind below another. */
    static <T extends Control> List<T> all(Composite parent, Class<T> kind) {
        List<T> found = new ArrayList<>();
        for (Control child : parent.getChildren()) {
            if (kind.isInstance(child)) {
                found.add(kind.cast(child));
            }
            if (child instanceof Composite composite) {
                found.addAll(all(composite, kind));
            }
        }
        return found;
    }
}
