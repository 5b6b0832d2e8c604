package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.study.Narrative;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.report.papers.FigureSource;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.narrative.GiveOut;
import org.amberyard.workbench.session.Evaluation;
import org.amberyard.workbench.session.KeptStep;
import org.amberyard.workbench.session.SessionListener;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.core.runtime.NullProgressMonitor;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.emf.edit.command.DeleteCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.StyledText;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Writes texts with figures, copies them, and changes the study behind them. */
@ExtendWith(WorkbenchExtension.class)
class NarrativePageTest {

    @TempDir
    private Path folder;

    private static <T extends Control> List<T> all(Class<T> kind) {
        return View.all(OpenStudy.page().getWorkbenchWindow().getShell(), kind);
    }

    private static StyledText entry() {
        return all(StyledText.class).stream().filter(t -> t.isVisible() && t.getEditable()).findFirst().orElseThrow();
    }

    private static StyledText preview() {
        return all(StyledText.class).stream().filter(t -> t.isVisible() && !t.getEditable() && t.getParent() != entry().getParent()
                && t.getParent().getParent() == entry().getParent().getParent()).findFirst().orElseThrow();
    }

    private static boolean says(String words) {
        return all(Text.class).stream().anyMatch(t -> t.isVisible() && t.getText().contains(words));
    }

    private static Button button(String text) {
        return all(Button.class).stream().filter(b -> b.isVisible() && b.getText().equals(text)).findFirst().orElseThrow();
    }

    private static void press(String text) {
        button(text).notifyListeners(SWT.Selection, new Event());
    }

    private static boolean isFound(OpenStudy study, Narrative of, String words) {
        return study.session().evaluation().findings().stream().anyMatch(f -> f.element() == of && f.message().contains(words));
    }

    /** One bus less is replaced in a plan. */
    private static void replaceNoMore(OpenStudy study, Plan plan, String bus) {
        study.display().syncExec(() -> study.session().execute(new ChangeCommand(study.study()) {
            @Override
            protected void doExecute() {
                plan.getReplacements().removeIf(r -> r.getBus().getName().equals(bus));
            }
        }));
    }

    /** Keeps a figure as one that a text was given out with. */
    private static void giveOut(OpenStudy study, Narrative text, String figure, String printed, FigureSource source, LocalDate day) {
        study.display().syncExec(() -> GiveOut.keep(study.session(), List.of(new GiveOut.Given(text, Map.of(figure, printed))), source, day));
    }

    /** The first text of the study, which the page shows. */
    private static Narrative first(OpenStudy study) {
        study.awaitResult();
        study.show(PageKind.NARRATIVE);
        Narrative need = study.study().getNarratives().get(0);
        study.goTo(need, StudyPackage.Literals.NARRATIVE__NAME);
        return need;
    }

    @Test
    void aTextIsWrittenBesideWhatItReadsCopiedAndToldToHaveChanged(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Narrative need = first(study);
            display.syncExec(() -> entry().setText("{buses replaced} buses, {buses replacd}"));
            study.await(() -> preview().getText().equals("13 buses, {buses replacd}"));
            study.await(() -> says("“{buses replacd}” names no figure. Did you mean “buses replaced”?"));
            study.await(() -> need.getText().startsWith("{buses replaced} buses,"));
            display.syncExec(() -> entry().setText("{total project cost} in all"));
            study.await(() -> preview().getText().equals("USD\u00a05,133,021 in all") && !says("names no figure"));
            study.await(() -> button("Copy text").isEnabled());
            display.syncExec(() -> press("Copy text"));
            assertEquals("USD\u00a05,133,021 in all", Tools.copied(display));
            assertEquals("USD\u00a05,133,021", need.getGivenOut().get(0).getPrinted());
            study.await(() -> says("No figure has changed since the text was given out on"));
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            assertEquals("USD\u00a05,133,021", StudyFile.load(study.file()).getNarratives().get(0).getGivenOut().get(0).getPrinted());

            tellsOfAChange(study, need);
        }
    }

    /** Told on the page and as a finding until it is undone. */
    private static void tellsOfAChange(OpenStudy study, Narrative need) {
        replaceNoMore(study, need.getGivenOutFor(), "B18");
        study.await(() -> says("total project cost: USD\u00a05,133,021 → USD\u00a04,"));
        study.await(() -> isFound(study, need, "“total project cost” was USD\u00a05,133,021. It is USD\u00a04,"));
        assertEquals(Evaluation.Phase.CURRENT, study.session().evaluation().phase());
        study.display().syncExec(study.session()::undo);
        study.await(() -> !isFound(study, need, "figures in it are others"));
        study.display().syncExec(study.session()::undo);
        study.await(() -> entry().getText().equals("{buses replaced} buses, {buses replacd}"));
    }

    /** Copying a text is no edit: undo takes back what the user has typed before, and what was given out stays, is saved and told of. */
    @Test
    void undoPassesByThatATextWasGivenOut(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Narrative need = first(study);
            String before = need.getText();
            display.syncExec(() -> entry().setText("{total project cost} in all"));
            awaitEntered(study, need, "{total project cost} in all");
            display.syncExec(() -> press("Copy text"));
            assertEquals(1, display.syncCall(() -> study.session().history().steps().size()));
            assertEquals(List.of("“" + need.getName() + "” was given out; its figures are kept"),
                    display.syncCall(() -> study.session().history().kept().stream().map(KeptStep::label).toList()));
            assertTrue(display.syncCall(() -> button("Copy text").isEnabled()), "its figures are the same, and nothing is computed anew");

            display.syncExec(() -> field().forceFocus());
            new Keyboard(display).pressWith(SWT.CTRL, 'z');
            study.await(() -> before.equals(need.getText()));
            assertEquals("USD\u00a05,133,021", need.getGivenOut().get(0).getPrinted());
            assertTrue(display.syncCall(() -> study.editor().isDirty()), "it is not in the file yet");
            display.syncExec(() -> study.editor().doSave(new NullProgressMonitor()));
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
            assertEquals("USD\u00a05,133,021", StudyFile.load(study.file()).getNarratives().get(0).getGivenOut().get(0).getPrinted());
        }
    }

    /** Whatever undo brings back, a text says the plan that it was given out for last. */
    @Test
    void aPlanThatComesBackIsNotTakenForTheOneThatATextWasGivenOutFor(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Narrative need = first(study);
            Plan first = study.study().getPlans().get(1);
            Plan second = study.study().getPlans().get(2);
            giveOut(study, need, "buses in the fleet", "24", new FigureSource(first.getName(), Optional.empty()), LocalDate.of(2026, 9, 15));
            display.syncExec(() -> study.session().execute(DeleteCommand.create(study.session().domain(), first)));
            assertEquals(null, need.getGivenOutFor());
            giveOut(study, need, "buses in the fleet", "24", new FigureSource(second.getName(), Optional.empty()), LocalDate.of(2026, 9, 16));
            display.syncExec(study.session()::undo);
            assertEquals(second, need.getGivenOutFor());
            assertEquals("2026-09-16", need.getGivenOutOn());
            display.syncExec(study.session()::redo);
            assertEquals(second, need.getGivenOutFor());
        }
    }

    /** As documents for an application to a programme that is not the largest are given out. */
    @Test
    void aTextGivenOutToAnotherProgrammeIsComparedWithIt(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Narrative need = first(study);
            display.syncExec(() -> entry().setText("{grant requested}"));
            awaitEntered(study, need, "{grant requested}");
            giveOut(study, need, "grant requested", "USD\u00a0308,915", new FigureSource("Electric in stages", Optional.of("Make-ready")),
                    LocalDate.of(2026, 9, 15));
            assertEquals("Make-ready", need.getGivenOutTo().getName());
            study.await(() -> says("No figure has changed since the text was given out on 2026-09-15"));
            giveOut(study, need, "grant requested", "USD\u00a01", new FigureSource("Electric in stages", Optional.empty()), LocalDate.of(2026, 9, 16));
            assertEquals(null, need.getGivenOutTo());
            study.await(() -> says("grant requested: USD\u00a01 → USD\u00a0651,401"));
        }
    }

    /** New results come without what was found in those before, until somebody has looked at their own tables, which are made once. */
    @Test
    void whatWasFoundInResultsIsNotToldOfTheNextOnes(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Narrative need = first(study);
            Plan plan = study.study().getPlans().get(1);
            giveOut(study, need, "buses in the fleet", "23", new FigureSource(plan.getName(), Optional.empty()), LocalDate.of(2026, 9, 15));
            study.await(() -> isFound(study, need, "“buses in the fleet” was 23. It is 24 now."));
            StudyResult before = study.result();
            List<Boolean> told = new ArrayList<>();
            display.syncExec(() -> study.session().addListener(new SessionListener() {
                @Override
                public void evaluationChanged(StudySession session) {
                    if (session.evaluation().current().filter(r -> r != before).isPresent()) {
                        told.add(isFound(study, need, "figures in it are others"));
                    }
                }
            }));
            replaceNoMore(study, plan, "B18");
            study.await(() -> told.contains(true));
            assertEquals(List.of(false, true), told);
            display.syncExec(() -> study.session().figures().of(study.result(), () -> {
                throw new AssertionError("read by the page and by the look already");
            }));
        }
    }

    private static Grid grid(String header) {
        return all(Grid.class).stream().filter(g -> g.isVisible() && g.model().columns() > 0 && g.model().header(0).equals(header)).findFirst()
                .orElseThrow();
    }

    @Test
    void enterInAHeadingGoesOnInItsText(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.awaitResult();
            study.show(PageKind.NARRATIVE);
            int before = study.study().getNarratives().size();
            Grid headings = display.syncCall(() -> grid("Heading"));
            display.syncExec(() -> headings.goTo(before, 0));
            assertFalse(display.syncCall(() -> field().isEnabled()));
            display.syncExec(headings::forceFocus);
            new Keyboard(display).type("Jobs");
            new Keyboard(display).press(SWT.CR);
            assertTrue(display.syncCall(() -> field().isFocusControl()));
            new Keyboard(display).type("We train people");
            study.await(() -> "We train people".equals(study.study().getNarratives().get(before).getText()));
            assertEquals(before + 1, study.study().getNarratives().size());

            display.syncExec(headings::forceFocus);
            new Keyboard(display).press(SWT.F2);
            new Keyboard(display).type("Work");
            new Keyboard(display).press(SWT.CR);
            assertEquals("Work", study.study().getNarratives().get(before).getName());
            assertTrue(display.syncCall(() -> field().isFocusControl() && field().getCaretOffset() == field().getCharCount()));
        }
    }

    private static StyledText field() {
        return all(StyledText.class).stream().filter(t -> t.isVisible() && t.getEditable()).findFirst().orElseThrow();
    }

    /** The list of all texts says which are to be given out again, and of a text that has got more figures nothing is said of these. */
    @Test
    void aHeadingIsMarkedWhoseFiguresHaveChangedSinceItWasGivenOut(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Narrative need = first(study);
            display.syncExec(() -> entry().setText("{total project cost} in all"));
            awaitEntered(study, need, "{total project cost} in all");
            display.syncExec(() -> press("Copy text"));
            Grid headings = display.syncCall(() -> grid("Heading"));
            assertTrue(display.syncCall(() -> headings.model().mark(0, 0)).isEmpty());

            display.syncExec(() -> entry().setText("{total project cost} for {buses replaced} buses"));
            study.await(() -> says("No figure that the text was given out with on") && says("Put in since then: buses replaced."));
            study.goTo(study.study().getNarratives().get(1), StudyPackage.Literals.NARRATIVE__NAME);
            replaceNoMore(study, need.getGivenOutFor(), "B18");
            study.await(() -> headings.model().mark(0, 0).isPresent());
            String words = display.syncCall(() -> headings.words(0, 0));
            assertTrue(words.startsWith("Heading: Need. Changed since the text was given out on "), words);
            assertTrue(words.contains("total project cost: USD\u00a05,133,021 → USD\u00a04,"), words);
        }
    }

    @Test
    void aTextThatIsNotWholeIsCopiedOnlyWhenTheUserSaysSo(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Narrative need = first(study);
            display.syncExec(() -> entry().setText("{routes} routes, {buses replacd}"));
            awaitEntered(study, need, "{routes} routes, {buses replacd}");
            int before = need.getGivenOut().size();
            copyAnswering(study, "Cancel");
            assertEquals(before, need.getGivenOut().size());
            copyAnswering(study, "Copy all the same");
            assertEquals("18 routes, {buses replacd}", Tools.copied(display));
        }
    }

    /** The text is in the study, and the figures are those of the study with it. */
    private static void awaitEntered(OpenStudy study, Narrative narrative, String text) {
        study.await(() -> text.equals(narrative.getText()));
        study.awaitResult();
        study.await(() -> button("Copy text").isEnabled());
    }

    private static void copyAnswering(OpenStudy study, String answer) {
        study.display().asyncExec(() -> press("Copy text"));
        study.await(() -> dialog().isPresent());
        study.display().syncExec(() -> {
            Shell dialog = dialog().orElseThrow();
            assertTrue(View.all(dialog, Label.class).stream().anyMatch(l -> l.getText().contains("“{buses replacd}” names no figure.")));
            View.all(dialog, Button.class).stream().filter(b -> b.getText().equals(answer)).findFirst().orElseThrow()
                    .notifyListeners(SWT.Selection, new Event());
        });
        study.await(() -> dialog().isEmpty());
    }

    private static Optional<Shell> dialog() {
        return Stream.of(Display.getCurrent().getShells()).filter(s -> s.isVisible() && s.getText().equals("Copy a text with faults")).findFirst();
    }

    @Test
    void aSearchForAFigureThatThereIsNotSaysSo(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.awaitResult();
            study.show(PageKind.NARRATIVE);
            study.goTo(study.study().getNarratives().get(1), StudyPackage.Literals.NARRATIVE__NAME);
            Text search = display.syncCall(() -> all(Text.class).stream().filter(t -> t.getMessage().equals("Find a figure")).findFirst().orElseThrow());
            String before = display.syncCall(() -> entry().getText());
            display.syncExec(() -> search.setText("bread"));
            assertEquals("No figure of that name", display.syncCall(() -> grid("Now").model().text(0, 1)));
            display.syncExec(() -> search.notifyListeners(SWT.DefaultSelection, new Event()));
            assertEquals(before, display.syncCall(() -> entry().getText()));
            display.syncExec(() -> search.setText("grant requested"));
            display.syncExec(() -> {
                entry().setSelection(0);
                search.notifyListeners(SWT.DefaultSelection, new Event());
            });
            assertEquals("{grant requested}" + before, display.syncCall(() -> entry().getText()));
        }
    }

    @Test
    void aFigureOfTheListIsPutAtTheCaret(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            study.awaitResult();
            study.show(PageKind.NARRATIVE);
            study.goTo(study.study().getNarratives().get(1), StudyPackage.Literals.NARRATIVE__NAME);
            display.syncExec(() -> {
                entry().setText("We ask for .");
                entry().setSelection(11);
            });
            Text search = display.syncCall(() -> all(Text.class).stream().filter(t -> t.getMessage().equals("Find a figure")).findFirst().orElseThrow());
            display.syncExec(() -> search.setText("grant requested"));
            display.syncExec(() -> all(Grid.class).stream().filter(g -> g.isVisible() && g.model().columns() == 2
                    && g.model().header(0).equals("Now")).findFirst().orElseThrow().forceFocus());
            new Keyboard(display).press(SWT.CR);
            assertEquals("We ask for {grant requested}.", display.syncCall(() -> entry().getText()));
            study.await(() -> preview().getText().startsWith("We ask for USD\u00a0651,401."));
            assertFalse(display.syncCall(() -> says("names no figure")));
        }
    }
}
