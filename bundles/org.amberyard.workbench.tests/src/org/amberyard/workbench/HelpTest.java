package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.workbench.help.HelpView;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.SashForm;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IViewPart;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Asks for help with the key, as a user does. */
@ExtendWith(WorkbenchExtension.class)
class HelpTest {

    @TempDir
    private Path folder;

    private static <T extends Control> T only(Class<T> kind) {
        IViewPart view = OpenStudy.page().findView(HelpView.ID);
        Shell shell = view.getSite().getShell();
        return View.all(shell, kind).stream().filter(c -> isIn(c)).findFirst().orElseThrow();
    }

    /** The help is the only view with a field of search beside a tree. */
    private static boolean isIn(Control control) {
        for (Composite c = control.getParent(); c != null; c = c.getParent()) {
            if (c instanceof SashForm && c.getChildren().length >= 2 && c.getChildren()[1] instanceof StyledText) {
                return true;
            }
        }
        return false;
    }

    @Test
    void theKeyTellsWhatTheFieldInFocusMeans(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__ENGINE_MODEL_YEAR);
            new Keyboard(display).press(SWT.F1);
            study.await(() -> OpenStudy.page().findView(HelpView.ID) != null);
            study.await(() -> only(StyledText.class).getSelectionText().equals("Engine model year"));
            assertTrue(display.syncCall(() -> only(StyledText.class).getText()).startsWith("Bus\n"));
        }
    }

    @Test
    void pagesAreFoundByWords(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> {
                try {
                    OpenStudy.page().showView(HelpView.ID);
                } catch (PartInitException e) {
                    throw new AssertionError(e);
                }
            });
            String before = display.syncCall(() -> only(StyledText.class).getText());
            display.syncExec(() -> only(Text.class).setText("max-flow"));
            assertEquals(List.of(), display.syncCall(HelpTest::listed));
            assertEquals("Nothing found for “max-flow”. Try another word, or fewer.", display.syncCall(() -> only(StyledText.class).getText()).strip());
            display.syncExec(() -> only(Text.class).setText(""));
            assertEquals(before, display.syncCall(() -> only(StyledText.class).getText()), "the page comes back");
            display.syncExec(() -> only(Text.class).setText("least cost maximum flow"));
            assertEquals(List.of("Charging, bill and service"), display.syncCall(HelpTest::listed));
            display.syncExec(() -> only(Text.class).notifyListeners(SWT.DefaultSelection, new Event()));
            assertTrue(display.syncCall(() -> only(StyledText.class).getText()).startsWith("Charging, bill and service\n"), "Enter opens the first");
            display.syncExec(() -> only(Text.class).setText("transformer"));
            display.syncExec(HelpTest::chooseLast);
            assertEquals(display.syncCall(() -> only(Tree.class).getSelection()[0].getText()),
                    display.syncCall(() -> only(StyledText.class).getText().lines().findFirst().orElseThrow()));
            display.syncExec(() -> only(Text.class).setText(""));
            assertTrue(display.syncCall(HelpTest::listed).size() > 30, "every kind of element has a page");
        }
    }

    private static void chooseLast() {
        Tree tree = only(Tree.class);
        TreeItem group = tree.getItem(tree.getItemCount() - 1);
        tree.setSelection(group.getItem(group.getItemCount() - 1));
        Event event = new Event();
        event.item = tree.getSelection()[0];
        tree.notifyListeners(SWT.Selection, event);
    }

    private static List<String> listed() {
        return Arrays.stream(only(Tree.class).getItems()).flatMap(g -> Arrays.stream(g.getItems())).map(TreeItem::getText).toList();
    }
}
