package org.amberyard.workbench.charts;

import java.util.Optional;
import java.util.Set;
import org.amberyard.charts.ChartLook;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;

/** Hides and shows what the legend of a chart names, by a click there or from a menu. */
final class LegendSwitch {
    private final ChartCanvas canvas;
    private final ChartScrolling scrolling;

    LegendSwitch(ChartCanvas canvas, ChartScrolling scrolling, ChartZooming zooming) {
        this.canvas = canvas;
        this.scrolling = scrolling;
        canvas.addListener(SWT.MouseDown, e -> {
            if (e.button == 1 && !zooming.isDragging()) {
                at(e).ifPresent(this::toggle);
            }
        });
    }

    /** What the legend names at the place of an event. */
    Optional<String> at(Event event) {
        return canvas.picture().flatMap(p -> p.legend(event.x, event.y + scrolling.offset()));
    }

    private void toggle(String series) {
        canvas.picture().ifPresent(p -> keep(p, p.look().toggled(series)));
    }

    private void keep(ChartPicture picture, ChartLook look) {
        HiddenSeries.keep(picture.chart().name(), look.hidden());
        canvas.repaint();
    }

    /** Adds a menu of all that can be hidden. */
    void addTo(Menu menu) {
        MenuItem item = new MenuItem(menu, SWT.CASCADE);
        item.setText(Messages.Menu_series);
        Menu series = new Menu(menu);
        item.setMenu(series);
        series.addListener(SWT.Show, e -> fill(series));
        menu.addListener(SWT.Show, e -> item.setEnabled(canvas.picture().filter(p -> !p.lens().series().isEmpty()).isPresent()));
    }

    private void fill(Menu menu) {
        for (MenuItem item : menu.getItems()) {
            item.dispose();
        }
        canvas.picture().ifPresent(picture -> {
            for (String series : picture.lens().series()) {
                MenuItem item = new MenuItem(menu, SWT.CHECK);
                item.setText(series.replace("&", "&&"));
                item.setSelection(!picture.look().hidden().contains(series));
                item.addListener(SWT.Selection, e -> toggle(series));
            }
            new MenuItem(menu, SWT.SEPARATOR);
            MenuItem all = new MenuItem(menu, SWT.PUSH);
            all.setText(Messages.Menu_seriesAll);
            all.addListener(SWT.Selection, e -> keep(picture, picture.look().hiding(Set.of())));
        });
    }
}
