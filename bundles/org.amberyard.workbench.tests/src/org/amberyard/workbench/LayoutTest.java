package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.workbench.layout.Purpose;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.custom.CTabItem;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.eclipse.ui.IViewReference;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Lays the window out for each purpose, by key and by the choices in the status line, and as it was at first. */
@ExtendWith(WorkbenchExtension.class)
class LayoutTest {
    /** Those of the purpose with the fewest views, the outline and the study. */
    private static final int LEAST_VIEWS = 8;
    private static final int TAB_MARGINS = 12;
    private static final String VIEW = "org.amberyard.workbench.";

    @TempDir
    private Path folder;

    @AfterEach
    void asAtFirst(Display display) {
        display.syncExec(() -> {
            layOut(Purpose.MONEY);
            OpenStudy.page().resetPerspective();
        });
    }

    @ParameterizedTest
    @EnumSource(Purpose.class)
    void aKeyLeadsToEachPurpose(Purpose purpose, Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(study.study().getPlans().get(0), null);
            new Keyboard(display).pressWith(SWT.CTRL, (char) ('1' + purpose.ordinal()));

            study.await(() -> purpose.id().equals(shown()));
            assertSame(study.editor(), display.syncCall(() -> OpenStudy.page().getActiveEditor()), "the study stays open");
            study.await(() -> chosen().equals(List.of(purpose.ordinal())));
        }
    }

    /** The views of a purpose, at the size that the window has at first. */
    @ParameterizedTest
    @EnumSource(Purpose.class)
    void noTitleOfAViewIsCut(Purpose purpose, Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> {
                layOut(purpose);
                OpenStudy.page().resetPerspective();
            });
            study.await(() -> tabs().size() >= LEAST_VIEWS && tabs().stream().allMatch(LayoutTest::isWhole));
        }
    }

    /** Tabs of all views on show. */
    private static List<CTabItem> tabs() {
        return View.all(shell(), CTabFolder.class).stream().filter(CTabFolder::isVisible)
                .filter(f -> !"StudyPages".equals(f.getData("org.eclipse.e4.ui.css.id")))
                .flatMap(f -> Arrays.stream(f.getItems())).toList();
    }

    private static boolean isWhole(CTabItem tab) {
        GC gc = new GC(tab.getParent());
        try {
            int needed = gc.textExtent(tab.getText()).x + tab.getImage().getBounds().width + TAB_MARGINS;
            return tab.isShowing() && tab.getBounds().width >= needed;
        } finally {
            gc.dispose();
        }
    }

    @Test
    void theStatusLineOffersThePurposes(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> {
                ToolItem depot = purposes()[2];
                assertTrue(depot.getText().contains("Depot && bill"), depot.getText());
                depot.setSelection(true);
                depot.notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> Purpose.DEPOT.id().equals(shown()));
            View.of(study, "dayLoad").awaitText("Plan ");
        }
    }

    @Test
    void aKeyOpensAViewOfAnotherPurpose(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(study.study().getPlans().get(0), null);
            assertNull(display.syncCall(() -> OpenStudy.page().findView(VIEW + "portOccupancy")));
            Keyboard keys = new Keyboard(display);
            keys.pressWith(SWT.CTRL, 'g');
            keys.type("p");

            study.await(() -> OpenStudy.page().getActivePart() != null
                    && OpenStudy.page().getActivePart().getSite().getId().equals(VIEW + "portOccupancy"));
            assertEquals(Purpose.MONEY.id(), display.syncCall(LayoutTest::shown));
        }
    }

    @Test
    void eachLayoutIsKeptAsItIsLeftUntilItIsReset(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> OpenStudy.page().hideView(reference("annualCost")));
            display.syncExec(() -> layOut(Purpose.AIR));
            display.syncExec(() -> layOut(Purpose.MONEY));
            assertNull(display.syncCall(() -> reference("annualCost")));

            display.asyncExec(LayoutTest::reset);
            study.await(() -> dialog() != null);
            display.syncExec(() -> View.all(dialog(), Button.class).stream()
                    .filter(b -> Integer.valueOf(IDialogConstants.YES_ID).equals(b.getData())
                            || Integer.valueOf(IDialogConstants.OK_ID).equals(b.getData()))
                    .findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event()));

            study.await(() -> reference("annualCost") != null);
            assertNotNull(study.result());
        }
    }

    private static void reset() {
        Commands.runAny("org.eclipse.ui.window.resetPerspective");
    }

    private static Shell dialog() {
        return Arrays.stream(shell().getShells()).filter(Shell::isVisible).findFirst().orElse(null);
    }

    private static IViewReference reference(String view) {
        return OpenStudy.page().findViewReference(VIEW + view);
    }

    private static void layOut(Purpose purpose) {
        OpenStudy.page().setPerspective(OpenStudy.page().getWorkbenchWindow().getWorkbench().getPerspectiveRegistry()
                .findPerspectiveWithId(purpose.id()));
    }

    private static String shown() {
        return OpenStudy.page().getPerspective().getId();
    }

    private static Shell shell() {
        return OpenStudy.page().getWorkbenchWindow().getShell();
    }

    /** The choices in the status line. */
    private static ToolItem[] purposes() {
        return View.all(shell(), ToolBar.class).stream().map(ToolBar::getItems)
                .filter(items -> items.length == Purpose.values().length && items[0].getText().contains("Plans")).findFirst()
                .orElseThrow();
    }

    private static List<Integer> chosen() {
        ToolItem[] items = purposes();
        return Stream.iterate(0, i -> i + 1).limit(items.length).filter(i -> items[i].getSelection()).toList();
    }
}
