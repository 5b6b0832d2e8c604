package org.amberyard.workbench;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.BooleanSupplier;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.fields.FeatureTable;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.handlers.StudyOpener;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.SessionTools;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.PlatformUI;

/** A copy of the example district, open in the window; closed without saving at the end of a test. */
final class OpenStudy implements AutoCloseable {

    /** Name of the copy. */
    static final String FILE = "district.amberyard";

    private static final long TIMEOUT_MS = 60_000;

    /** Knows the example from the first test that opens it; what a test changes is worked out anew. */
    private static final StudyEvaluator EVALUATOR = new StudyEvaluator();

    private final Display display;
    private final Path file;
    private final StudyEditor editor;

    private OpenStudy(Display display, Path file, SessionTools tools) {
        this.display = display;
        this.file = file;
        this.editor = display.syncCall(() -> {
            new StudyOpener(page(), () -> tools).open(file);
            page().getWorkbenchWindow().getShell().forceActive();
            return (StudyEditor) page().getActiveEditor();
        });
        awaitResult();
    }

    /** Copies the example into a folder, opens it and waits for its results. */
    static OpenStudy inFolder(Display display, Path folder) throws IOException {
        return inFolder(display, folder, SessionTools.fresh().keptAfterMs());
    }

    /** Opens the example in a folder; edits are kept beside it after a time. */
    static OpenStudy inFolder(Display display, Path folder, int keptAfterMs) throws IOException {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        Path copy = folder.resolve(FILE);
        Files.copy(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize(), copy);
        return new OpenStudy(display, copy, new SessionTools(EVALUATOR, keptAfterMs));
    }

    /** Opens the copy that an earlier test has left in a folder. */
    static OpenStudy opened(Display display, Path folder) {
        return new OpenStudy(display, folder.resolve(FILE), new SessionTools(EVALUATOR, SessionTools.fresh().keptAfterMs()));
    }

    static IWorkbenchPage page() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0].getActivePage();
    }

    Display display() {
        return display;
    }

    Path file() {
        return file;
    }

    StudyEditor editor() {
        return editor;
    }

    StudySession session() {
        return editor.session();
    }

    Study study() {
        return session().study();
    }

    /** Shows a page and puts the focus on a field; answers its table. */
    Grid goTo(EObject element, EStructuralFeature feature) {
        return display.syncCall(() -> {
            FeatureTable table = editor.reveal(element, feature).orElseThrow();
            table.grid().getShell().forceActive();
            table.grid().forceFocus();
            return table.grid();
        });
    }

    void show(PageKind page) {
        display.syncExec(() -> editor.show(page));
    }

    Evaluation evaluation() {
        return display.syncCall(() -> session().evaluation());
    }

    StudyResult result() {
        return evaluation().result().orElseThrow();
    }

    /** Waits until the results are those of the study as it stands. */
    StudyResult awaitResult() {
        await(() -> session().evaluation().phase() == Evaluation.Phase.CURRENT);
        return result();
    }

    /** Waits for results other than these. */
    StudyResult awaitResultAfter(StudyResult earlier) {
        await(() -> session().evaluation().phase() == Evaluation.Phase.CURRENT
                && session().evaluation().result().orElseThrow() != earlier);
        return result();
    }

    /** Waits until something holds on the event thread. */
    void await(BooleanSupplier condition) {
        await(display, condition);
    }

    /** Waits until something holds on the event thread of a display. */
    static void await(Display display, BooleanSupplier condition) {
        long end = System.currentTimeMillis() + TIMEOUT_MS;
        while (!display.syncCall(condition::getAsBoolean)) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError("Not within " + TIMEOUT_MS + " ms");
            }
            pause(10);
        }
    }

    static void pause(long ms) {
        try {
            Thread.sleep(ms);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new AssertionError(e);
        }
    }

    @Override
    public void close() {
        display.syncExec(() -> page().closeEditor(editor, false));
    }
}
