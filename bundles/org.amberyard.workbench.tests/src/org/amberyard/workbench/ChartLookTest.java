package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import org.amberyard.charts.ChartZoom;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.workbench.charts.ChartCanvas;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.MenuItem;
import org.eclipse.swt.widgets.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Zooms charts and hides lines of them. */
@ExtendWith(WorkbenchExtension.class)
class ChartLookTest {

    @TempDir
    private Path folder;

    @Test
    void aDragShowsAPartThatStaysWhileFiguresChangeAndADoubleClickShowsAll(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View costs = View.of(study, "cumulativeCost");
            ChartCanvas canvas = display.syncCall(costs::canvas);
            drag(display, canvas);
            study.await(() -> canvas.textAlternative().endsWith("Zoomed in."));
            ChartZoom zoom = display.syncCall(() -> canvas.zoom().orElseThrow());

            StudyResult earlier = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                    study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 3.0)));
            study.awaitResultAfter(earlier);
            study.await(() -> !canvas.isFaded());
            assertEquals(Optional.of(zoom), display.syncCall(canvas::zoom));
            study.await(() -> canvas.textAlternative().endsWith("Zoomed in."));

            display.syncExec(() -> canvas.notifyListeners(SWT.MouseDoubleClick, at(canvas, 0.3, 0.2)));
            study.await(() -> !canvas.textAlternative().endsWith("Zoomed in."));
        }
    }

    @Test
    void keysAndTheWheelZoom(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View costs = View.of(study, "cumulativeCost");
            ChartCanvas canvas = display.syncCall(costs::canvas);
            Keyboard keys = new Keyboard(display);
            display.syncExec(canvas::forceFocus);
            keys.type("=");
            study.await(() -> canvas.zoom().isPresent() && canvas.textAlternative().endsWith("Zoomed in."));
            ChartZoom once = display.syncCall(() -> canvas.zoom().orElseThrow());
            display.syncExec(() -> {
                Event wheel = at(canvas, 0.6, 0.5);
                wheel.count = 3;
                canvas.notifyListeners(SWT.MouseVerticalWheel, wheel);
            });
            assertTrue(display.syncCall(() -> length(canvas)) < once.across().to() - once.across().from());
            keys.type("0");
            study.await(() -> canvas.zoom().isEmpty());
        }
    }

    @Test
    void theSliderOfYearsDrivesTheChartsAndPlays(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View bill = View.of(study, "electricBill");
            Scale slider = display.syncCall(() -> View.all(bill.control(), Scale.class).get(0));
            display.syncExec(() -> {
                slider.setSelection(slider.getMaximum() - 1);
                slider.notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> bill.canvas().textAlternative().contains(" 2039, tariff "));
            assertEquals("2039", bill.chosen(1));

            Button play = display.syncCall(() -> View.all(bill.control(), Button.class).stream()
                    .filter(b -> b.getText().equals("\u25B6")).findFirst().orElseThrow());
            display.syncExec(() -> play.notifyListeners(SWT.Selection, new Event()));
            study.await(() -> bill.canvas().textAlternative().contains(" 2040, tariff "));
            study.await(() -> play.getText().equals("\u25B6"));
        }
    }

    private static double length(ChartCanvas canvas) {
        ChartZoom zoom = canvas.zoom().orElseThrow();
        return zoom.across().to() - zoom.across().from();
    }

    @Test
    void aClickInTheLegendHidesALineAndTheMenuShowsItAgain(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View costs = View.of(study, "cumulativeCost");
            ChartCanvas canvas = display.syncCall(costs::canvas);
            display.syncExec(() -> canvas.notifyListeners(SWT.MouseDown, legend(canvas)));
            study.await(() -> canvas.textAlternative().contains(" Hidden: "));

            View.of(study, "annualCost");
            assertTrue(View.of(study, "cumulativeCost").text().contains(" Hidden: "), "it is remembered");
            display.syncExec(() -> {
                MenuItem item = item(canvas.getMenu(), "Shown in chart");
                item.getMenu().notifyListeners(SWT.Show, new Event());
                assertEquals(1, Arrays.stream(item.getMenu().getItems()).filter(i -> (i.getStyle() & SWT.CHECK) != 0)
                        .filter(i -> !i.getSelection()).count());
                item(item.getMenu(), "All").notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> !canvas.textAlternative().contains(" Hidden: "));
        }
    }

    private static MenuItem item(Menu menu, String text) {
        return Arrays.stream(menu.getItems()).filter(i -> i.getText().replace("&", "").equals(text)).findFirst().orElseThrow();
    }

    private static Event legend(ChartCanvas canvas) {
        for (int y = canvas.getSize().y - 4; y > 0; y -= 4) {
            for (int x = 0; x < canvas.getSize().x; x += 8) {
                Event at = new Event();
                at.button = 1;
                at.x = x;
                at.y = y;
                canvas.notifyListeners(SWT.MouseMove, at);
                if ("Click to hide or show it".equals(canvas.getToolTipText())) {
                    return at;
                }
            }
        }
        throw new AssertionError("No legend");
    }

    private static void drag(Display display, ChartCanvas canvas) {
        display.syncExec(() -> {
            canvas.notifyListeners(SWT.MouseDown, at(canvas, 0.4, 0.45));
            canvas.notifyListeners(SWT.MouseMove, at(canvas, 0.5, 0.5));
            canvas.notifyListeners(SWT.MouseMove, at(canvas, 0.7, 0.6));
            canvas.notifyListeners(SWT.MouseUp, at(canvas, 0.7, 0.6));
        });
    }

    /** A place, as shares of the canvas from left and top. */
    private static Event at(ChartCanvas canvas, double x, double y) {
        Event event = new Event();
        event.button = 1;
        event.x = (int) (x * canvas.getSize().x);
        event.y = (int) (y * canvas.getSize().y);
        return event;
    }
}
