package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.grid.SortOrder;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IWorkbenchPart;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Asks of the figures on top of the window where they come from, and by which tariff plans are billed. */
@ExtendWith(WorkbenchExtension.class)
class HeadlineTest {
    private static final int ELECTRIC = 1;
    private static final int LONGER_THAN_AN_ANSWER_MS = 2_000;

    @TempDir
    private Path folder;

    /** Others expect the views that a window begins with. */
    @AfterEach
    void showWhatWasShown(Display display) throws PartInitException {
        display.syncCall(() -> OpenStudy.page().showView(id("cumulativeCost")));
    }

    private static Tree why(Display display, OpenStudy study) {
        return display.syncCall(() -> View.all(shown(study, "why"), Tree.class).get(0));
    }

    @Test
    void eachFigureSaysHowItComesAbout(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Tree why = why(display, study);
            Grid plans = plans(study);
            Mouse mouse = new Mouse(display, plans);
            mouse.click(ELECTRIC, 1);
            awaitFigure(study, why, "present cost of Electric in stages");
            mouse.click(ELECTRIC, 2);
            awaitFigure(study, why, "level yearly cost of Electric in stages");
            mouse.click(ELECTRIC, 3);
            awaitFigure(study, why, "saving of Electric in stages against Like for like");
            assertEquals(List.of("present cost of Like for like", "present cost of Electric in stages"), display.syncCall(() -> below(why)));
            String shown = display.syncCall(() -> plans.model().text(ELECTRIC, 3));
            assertEquals(shown.substring(0, shown.length() - 1), top(display, why).get(1).substring(0, shown.length() - 1), "but for its cents");
            mouse.click(ELECTRIC, 4);
            awaitFigure(study, why, "greenhouse gas saved by Electric in stages against Like for like");
            mouse.click(0, 3);
            awaitFigure(study, why, "Like for like");
            assertEquals("the baseline is not compared with itself", top(display, why).get(2));
        }
    }

    /** Figures are explained to nobody while another view hides the explanation. */
    @Test
    void aHiddenViewAnswersWhenItIsSeenAgain(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Tree why = why(display, study);
            Grid plans = plans(study);
            Mouse mouse = new Mouse(display, plans);
            mouse.click(ELECTRIC, 1);
            awaitFigure(study, why, "present cost of Electric in stages");
            display.syncExec(() -> shown(study, "cumulativeCost"));
            assertFalse(display.syncCall(why::isVisible));
            plans(study);
            mouse.click(ELECTRIC, 2);
            OpenStudy.pause(LONGER_THAN_AN_ANSWER_MS);
            assertEquals("present cost of Electric in stages", top(display, why).get(0));
            display.syncExec(() -> shown(study, "why"));
            awaitFigure(study, why, "level yearly cost of Electric in stages");
        }
    }

    /** A figure that was asked for is told anew when the study has changed. */
    @Test
    void theAnswerFollowsNewResults(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Tree why = why(display, study);
            Grid plans = plans(study);
            new Mouse(display, plans).click(ELECTRIC, 1);
            awaitFigure(study, why, "present cost of Electric in stages");
            String before = top(display, why).get(1);
            StudyResult earlier = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study().getSettings(),
                    StudyPackage.Literals.SETTINGS__DISCOUNT_RATE, 0.06)));
            study.awaitResultAfter(earlier);
            study.await(() -> !why.getItem(0).getText(1).equals(before));
            String shown = display.syncCall(() -> plans.model().text(ELECTRIC, 1));
            assertEquals(shown.substring(0, shown.length() - 1), top(display, why).get(1).substring(0, shown.length() - 1), "but for its cents");
        }
    }

    /** The view is opened by its command after the figure was chosen, too. */
    @Test
    void theFigureInFocusIsToldWhenTheViewOpens(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> OpenStudy.page().hideView(OpenStudy.page().findView(id("why"))));
            Grid plans = plans(study);
            new Mouse(display, plans).click(ELECTRIC, 3);
            Tree why = why(display, study);
            awaitFigure(study, why, "saving of Electric in stages against Like for like");
        }
    }

    /** A row says what its plan is, whatever the figures are sorted by. */
    @Test
    void aPlanIsChosenInAnyOrderOfTheFigures(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid plans = plans(study);
            Mouse mouse = new Mouse(display, plans);
            clickHeader(display, plans, 1);
            int cheapest = 0;
            assertEquals("Rebate buses only", display.syncCall(() -> plans.model().text(cheapest, 0)));
            mouse.click(cheapest, 0);
            assertTrue(display.syncCall(() -> answer(plans)).startsWith("“Rebate buses only”"));
            mouse.click(2, 0);
            assertTrue(display.syncCall(() -> answer(plans)).startsWith("“Electric in stages”"));
        }
    }

    /** Words that are out of sight are in the tip. */
    @Test
    void anAnswerHasATipOnlyWhereItGoesOnOutOfSight(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid plans = plans(study);
            display.syncExec(() -> {
                StyledText answer = View.all(area(plans), StyledText.class).get(0);
                Point size = answer.getSize();
                answer.setSize(size.x, 2 * answer.computeSize(size.x, SWT.DEFAULT).y);
                assertNull(answer.getToolTipText(), "a tip over words that are seen is in the way");
                answer.setSize(size.x, answer.getLineHeight());
                assertEquals(answer.getText(), answer.getToolTipText());
                answer.setSize(size);
            });
        }
    }

    /** New results do not bring the plans back to their own order, and the plan that was chosen stays in focus. */
    @Test
    void thePlansStaySortedWhenThereAreNewResults(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid plans = plans(study);
            clickHeader(display, plans, 1);
            new Mouse(display, plans).click(2, 1);
            List<String> sorted = List.of("Rebate buses only", "Like for like", "Electric in stages");
            assertEquals(sorted, display.syncCall(() -> names(plans)));
            StudyResult before = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study().getSettings(),
                    StudyPackage.Literals.SETTINGS__DISCOUNT_RATE, 0.045)));
            study.awaitResultAfter(before);
            study.await(() -> !plans.isFaded());
            assertEquals(Optional.of(new SortOrder("present_cost", true)), display.syncCall(plans::order));
            assertEquals(sorted, display.syncCall(() -> names(plans)));
            assertEquals(List.of(2, 1), display.syncCall(() -> List.of(plans.selection().row(), plans.selection().column())));
            assertTrue(display.syncCall(() -> answer(plans)).startsWith("“Electric in stages”"));
        }
    }

    private static List<String> names(Grid plans) {
        return IntStream.range(0, plans.model().rows()).mapToObj(row -> plans.model().text(row, 0)).toList();
    }

    @Test
    void theTariffInUseIsNamed(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid plans = plans(study);
            Link tariff = display.syncCall(() -> View.all(area(plans), Link.class).get(0));
            assertEquals("<a>Tariff KE-EVD</a>", display.syncCall(tariff::getText));
            display.syncExec(() -> tariff.notifyListeners(SWT.Selection, new Event()));
            Grid tariffs = display.syncCall(() -> Tools.table("Tariffs").grid());
            assertTrue(display.syncCall(tariffs::isFocusControl));
            int use = display.syncCall(() -> tariffs.model().columns()) - 1;
            assertEquals("in use", display.syncCall(() -> tariffs.model().text(0, use)));
            assertEquals("", display.syncCall(() -> tariffs.model().text(1, use)));
            Tariff used = study.study().getDepot().getTariff();
            rename(study, used, "A tariff with a very long name indeed");
            assertEquals("<a>Tariff A tariff with a very lon…</a>", display.syncCall(tariff::getText));
            assertTrue(display.syncCall(tariff::getToolTipText).contains("A tariff with a very long name indeed"));
            Tree outline = display.syncCall(() -> View.all(shown(study, "outline"), Tree.class).get(0));
            study.await(() -> List.of(outline.getItems()).stream().map(TreeItem::getText).anyMatch(t -> t.startsWith("Tariff in use: A tariff")));
            rename(study, used, "A tariff with a very long name that ends otherwise");
            assertEquals("<a>Tariff A tariff with a very lon…</a>", display.syncCall(tariff::getText));
            assertTrue(display.syncCall(tariff::getToolTipText).contains("A tariff with a very long name that ends otherwise"));
            display.syncExec(study.session()::undo);
            display.syncExec(study.session()::undo);
            study.awaitResult();
        }
    }

    private static void rename(OpenStudy study, Tariff tariff, String name) {
        study.display().syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), tariff,
                DepotPackage.Literals.TARIFF__NAME, name)));
    }

    /** Choices in the page of what-if are read whole. */
    @Test
    void theWayOfSamplingIsReadWhole(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.show(PageKind.WHAT_IF);
            Grid draws = display.syncCall(() -> Tools.table("Draws").grid());
            study.await(() -> draws.getSize().x > 0);
            int row = 2;
            assertEquals("Latin hypercube", display.syncCall(() -> draws.model().text(row, 1)));
            Event move = new Event();
            display.syncExec(() -> {
                move.x = draws.cellBounds(row, 1).x + 4;
                move.y = draws.cellBounds(row, 1).y + 4;
                draws.notifyListeners(SWT.MouseMove, move);
            });
            String tip = display.syncCall(draws::getToolTipText);
            assertFalse(tip != null && tip.contains("Latin hypercube"), "only what is cut has its text as a tip");
        }
    }

    private static String id(String view) {
        return "org.amberyard.workbench." + view;
    }

    private static Composite shown(OpenStudy study, String view) {
        try {
            IWorkbenchPart part = OpenStudy.page().showView(id(view));
            OpenStudy.page().activate(part);
            return study.display().getFocusControl().getParent();
        } catch (PartInitException e) {
            throw new AssertionError(e);
        }
    }

    private static Grid plans(OpenStudy study) {
        Display display = study.display();
        return display.syncCall(() -> {
            shown(study, "headline");
            return (Grid) display.getFocusControl();
        });
    }

    private static Composite area(Grid plans) {
        return plans.getParent();
    }

    private static String answer(Grid plans) {
        return View.all(area(plans), StyledText.class).get(0).getText();
    }

    private static void clickHeader(Display display, Grid grid, int column) {
        display.syncExec(() -> {
            Event event = new Event();
            event.button = 1;
            event.x = grid.cellBounds(0, column).x + 20;
            event.y = 4;
            grid.notifyListeners(SWT.MouseDown, event);
            grid.notifyListeners(SWT.MouseUp, event);
        });
    }

    private static void awaitFigure(OpenStudy study, Tree why, String name) {
        study.await(() -> why.getItem(0).getText().equals(name));
    }

    private static List<String> top(Display display, Tree why) {
        return display.syncCall(() -> List.of(why.getItem(0).getText(0), why.getItem(0).getText(1), why.getItem(0).getText(2)));
    }

    private static List<String> below(Tree why) {
        return List.of(why.getItem(0).getItems()).stream().map(TreeItem::getText).toList();
    }
}
