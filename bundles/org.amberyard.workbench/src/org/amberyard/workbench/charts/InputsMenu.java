package org.amberyard.workbench.charts;

import java.util.List;
import java.util.function.Consumer;
import java.util.function.Function;
import org.amberyard.charts.Subject;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** The way to the inputs behind each part of a chart by keyboard: a menu of all parts that it shows. */
final class InputsMenu {
    private final ChartCanvas canvas;
    private final Function<Subject, String> label;
    private final Consumer<Subject> opener;
    private final Menu menu;

    InputsMenu(ChartCanvas canvas, Function<Subject, String> label, Consumer<Subject> opener) {
        this.canvas = canvas;
        this.label = label;
        this.opener = opener;
        MenuItem cascade = new MenuItem(canvas.getMenu(), SWT.CASCADE);
        cascade.setText(Messages.Menu_inputs);
        menu = new Menu(cascade);
        cascade.setMenu(menu);
        menu.addListener(SWT.Show, e -> fill());
    }

    private void fill() {
        for (MenuItem old : menu.getItems()) {
            old.dispose();
        }
        List<Subject> subjects = canvas.picture().map(ChartPicture::subjects).orElse(List.of());
        subjects.forEach(this::add);
    }

    private void add(Subject subject) {
        MenuItem item = new MenuItem(menu, SWT.PUSH);
        item.setText(label.apply(subject).replace("&", "&&"));
        item.addListener(SWT.Selection, e -> opener.accept(subject));
    }
}
