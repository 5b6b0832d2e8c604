package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.editor.PageKind;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Leafs through the pages of one study. */
@ExtendWith(WorkbenchExtension.class)
class PagesTest {

    @TempDir
    private static Path folder;

    private static OpenStudy study;

    @BeforeAll
    static void open(Display display) throws IOException {
        study = OpenStudy.inFolder(display, folder);
    }

    @AfterAll
    static void close() {
        study.close();
    }

    @ParameterizedTest
    @EnumSource(PageKind.class)
    void everyPageShowsItsTablesAndFollowsEdits(PageKind page, Display display) {
        study.show(page);
        assertFalse(display.syncCall(() -> study.editor().isDirty()));

        display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study(),
                StudyPackage.Literals.STUDY__NAME, "renamed")));
        assertTrue(display.syncCall(() -> study.editor().isDirty()));

        display.syncExec(study.session()::undo);
        assertFalse(display.syncCall(() -> study.editor().isDirty()));
    }
}
