package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.handlers.ImportFolderHandler;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Goes to fields, buses and views by a part of their names, and makes a study of CSV files. */
@ExtendWith(WorkbenchExtension.class)
class FindTest {

    @TempDir
    private Path folder;

    @Test
    void aFieldIsGoneToByItsLabel(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE);
            find(study, "budget cap");

            Grid plans = display.syncCall(() -> Tools.table("Plans").grid());
            assertTrue(display.syncCall(plans::isFocusControl));
            assertEquals(FieldInfo.of(PlansPackage.Literals.PLAN__YEARLY_CAP).label() + " (USD)",
                    display.syncCall(() -> plans.model().header(plans.selection().column())));
            assertEquals(1, display.syncCall(() -> plans.selection().column()), "beside the names");
            assertEquals(1, display.syncCall(() -> plans.model().frozenColumns()), "whose column stays");
        }
    }

    @Test
    void aBusIsGoneToByItsNumber(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE);
            find(study, "b16 bus");

            Grid buses = display.syncCall(() -> (Grid) display.getFocusControl());
            assertEquals("B16", display.syncCall(() -> buses.model().text(buses.selection().row(), 0)));
        }
    }

    @Test
    void aViewIsGoneToByItsName(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE);
            find(study, "shop hours");
            study.await(() -> OpenStudy.page().getActivePart().getSite().getId().equals("org.amberyard.workbench.shopHours"));
        }
    }

    /** By its words or by its key; it is done for the table that had the focus. */
    @Test
    void aCommandIsDoneByItsName(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            int buses = study.study().getBuses().size();
            Grid grid = study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE);
            find(study, "add row");
            study.await(() -> study.study().getBuses().size() == buses + 1);
            display.syncExec(study.session()::undo);
            study.awaitResult();
            display.syncExec(grid::forceFocus);
            find(study, "ctrl+l i");
            study.await(() -> study.study().getSettings().getUnits() == UnitChoice.METRIC);
            display.syncExec(study.session()::undo);
            study.awaitResult();
        }
    }

    /** Nothing is being worked out that could be stopped, so that is not on offer; what is, stands with its key. */
    @Test
    void commandsThatCanBeDoneStandWithTheirKeys(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            inList(study, list -> {
                assertEquals(List.of("Calibrate consumption by logs… – Ctrl+L C"), found(list, "commands calibrate"));
                assertTrue(found(list, "commands units").stream().anyMatch(c -> c.matches("Units: .* – Ctrl\\+L U")), "in the words of their menu");
                assertEquals(List.of(), found(list, "commands stop evaluation"));
                list.close();
            });
        }
    }

    /** What people call a field brings that field first, be it by the name of its element or by another name of its own. */
    @Test
    void whatIsMeantComesFirst(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            inList(study, list -> {
                assertEquals("Price – fuel price diesel", found(list, "diesel price").get(0));
                assertTrue(found(list, "diesel price").stream().noneMatch(l -> l.endsWith("uncertain input Diesel price")),
                        "what is called so is found itself");
                assertEquals("Price per kWh – Tariff charge", found(list, "electricity price").get(0));
                assertEquals("Discount rate – Settings", found(list, "discount rate").get(0));
                assertEquals("Battery, nominal – Electric bus type", found(list, "battery capacity").get(0));
                assertEquals("Shop labour – Settings", found(list, "labor rate").get(0), "in the spelling of the United States");
                assertEquals("Budget cap per year – Plan", found(list, "Budget Cap").get(0));
                list.close();
            });
        }
    }

    /** Opens the list of Find on the page of the buses and does something there, on the event thread. */
    private static void inList(OpenStudy study, Consumer<Shell> what) {
        study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE);
        new Keyboard(study.display()).pressWith(SWT.CTRL, 'f');
        study.await(() -> list(study.display()).isPresent());
        study.display().syncExec(() -> what.accept(list(study.display()).orElseThrow()));
    }

    /** The lines below the first title of the list for some words. */
    private static List<String> found(Shell list, String text) {
        View.all(list, Text.class).get(0).setText(text);
        return Arrays.stream(View.all(list, Tree.class).get(0).getItem(0).getItems()).map(TreeItem::getText).toList();
    }

    @Test
    void thatNothingHasTheWordsIsSaid(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            inList(study, list -> {
                Text filter = View.all(list, Text.class).get(0);
                filter.setText("quizzaciously");
                assertEquals("Nothing has these words; try fewer, or a part of one.", View.all(list, Tree.class).get(0).getItem(0).getText());
                filter.notifyListeners(SWT.DefaultSelection, new Event());
                assertTrue(list.isVisible(), "it leads nowhere");
                list.close();
            });
        }
    }

    @Test
    void aFolderOfCsvFilesBecomesANewStudy(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Path csv = Path.of(System.getProperty("basedir", ".")).resolve("../../examples/ostrick-vale/csv").normalize();
            display.syncExec(() -> ImportFolderHandler.read(csv, OpenStudy.page()));
            study.await(() -> OpenStudy.page().getActiveEditor() != study.editor());
            StudyEditor imported = display.syncCall(() -> (StudyEditor) OpenStudy.page().getActiveEditor());
            assertEquals(study.study().getBuses().size(), imported.session().study().getBuses().size());
            assertTrue(imported.session().file().isEmpty(), "it is yet to be saved");
            display.syncExec(() -> OpenStudy.page().closeEditor(imported, false));
            assertSame(study.editor(), display.syncCall(() -> OpenStudy.page().getActiveEditor()));
        }
    }

    private static void find(OpenStudy study, String text) {
        Display display = study.display();
        new Keyboard(display).pressWith(SWT.CTRL, 'f');
        study.await(() -> list(display).isPresent());
        display.syncExec(() -> {
            Text filter = View.all(list(display).orElseThrow(), Text.class).get(0);
            filter.setText(text);
            filter.notifyListeners(SWT.DefaultSelection, new Event());
        });
        study.await(() -> list(display).isEmpty());
    }

    private static Optional<Shell> list(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> !View.all(s, Tree.class).isEmpty() && View.all(s, Grid.class).isEmpty())
                .findFirst();
    }
}
