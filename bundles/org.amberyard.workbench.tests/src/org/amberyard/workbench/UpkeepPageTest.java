package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.exchange.DefaultTasks;
import org.amberyard.workbench.editor.PageKind;
import org.eclipse.swt.widgets.Display;
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

            display.syncExec(() -> Tools.press("Add default tasks"));

            assertEquals(DefaultTasks.all().size(), study.study().getMaintenanceTasks().size());
            StudyResult after = study.awaitResultAfter(before);
            assertFalse(after.baseline().shop(0).labourHours().isEmpty());

            display.syncExec(() -> Tools.press("Add default tasks"));

            assertEquals(DefaultTasks.all().size(), study.study().getMaintenanceTasks().size(), "none twice");

            display.syncExec(() -> study.session().undo());

            assertTrue(study.study().getMaintenanceTasks().isEmpty());
        }
    }
}
