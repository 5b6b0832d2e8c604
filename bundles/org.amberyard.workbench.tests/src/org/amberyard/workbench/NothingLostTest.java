package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.workbench.handlers.StudyOpener;
import org.amberyard.workbench.session.StudyLock;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Takes folders away, lets others write and lets two edit the same file: the user chooses, and nothing is lost. */
@ExtendWith(WorkbenchExtension.class)
class NothingLostTest {

    @TempDir
    private Path folder;

    @Test
    void aFolderThatIsGoneIsSaidAndTheEditsStay(Display display) throws Exception {
        Path drive = Files.createDirectory(folder.resolve("drive"));
        try (OpenStudy study = OpenStudy.inFolder(display, drive)) {
            set(study, 2.25);
            deleteAll(drive);

            display.asyncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            Shell failed = await(study, "The study has not been saved");
            press(display, failed, "Cancel");

            assertTrue(display.syncCall(() -> study.editor().isDirty()));
            assertEquals(2.25, ((FuelPrice) study.study().getPrices().get(0)).getPricePerL());
            Files.createDirectory(drive);
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
            assertEquals(2.25, ((FuelPrice) StudyFile.load(study.file()).getPrices().get(0)).getPricePerL());
        }
    }

    @Test
    void whatAnotherProgramHasSavedIsReplacedOnlyWhenAsked(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            set(study, 2.25);
            String theirs = Files.readString(study.file()) + "\n";
            Files.writeString(study.file(), theirs);

            display.asyncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            press(display, await(study, "Changed by another program"), "Cancel");
            assertEquals(theirs, Files.readString(study.file()));
            assertTrue(display.syncCall(() -> study.editor().isDirty()));

            display.asyncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            press(display, await(study, "Changed by another program"), "Replace it");
            study.await(() -> !study.editor().isDirty());
            assertEquals(theirs, Files.readString(study.file().resolveSibling(study.file().getFileName() + "~")), "theirs is kept beside it");
        }
    }

    @Test
    void aStudyThatIsOpenElsewhereIsOpenedAsACopyOrNotAtAll(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Path file = study.file();
            assertTrue(StudyLock.isTaken(file));
            assertTrue(Files.exists(StudyLock.of(file)));
            // Another name of the same folder is what another computer would have.
            Path link = Files.createSymbolicLink(folder.resolveSibling(folder.getFileName() + "-link"), folder);
            Path other = link.resolve(file.getFileName());
            int editors = display.syncCall(() -> OpenStudy.page().getEditorReferences().length);

            display.asyncExec(() -> new StudyOpener(OpenStudy.page()).open(other));
            press(display, await(study, "Study in use"), "Do not open");
            assertEquals(editors, display.syncCall(() -> OpenStudy.page().getEditorReferences().length));

            display.asyncExec(() -> new StudyOpener(OpenStudy.page()).open(other));
            press(display, await(study, "Study in use"), "Open a copy");
            study.await(() -> OpenStudy.page().getEditorReferences().length == editors + 1);
            assertTrue(display.syncCall(() -> OpenStudy.page().getActiveEditor() != study.editor()));
            display.syncExec(() -> OpenStudy.page().closeEditor(OpenStudy.page().getActiveEditor(), false));
            Files.delete(link);
        }
        assertFalse(StudyLock.isTaken(folder.resolve(OpenStudy.FILE)), "closed, it is free");
    }

    private static void set(OpenStudy study, double pricePerL) {
        study.display().syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, pricePerL)));
    }

    private static void deleteAll(Path of) throws Exception {
        try (Stream<Path> files = Files.list(of)) {
            for (Path file : files.toList()) {
                Files.delete(file);
            }
        }
        Files.delete(of);
    }

    private static Shell await(OpenStudy study, String title) {
        study.await(() -> dialog(study.display(), title).isPresent());
        return study.display().syncCall(() -> dialog(study.display(), title).orElseThrow());
    }

    private static Optional<Shell> dialog(Display display, String title) {
        return Arrays.stream(display.getShells()).filter(s -> !s.isDisposed() && s.getText().equals(title)).findFirst();
    }

    private static void press(Display display, Shell shell, String text) {
        display.syncExec(() -> View.all(shell, Button.class).stream().filter(b -> b.getText().replace("&", "").equals(text)).findFirst()
                .orElseThrow().notifyListeners(SWT.Selection, new Event()));
        OpenStudy.await(display, shell::isDisposed);
    }
}
