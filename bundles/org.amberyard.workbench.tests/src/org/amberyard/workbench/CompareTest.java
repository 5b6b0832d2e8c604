package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.compare.CompareView;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Text;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Sets plans and studies side by side. */
@ExtendWith(WorkbenchExtension.class)
class CompareTest {

    @TempDir
    private Path folder;

    @Test
    void plansStandSideBySideAndAnotherStudyBesideThem(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Path other = Files.copy(study.file(), folder.resolve("earlier.amberyard"));
            CompareView view = open(display);
            Grid grid = display.syncCall(() -> (Grid) display.getFocusControl());
            study.await(() -> grid.model().rows() > 0);

            List<String> plans = study.study().getPlans().stream().map(p -> p.getName()).toList();
            assertEquals(plans, headers(display, grid));
            assertEquals("Present cost (USD)", display.syncCall(() -> grid.model().text(0, 1)));

            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                    study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 1.75)));
            study.awaitResult();
            display.syncExec(() -> view.compareWith(other));
            study.await(() -> grid.model().columns() == 2 + 2 * plans.size());
            String now = display.syncCall(() -> grid.model().text(0, 2));
            String then = display.syncCall(() -> grid.model().text(0, 2 + plans.size()));
            assertTrue(!now.equals(then), now);

            choose(display, grid, 2);
            study.await(() -> grid.model().columns() == 4);
            assertEquals(1, display.syncCall(() -> grid.model().rows()), "only one input differs");
            assertTrue(display.syncCall(() -> grid.model().text(0, 1)).startsWith("Price"));
        }
    }

    /** The command opens it on what differs, with what the plans stand on; all rows are a switch away. */
    @Test
    void itOpensOnWhatDiffersWithAStamp(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Path other = Files.copy(study.file(), folder.resolve("earlier.amberyard"));
            display.asyncExec(() -> Commands.run("comparePlans"));
            study.await(() -> display.getFocusControl() instanceof Grid focused && focused.getParent() != null
                    && focused.model().columns() == 2 + study.study().getPlans().size());
            Grid grid = display.syncCall(() -> (Grid) display.getFocusControl());
            Button only = display.syncCall(() -> View.all(grid.getParent(), Button.class).stream().filter(b -> (b.getStyle() & SWT.CHECK) != 0)
                    .findFirst().orElseThrow());
            study.await(() -> grid.model().rows() > 0);
            assertTrue(display.syncCall(only::getSelection));
            int differing = display.syncCall(() -> grid.model().rows());
            display.syncExec(() -> {
                only.setSelection(false);
                only.notifyListeners(SWT.Selection, new Event());
            });
            assertTrue(display.syncCall(() -> grid.model().rows()) > differing, "rows in which all plans are the same");
            study.await(() -> stamp(grid).startsWith("All plans stand on the same assumptions: prices, tariff “KE-EVD”, climate of “Ostrick Vale"));

            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                    study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 1.75)));
            study.awaitResult();
            CompareView view = open(display);
            display.syncExec(() -> view.compareWith(other));
            study.await(() -> stamp(grid).startsWith("“earlier.amberyard” stands on other assumptions: prices; the same: depot with tariff, climate"));
        }
    }

    private static String stamp(Grid grid) {
        return View.all(grid.getParent(), Text.class).stream().filter(t -> (t.getStyle() & SWT.WRAP) != 0).findFirst().orElseThrow().getText();
    }

    @Test
    void theHeadlineSaysWhatAnEditHasDone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Study content = study.study();
            var before = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), content.getPrices().get(0),
                    PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, 1.9)));
            study.awaitResultAfter(before);

            study.await(() -> words().contains("By the last edit") && words().contains(" fuel"));

            display.syncExec(study.session()::undo);
            study.await(
                    () -> words().contains("Undone: the change “fuel price diesel: Price ") && words().contains("By this “") && words().contains(" less: −"));

            display.syncExec(study.session()::redo);
            study.await(() -> words().contains("Made again: ") && words().contains(" more: +"));

            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), content,
                    StudyPackage.Literals.STUDY__DESCRIPTION, "Told anew")));
            study.await(() -> words().contains("The last edit left the cost of “"));
        }
    }

    private static String words() {
        return String.join("\n", View.all(OpenStudy.page().getWorkbenchWindow().getShell(), StyledText.class).stream()
                .map(StyledText::getText).toList());
    }

    private static CompareView open(Display display) {
        return display.syncCall(() -> {
            try {
                return (CompareView) OpenStudy.page().showView(CompareView.ID);
            } catch (PartInitException e) {
                throw new AssertionError(e);
            }
        });
    }

    private static List<String> headers(Display display, Grid grid) {
        return display.syncCall(() -> IntStream.range(2, grid.model().columns()).mapToObj(grid.model()::header).toList());
    }

    private static void choose(Display display, Grid grid, int place) {
        display.syncExec(() -> {
            Combo combo = View.all(grid.getParent(), Combo.class).get(0);
            combo.select(place);
            combo.notifyListeners(SWT.Selection, new Event());
        });
    }
}
