package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricePoint;
import org.amberyard.model.prices.PricesFactory;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Types into the study as a user does and looks at what comes of it. */
@ExtendWith(WorkbenchExtension.class)
class EditingTest {

    @TempDir
    private Path folder;

    @Test
    void typedPriceChangesResultAndUndoBringsItBack(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            FuelPrice diesel = diesel(study.study());
            double before = diesel.getPricePerL();
            StudyResult earlier = study.result();
            study.goTo(diesel, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L);

            keys.type("6.5");
            keys.press(SWT.CR);

            StudyResult later = study.awaitResultAfter(earlier);
            assertEquals(6.5, Unit.MONEY_PER_LITRE.show(diesel.getPricePerL(), UnitSystem.US), 1e-9);
            assertNotEquals(earlier.baseline().measures().presentCost(), later.baseline().measures().presentCost());
            assertTrue(display.syncCall(() -> study.editor().isDirty()));

            keys.pressWith(SWT.CTRL, 'z');

            StudyResult again = study.awaitResultAfter(later);
            assertEquals(before, diesel.getPricePerL());
            assertEquals(earlier.baseline().measures(), again.baseline().measures());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void refusedEntryStaysOpenAndKeepsTheStudy(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            FuelPrice diesel = diesel(study.study());
            double before = diesel.getPricePerL();
            Grid grid = study.goTo(diesel, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L);

            keys.type("cheap");
            keys.press(SWT.CR);

            assertEquals(before, diesel.getPricePerL());
            assertEquals("cheap", display.syncCall(() -> grid.entry().typed()));
            String message = display.syncCall(() -> grid.entry().refusal());
            assertTrue(message.startsWith("Price is “cheap”; it must be a number"), message);

            keys.press(SWT.ESC);

            assertFalse(display.syncCall(() -> grid.entry().isOpen()));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void numberOutsideItsLimitsIsRefusedInTheUsersUnits(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Grid grid = study.goTo(study.study().getRoutes().get(0).getRuns().get(0),
                    RoutesPackage.Literals.RUN__DISTANCE_KM);

            keys.type("-3");
            keys.press(SWT.CR);

            String message = display.syncCall(() -> grid.entry().refusal());
            assertTrue(message.startsWith("Distance is “-3”; it must be"), message);
            assertTrue(message.contains(" mi"), message);
            keys.press(SWT.ESC);
        }
    }

    @Test
    void savedStudyReopensEqual(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            study.goTo(diesel(study.study()), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L);
            keys.type("4.75");
            keys.press(SWT.CR);

            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));

            assertFalse(display.syncCall(() -> study.editor().isDirty()));
            Study read = StudyFile.load(study.file());
            assertTrue(display.syncCall(() -> EcoreUtil.equals(read, study.study())));

            keys.pressWith(SWT.CTRL, 'z');

            assertTrue(display.syncCall(() -> study.editor().isDirty()), "undo reaches back past the save");
        }
    }

    /** A value that has been typed but not entered is work of the user's: the study is dirty and saving takes it along. */
    @Test
    void whatIsBeingTypedIsSavedToo(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(diesel(study.study()), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L);
            assertFalse(display.syncCall(() -> study.editor().isDirty()));

            new Keyboard(display).type("6.5");

            assertTrue(display.syncCall(() -> study.editor().isDirty()));
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
            assertEquals(6.5, Unit.MONEY_PER_LITRE.show(
                    diesel(StudyFile.load(study.file())).getPricePerL(), UnitSystem.US), 1e-9);
        }
    }

    /** Typed into the plan that was on show, then another plan is chosen: the value belongs to the first. */
    @Test
    void anOpenEntryStaysWithItsRowWhenAnotherPlanIsChosen(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Replacement first = study.study().getPlans().get(0).getReplacements().get(0);
            Replacement other = study.study().getPlans().get(1).getReplacements().get(0);
            study.goTo(first, PlansPackage.Literals.REPLACEMENT__YEAR);
            new Keyboard(display).type("2036");

            display.syncExec(() -> study.editor().reveal(study.study().getPlans().get(1), null));

            assertEquals(2036, first.getYear());
            assertEquals(2027, other.getYear());
        }
    }

    /** The table changes under an entry by other means than the mouse: nothing is written to a row that it was not meant for. */
    @Test
    void anEntryWhoseCellIsGoneIsRefusedAndKept(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Replacement first = study.study().getPlans().get(0).getReplacements().get(0);
            Replacement second = study.study().getPlans().get(0).getReplacements().get(1);
            int year = second.getYear();
            Grid grid = study.goTo(first, PlansPackage.Literals.REPLACEMENT__YEAR);
            new Keyboard(display).type("2036");

            display.syncExec(() -> study.session().execute(DeleteCommand.create(study.session().domain(), first)));

            assertFalse(display.syncCall(() -> grid.entry().close()));
            assertEquals("2036", display.syncCall(() -> grid.entry().typed()));
            assertEquals(year, second.getYear());
            display.syncExec(() -> grid.entry().cancel());
        }
    }

    @Test
    void aRefusedEntryOnAnotherPageKeepsTheStudyFromBeingSaved(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = study.goTo(diesel(study.study()), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L);
            new Keyboard(display).type("abc");

            study.show(PageKind.BUSES);
            NullProgressMonitor monitor = new NullProgressMonitor();
            display.syncExec(() -> study.editor().doSave(monitor));

            assertTrue(monitor.isCanceled());
            assertEquals("abc", display.syncCall(() -> grid.entry().typed()));
            assertTrue(display.syncCall(grid::isVisible), "the page that refused is on show");
            display.syncExec(() -> grid.entry().cancel());
        }
    }

    @Test
    void pointsBelongToAPathThatIsStillThere(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            FuelPrice diesel = diesel(study.study());
            study.goTo(diesel, PricesPackage.Literals.FUEL_PRICE__FUEL);
            display.syncExec(() -> study.session().execute(DeleteCommand.create(study.session().domain(), diesel)));
            FuelPrice gasoline = diesel(study.study());
            PricePoint point = PricesFactory.eINSTANCE.createPricePoint();
            display.syncExec(() -> study.session().execute(AddCommand.create(study.session().domain(), gasoline,
                    PricesPackage.Literals.PRICE_PATH__POINTS, point)));

            Grid points = study.goTo(point, PricesPackage.Literals.PRICE_POINT__YEAR);

            assertEquals(1, display.syncCall(() -> points.model().rows()));
        }
    }

    @Test
    void savedAsTheWindowAndTheEditorBearTheNewName(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Path other = folder.resolve("other.amberyard");
            display.syncCall(() -> {
                study.session().saveAs(other);
                return null;
            });

            assertTrue(display.syncCall(() -> OpenStudy.page().getWorkbenchWindow().getShell().getText())
                    .startsWith("other.amberyard"));
            assertEquals("other.amberyard", display.syncCall(() -> study.editor().getPartName()));
            assertTrue(EcoreUtil.equals(StudyFile.load(study.file()), StudyFile.load(other)));
        }
    }

    @Test
    void rowTypedAtTheEndIsAddedAndDeletedAgain(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            int routes = study.study().getRoutes().size();
            Grid grid = study.goTo(study.study().getRoutes().get(0), RoutesPackage.Literals.ROUTE__NAME);
            display.syncExec(() -> grid.goTo(routes, 0));

            keys.type("r99");
            keys.press(SWT.CR);

            assertEquals(routes + 1, study.study().getRoutes().size());
            Route added = study.study().getRoutes().get(routes);
            assertEquals("r99", added.getName());

            display.syncExec(() -> {
                grid.goTo(routes, 0);
                FeatureTable.of(grid).orElseThrow().deleteElements();
            });

            assertEquals(routes, study.study().getRoutes().size());
        }
    }

    @Test
    void aTypedTripIsAskedWhoCanCoverIt(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            int trips = study.study().getTrips().size();
            StudyResult earlier = study.result();
            Grid grid = study.goTo(study.study().getTrips().get(0), RoutesPackage.Literals.TRIP__NAME);
            display.syncExec(() -> grid.goTo(trips, 0));
            Tools.copy(display, "T063\tchoir\t2026-05-22\t4:10 pm\t3\t30\tC\t40\n");

            keys.pressWith(SWT.CTRL, 'v');

            Trip added = study.study().getTrips().get(trips);
            assertEquals(970, added.getDepartureMin());
            assertEquals(30, Unit.KILOMETRE.show(added.getRoundTripKm(), UnitSystem.US), 1e-9);
            StudyResult later = study.awaitResultAfter(earlier);
            assertEquals(trips + 1, later.tripCovers().get(0).answers().size());
            study.goTo(added, RoutesPackage.Literals.TRIP__DATE);
            keys.type("2026-05-23");
            keys.press(SWT.CR);
            assertEquals("2026-05-23", added.getDate());

            keys.pressWith(SWT.CTRL, 'z');
            keys.pressWith(SWT.CTRL, 'z');

            assertEquals(trips, study.study().getTrips().size());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void pastedBlockIsOneStep(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Keyboard keys = new Keyboard(display);
            Study content = study.study();
            study.goTo(content.getBuses().get(1), FleetPackage.Literals.BUS__MODEL_YEAR);
            Tools.copy(display, "2001\t2000\n2003\t2002\n");

            keys.pressWith(SWT.CTRL, 'v');

            assertEquals(2001, content.getBuses().get(1).getModelYear());
            assertEquals(2002, content.getBuses().get(2).getEngineModelYear());

            keys.pressWith(SWT.CTRL, 'z');

            assertEquals(2009, content.getBuses().get(1).getModelYear());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    private static FuelPrice diesel(Study study) {
        return study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast).findFirst()
                .orElseThrow();
    }
}
