package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.workbench.charts.ChartCanvas;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Menu;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Chooses in the views of charts, looks at what they show, and goes to the inputs behind it. */
@ExtendWith(WorkbenchExtension.class)
class ChartViewsTest {

    @TempDir
    private Path folder;

    /** Title of the page that the editor shows. */
    private static String page(OpenStudy study) {
        return study.display().syncCall(() -> View.all(OpenStudy.page().getWorkbenchWindow().getShell(), CTabFolder.class).stream()
                .filter(f -> "StudyPages".equals(f.getData("org.eclipse.e4.ui.css.id"))).findFirst().orElseThrow()
                .getSelection().getText().trim());
    }

    /** The row in focus of the grid that has the focus. */
    private static int focusRow(OpenStudy study) {
        return study.display().syncCall(() -> ((Grid) study.display().getFocusControl()).selection().row());
    }

    @Test
    void anotherRouteChangesTheChartsOfRoutesAndOnlyThose(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View causes = View.of(study, "energyByCause");
            assertTrue(causes.text().startsWith("Route R01 with Electric C 150, "), causes.text());

            causes.choose(0, "R06");
            causes.awaitText("Route R06 with Electric C 226, ");
            causes.choose(1, "Electric C 150");
            causes.awaitText("Route R06 with Electric C 150, ");

            View temperature = View.of(study, "consumptionByTemperature");
            temperature.awaitText("What route R06 takes ");
        }
    }

    @Test
    void aChoiceOutlastsOtherResults(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View causes = View.of(study, "energyByCause");
            causes.choose(0, "R08");
            causes.awaitText("Route R08 with ");

            StudyResult earlier = study.result();
            set(study, study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 3.0);
            study.awaitResultAfter(earlier);
            assertEquals("R08", causes.chosen(0));

            StudyResult later = study.result();
            set(study, study.study().getRoutes().get(7), RoutesPackage.Literals.ROUTE__NAME, "Renamed");
            study.awaitResultAfter(later);
            causes.awaitText("Route Renamed with ");
            assertEquals("Renamed", causes.chosen(0));
        }
    }

    @Test
    void theDayIsThatOfTheBusYearMonthAndDayChosen(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View day = View.of(study, "chargeThroughDay");
            day.choose(1, "B06");
            day.choose(2, "2034");
            day.choose(3, "Mar");
            day.choose(4, "hottest day");
            day.awaitText("Bus B06, Electric C 226, hottest day of March 2034: lowest ");

            day.choose(2, "2026");
            day.awaitText("B06 is not electric in 2026; ");
        }
    }

    @Test
    void theViewsOfTheYardFollowTheMonth(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View load = View.of(study, "dayLoad");
            load.awaitText("Plan “Electric in stages”, coldest day of January 2040: the meter of charging peaks at ");
            load.choose(2, "Mar");
            load.choose(3, "normal day");
            load.awaitText("Plan “Electric in stages”, normal day of March 2040: the meter of charging peaks at ");

            View ports = View.of(study, "portOccupancy");
            ports.awaitText("Plan “Electric in stages”, normal day of March 2040: 13 buses at 14 plugs");
            View bill = View.of(study, "electricBill");
            bill.awaitText("Plan “Electric in stages”, March 2040, tariff KE-EVD, ");
            bill.choose(2, "Feb");
            bill.awaitText("Plan “Electric in stages”, February 2040, ");
            bill.inputs();
            assertEquals(PageKind.PLANS.title(), page(study));

            View policies = View.of(study, "chargingPolicies");
            policies.awaitText("Plan “Electric in stages”, 2040, tariff KE-EVD: the policy in use, least cost, ");
            View service = View.of(study, "serviceLoad");
            service.choose(0, "Like for like");
            service.awaitText("Plan “Like for like”: ");
            View.of(study, "electricBill").awaitText("Plan “Like for like” has no electric bus in 2040.");
        }
    }

    @Test
    void aBusChosenStandsOutAmongThePacks(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View packs = View.of(study, "packCapacity");
            packs.choose(1, "B16");
            study.await(() -> packs.canvas().textAlternative().contains(" B16-2 in place B16 by years: 2028 "));
            assertTrue(packs.text().contains("B16-2 2038 at 74 %, end-of-life capacity reached, another pack"), packs.text());
            packs.inputs();
            assertEquals(PageKind.BUSES.title(), page(study));
            assertEquals(15, focusRow(study));
        }
    }

    @Test
    void allViewsFollowThePlanChosenInOne(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View.of(study, "rangeMargin");
            View months = View.of(study, "rangeByMonth");
            assertTrue(months.text().contains("plan “Electric in stages”"), months.text());

            months.choose(0, "Rebate buses only");
            study.await(() -> months.canvas().textAlternative().contains("plan “Rebate buses only”"));
            View range = View.of(study, "rangeMargin");
            study.await(() -> range.canvas().textAlternative().contains("plan “Rebate buses only”"));

            Grid plans = display.syncCall(() -> View.all(OpenStudy.page().getWorkbenchWindow().getShell(), Grid.class).get(0));
            assertEquals(2, display.syncCall(() -> plans.selection().row()));
            display.syncExec(() -> plans.goTo(0, 0));
            study.await(() -> range.canvas().textAlternative().contains("plan “Like for like”"));
            assertEquals("Like for like", range.chosen(0));
        }
    }

    @Test
    void theButtonLeadsToTheInputsBehindTheChoice(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View causes = View.of(study, "energyByCause");
            causes.choose(0, "R03");
            causes.inputs();
            assertEquals(PageKind.ROUTES.title(), page(study));
            assertEquals(2, focusRow(study));

            View day = View.of(study, "chargeThroughDay");
            day.choose(1, "B09");
            day.inputs();
            assertEquals(PageKind.BUSES.title(), page(study));
            assertEquals(8, focusRow(study));
            assertSame(study.editor(), display.syncCall(() -> OpenStudy.page().getActivePart()));
        }
    }

    @Test
    void aDoubleClickOnARowOfTheHeatMapLeadsToItsRoute(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View months = View.of(study, "rangeByMonth");
            display.syncExec(() -> {
                ChartCanvas canvas = months.canvas();
                Event click = placeOf(canvas, "R02 · ");
                canvas.notifyListeners(SWT.MouseDoubleClick, click);
            });
            assertEquals(PageKind.ROUTES.title(), page(study));
            assertEquals(1, focusRow(study));
        }
    }

    @Test
    void theMenuLeadsToTheInputsOfEveryRouteByKeyboard(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View months = View.of(study, "rangeByMonth");
            display.syncExec(() -> {
                Menu chart = months.canvas().getMenu();
                Menu inputs = chart.getItem(chart.getItemCount() - 1).getMenu();
                inputs.notifyListeners(SWT.Show, new Event());
                assertEquals(study.study().getRoutes().size(), inputs.getItemCount());
                assertEquals("Inputs of route R04", inputs.getItem(3).getText());
                inputs.getItem(3).notifyListeners(SWT.Selection, new Event());
            });
            assertEquals(PageKind.ROUTES.title(), page(study));
            assertEquals(3, focusRow(study));
        }
    }

    @Test
    void aPartThatIsGoneIsNotOpened(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View causes = View.of(study, "energyByCause");
            causes.choose(0, "R05");
            causes.awaitText("Route R05 with ");
            set(study, study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE, null);
            set(study, study.study().getRoutes().get(4), RoutesPackage.Literals.ROUTE__NAME, "Another");
            causes.awaitText("Not up to date: ");
            causes.inputs();
            assertEquals(PageKind.STUDY.title(), page(study));
        }
    }

    @Test
    void everyChoiceSaysWhatItIs(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View day = View.of(study, "chargeThroughDay");
            List<String> tips = display.syncCall(() -> View.all(day.control(), Combo.class).stream().map(Combo::getToolTipText).toList());
            assertEquals(List.of("Plan: Electric in stages", "Bus: B01", "Year: 2040", "Month: Jan", "Day: coldest day"), tips);
        }
    }

    @Test
    void aChartThatCannotBeDrawnSaysSoAndShowsNoOther(Display display, LoggedErrors errors) {
        Shell shell = display.syncCall(() -> new Shell(display));
        try {
            ChartCanvas canvas = display.syncCall(() -> {
                ChartCanvas made = new ChartCanvas(shell);
                made.setSize(300, 200);
                shell.open();
                made.show(progress -> {
                    throw new IllegalStateException("no ink");
                });
                return made;
            });
            OpenStudy.await(display, () -> canvas.textAlternative().equals("The chart cannot be drawn: no ink"));
            assertTrue(display.syncCall(() -> canvas.chart().isEmpty()));
            assertEquals(List.of("no ink"), errors.take().stream().map(e -> e.getException().getMessage()).toList());
        } finally {
            display.syncExec(shell::dispose);
        }
    }

    /** A place at which the chart tells something that starts like this. */
    private static Event placeOf(ChartCanvas canvas, String start) {
        for (int y = 0; y < canvas.getSize().y; y += 4) {
            for (int x = 0; x < canvas.getSize().x; x += 8) {
                Event at = new Event();
                at.x = x;
                at.y = y;
                canvas.notifyListeners(SWT.MouseMove, at);
                if (canvas.getToolTipText() != null && canvas.getToolTipText().startsWith(start)) {
                    return at;
                }
            }
        }
        throw new AssertionError("Nothing on the chart tells " + start);
    }

    @Test
    void aHiddenChartIsMadeWhenItIsLookedAtAgain(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View causes = View.of(study, "energyByCause");
            View months = View.of(study, "rangeByMonth");
            StudyResult earlier = study.result();
            set(study, study.study().getRoutes().get(0), RoutesPackage.Literals.ROUTE__NAME, "First");
            study.awaitResultAfter(earlier);
            study.await(() -> months.canvas().textAlternative().contains("First · "));
            assertTrue(display.syncCall(() -> causes.canvas().chart().isEmpty()), "nothing out of date is kept");

            View.of(study, "energyByCause").awaitText("Route First with ");
        }
    }

    @Test
    void aTallChartScrollsByKeyboard(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View months = View.of(study, "rangeByMonth");
            Keyboard keys = new Keyboard(display);
            display.syncExec(() -> months.canvas().forceFocus());
            assertTrue(display.syncCall(() -> months.canvas().getVerticalBar().isVisible()), "the chart is taller than the view");

            keys.press(SWT.ARROW_DOWN);
            study.await(() -> months.canvas().getVerticalBar().getSelection() == 20);
            keys.press(SWT.END);
            study.await(() -> {
                var bar = months.canvas().getVerticalBar();
                return bar.getSelection() == bar.getMaximum() - bar.getThumb();
            });
            keys.press(SWT.HOME);
            study.await(() -> months.canvas().getVerticalBar().getSelection() == 0);
        }
    }

    @Test
    void aChartOfStaleResultsSaysSo(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View causes = View.of(study, "energyByCause");
            set(study, study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE, null);
            causes.awaitText("Not up to date: ");
            causes.choose(0, "R05");
            study.await(() -> causes.canvas().textAlternative().contains("Route R05 with "));
            assertTrue(causes.text().startsWith("Not up to date: "), causes.text());
        }
    }

    private static void set(OpenStudy study, EObject element, EStructuralFeature feature, Object value) {
        study.display().syncExec(() -> study.session().execute(
                SetCommand.create(study.session().domain(), element, feature, value)));
    }
}
