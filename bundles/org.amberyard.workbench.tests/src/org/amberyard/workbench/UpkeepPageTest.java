package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.exchange.DefaultTasks;
import org.amberyard.workbench.editor.PageKind;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Adds the default tasks on their page, sees the shop's hours, and takes them back. */
@ExtendWith(WorkbenchExtension.class)
class UpkeepPageTest {

    @TempDir
    private Path folder;

    @Test
    void defaultTasksAreOneStepThatCanBeUndone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> study.study().getMaintenanceTasks().clear());
            study.show(PageKind.UPKEEP);
            StudyResult before = study.result();

            display.syncExec(() -> press("Add default tasks"));

            assertEquals(DefaultTasks.all().size(), study.study().getMaintenanceTasks().size());
            StudyResult after = study.awaitResultAfter(before);
            assertFalse(after.baseline().shop(0).labourHours().isEmpty());

            display.syncExec(() -> press("Add default tasks"));

            assertEquals(DefaultTasks.all().size(), study.study().getMaintenanceTasks().size(), "none twice");

            display.syncExec(() -> study.session().undo());

            assertTrue(study.study().getMaintenanceTasks().isEmpty());
        }
    }

    private static void press(String text) {
        ToolItem item = items(OpenStudy.page().getWorkbenchWindow().getShell()).filter(i -> i.getText().equals(text))
                .findFirst().orElseThrow();
        item.notifyListeners(SWT.Selection, new Event());
    }

    private static Stream<ToolItem> items(Control control) {
        if (control instanceof ToolBar bar) {
            return Arrays.stream(bar.getItems());
        }
        return Optional.of(control).filter(Composite.class::isInstance).map(Composite.class::cast).stream()
                .flatMap(c -> Arrays.stream(c.getChildren())).flatMap(UpkeepPageTest::items);
    }
}
