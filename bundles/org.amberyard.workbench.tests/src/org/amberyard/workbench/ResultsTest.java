package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.Arrays;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.report.ResultsJson;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.charts.ChartCanvas;
import org.amberyard.workbench.session.Evaluation;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Looks at headline and charts while the study changes. */
@ExtendWith(WorkbenchExtension.class)
class ResultsTest {

    /** Longest that the window may keep a user waiting. */
    private static final long LONGEST_BLOCK_MS = 50;

    /**
     * The first edits load and compile classes, and other programs take the processor away at times; what the window itself
     * does, it does in every round.
     */
    private static final int ROUNDS = 10;

    private double price = 1;

    @TempDir
    private Path folder;

    @Test
    void headlineFollowsAnEdit(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            String before = headline(display);

            StudyResult earlier = study.result();
            setDiesel(study, 3);
            study.awaitResultAfter(earlier);

            assertTrue(before.contains("Like for like"), before);
            assertNotEquals(before, headline(display));
        }
    }

    @Test
    void windowAndHeadlessRunWriteTheSameBytes(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            StudyResult earlier = study.result();
            setDiesel(study, 3);
            StudyResult shown = study.awaitResultAfter(earlier);
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));

            Study saved = StudyFile.load(study.file());
            StudyResult fresh = new StudyEvaluator().evaluate(StudyCompiler.compile(saved));
            assertEquals(json(fresh, StudyUnits.of(saved)), json(shown, StudyUnits.of(saved)));
            assertNotEquals(json(earlier, StudyUnits.of(saved)), json(shown, StudyUnits.of(saved)));
        }
    }

    private static String json(StudyResult result, UnitSystem system) throws IOException {
        StringWriter text = new StringWriter();
        ResultsJson.write(result, system, text);
        return text.toString();
    }

    @Test
    void chartRepaintsAfterAnEdit(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View costs = View.of(study, "annualCost");
            ChartCanvas canvas = display.syncCall(costs::canvas);
            byte[] before = pixels(canvas);

            StudyResult earlier = study.result();
            setDiesel(study, 3);
            study.awaitResultAfter(earlier);

            assertTrue(distinct(before) > 20, "the chart is not blank");
            study.await(() -> !Arrays.equals(before, pixels(canvas)));
            assertFalse(display.syncCall(canvas::textAlternative).isBlank());
        }
    }

    @Test
    void chartTellsTheFigureUnderThePointer(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View costs = View.of(study, "annualCost");
            ChartCanvas canvas = display.syncCall(costs::canvas);

            assertTrue(display.syncCall(() -> tells(canvas, "Like for like, ")));
        }
    }

    /** Whether the chart tells something that starts like this anywhere along a grid of places. */
    private static boolean tells(ChartCanvas canvas, String start) {
        for (int x = 0; x < canvas.getSize().x; x += 4) {
            for (int y = 0; y < canvas.getSize().y; y += 4) {
                Event move = new Event();
                move.x = x;
                move.y = y;
                canvas.notifyListeners(SWT.MouseMove, move);
                if (canvas.getToolTipText() != null && canvas.getToolTipText().startsWith(start)) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void studyWithErrorKeepsResultsAndSaysWhy(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            StudyResult before = study.result();

            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study(),
                    StudyPackage.Literals.STUDY__BASELINE, null)));
            study.await(() -> study.session().evaluation().phase() == Evaluation.Phase.STALE);

            assertEquals(before, study.result());
            assertFalse(study.evaluation().reason().isBlank());

            display.syncExec(study.session()::undo);
            study.awaitResult();
        }
    }

    @Test
    void windowAnswersWhileResultsAreComputed(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            long longest = Long.MAX_VALUE;
            for (int round = 0; round < ROUNDS && longest > LONGEST_BLOCK_MS; round++) {
                EventThreadWatch watch = new EventThreadWatch(display);
                edit(study, 5);
                longest = watch.stop();
            }

            assertTrue(longest <= LONGEST_BLOCK_MS, "the window was away for " + longest + " ms");
        }
    }

    private void edit(OpenStudy study, int times) {
        for (int i = 0; i < times; i++) {
            StudyResult earlier = study.result();
            price += 0.01;
            setDiesel(study, price);
            study.awaitResultAfter(earlier);
            OpenStudy.pause(150);
        }
    }

    private static void setDiesel(OpenStudy study, double pricePerL) {
        study.display().syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, pricePerL)));
    }

    private static Shell shell() {
        return OpenStudy.page().getWorkbenchWindow().getShell();
    }

    private static String headline(Display display) {
        return display.syncCall(() -> find(shell(), StyledText.class).getText());
    }

    private static byte[] pixels(ChartCanvas canvas) {
        return canvas.getDisplay().syncCall(() -> {
            Image image = new Image(canvas.getDisplay(), canvas.getSize().x, canvas.getSize().y);
            GC gc = new GC(image);
            canvas.print(gc);
            gc.dispose();
            byte[] data = image.getImageData().data;
            image.dispose();
            return data;
        });
    }

    private static long distinct(byte[] data) {
        boolean[] seen = new boolean[256];
        for (byte b : data) {
            seen[b & 0xFF] = true;
        }
        int count = 0;
        for (boolean s : seen) {
            count += s ? 1 : 0;
        }
        return count;
    }

    /** The first visible control of a kind. */
    private static <T extends Control> T find(Composite parent, Class<T> kind) {
        for (Control child : parent.getChildren()) {
            if (kind.isInstance(child) && child.isVisible()) {
                return kind.cast(child);
            }
            T found = child instanceof Composite composite ? find(composite, kind) : null;
            if (found != null) {
                return found;
            }
        }
        return null;
    }
}
