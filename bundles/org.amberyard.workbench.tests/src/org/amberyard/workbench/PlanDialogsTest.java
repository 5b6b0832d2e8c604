package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.plan.BestPlanAsk;
import org.amberyard.workbench.plan.FillPlan;
import org.amberyard.workbench.plan.LevelPlan;
import org.amberyard.workbench.plan.PlanChoice;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Fills the example's electric plan by a rule and keeps it within a cap, in the dialogs. */
@ExtendWith(WorkbenchExtension.class)
class PlanDialogsTest {

    @TempDir
    private Path folder;

    @Test
    void aRuleFillsThePlanInOneStep(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            PlanGridTest.show(study);
            List<String> before = PlanGridTest.plan(study).getReplacements().stream().map(Replacement::toString).toList();
            int ports = PlanGridTest.plan(study).getPortPurchases().stream().mapToInt(PortPurchase::getCount).sum();
            display.asyncExec(() -> FillPlan.ask(OpenStudy.page().getWorkbenchWindow().getShell(), study.session(),
                    PlanGridTest.plan(study)));
            study.await(() -> dialog(display).isPresent());
            display.syncExec(() -> {
                Shell shell = dialog(display).orElseThrow();
                assertTrue(words(shell).contains("Programme Clean Fleet Fund pays for "), words(shell));
                choose(shell, "none");
                assertTrue(words(shell).contains("No programme pays, as none is chosen; of the steps that go, "), words(shell));
                choose(shell, "all by the last year, evenly");
                choose(shell, "AC 19.2 kW");
                choose(shell, "2030");
                assertTrue(PlanGridTest.all(shell, Text.class).findFirst().orElseThrow().getText()
                        .startsWith("14 buses are replaced: 4 in 2027, 3 in 2028, 4 in 2029, 3 in 2030."), words(shell));
                button(shell, IDialogConstants.OK_ID).notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> dialog(display).isEmpty());

            assertEquals(14, PlanGridTest.plan(study).getReplacements().stream().filter(r -> r.getYear() <= 2030 && r.getNewType() != null
                    && r.getNewType().getName().startsWith("Electric")).count());
            assertEquals(14, PlanGridTest.plan(study).getPortPurchases().stream().mapToInt(PortPurchase::getCount).sum());
            assertEquals("Filling of plan Electric in stages",
                    display.syncCall(() -> study.session().history().undoable().orElseThrow().label()));

            display.syncExec(() -> study.session().undo());

            assertEquals(before.size(), PlanGridTest.plan(study).getReplacements().size());
            assertEquals(ports, PlanGridTest.plan(study).getPortPurchases().stream().mapToInt(PortPurchase::getCount).sum());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
        }
    }

    @Test
    void stepsMoveSoThatAPlanKeepsWithinItsCap(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            PlanGridTest.show(study);
            StudyResult earlier = study.awaitResult();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), PlanGridTest.plan(study),
                    PlansPackage.Literals.PLAN__YEARLY_CAP, 1_100_000.0)));
            study.awaitResultAfter(earlier);
            List<Integer> before = PlanGridTest.plan(study).getReplacements().stream().map(Replacement::getYear).toList();
            display.asyncExec(() -> LevelPlan.ask(OpenStudy.page().getWorkbenchWindow().getShell(), study.session(), PlanGridTest.plan(study)));
            study.await(() -> levelDialog(display).filter(s -> button(s, IDialogConstants.OK_ID).isEnabled()).isPresent());
            display.syncExec(() -> {
                Shell shell = levelDialog(display).orElseThrow();
                assertTrue(words(shell).contains("As it is, the plan breaks its cap of USD 1,100,000 a year in 2 of 15 years, by: 2027 USD "), words(shell));
                assertTrue(words(shell).contains("5 steps move, but no moves were found that keep the cap of USD 1,100,000 a year in every year."),
                        words(shell));
                button(shell, IDialogConstants.OK_ID).notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> levelDialog(display).isEmpty());

            assertNotEquals(before, PlanGridTest.plan(study).getReplacements().stream().map(Replacement::getYear).toList());
            assertEquals("Steps of plan Electric in stages within its cap",
                    display.syncCall(() -> study.session().history().undoable().orElseThrow().label()));

            display.syncExec(() -> study.session().undo());

            assertEquals(before, PlanGridTest.plan(study).getReplacements().stream().map(Replacement::getYear).toList());
        }
    }

    /** The plan in focus on the page of plans is the one that all views show, and the one that the commands are about, from any page. */
    @Test
    void thePlanInFocusIsTheOneThatIsLookedAt(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Plan last = study.study().getPlans().get(2);
            Grid plans = study.goTo(last, PlansPackage.Literals.PLAN__NAME);
            assertEquals(Optional.of(last), display.syncCall(() -> new PlanChoice(study.session()).plan()));
            Plan first = study.study().getPlans().get(1);
            display.syncExec(() -> new PlanChoice(study.session()).choose(first));
            study.await(() -> plans.selection().row() == 1);
            display.syncExec(() -> plans.goTo(2, 1));
            assertEquals(Optional.of(last), display.syncCall(() -> new PlanChoice(study.session()).plan()));
            study.show(PageKind.BUSES);
            display.asyncExec(() -> Commands.run("bestPlan"));
            study.await(() -> shell(display, "Cheapest steps of plan “" + last.getName() + "”").isPresent());
            display.syncExec(() -> shell(display, "Cheapest steps of plan “" + last.getName() + "”").orElseThrow().close());
        }
    }

    private static Optional<Shell> shell(Display display, String title) {
        return Arrays.stream(display.getShells()).filter(s -> !s.isDisposed() && s.getText().equals(title)).findFirst();
    }

    @Test
    void theCheapestStepsAreLookedForAndWritten(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            PlanGridTest.show(study);
            List<Integer> before = PlanGridTest.plan(study).getReplacements().stream().map(Replacement::getYear).toList();
            display.asyncExec(() -> BestPlanAsk.ask(OpenStudy.page().getWorkbenchWindow().getShell(), study.session(),
                    PlanGridTest.plan(study)));
            study.await(() -> bestDialog(display).isPresent());
            display.syncExec(() -> {
                Shell shell = bestDialog(display).orElseThrow();
                assertFalse(button(shell, IDialogConstants.OK_ID).isEnabled(), "there is nothing to write yet");
                PlanGridTest.all(shell, Button.class).filter(b -> b.getText().equals("Search")).findFirst().orElseThrow()
                        .notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> bestDialog(display).filter(s -> button(s, IDialogConstants.OK_ID).isEnabled()).isPresent());
            display.syncExec(() -> {
                Shell shell = bestDialog(display).orElseThrow();
                assertTrue(words(shell).contains("Present cost after financing: USD "), words(shell));
                button(shell, IDialogConstants.OK_ID).notifyListeners(SWT.Selection, new Event());
            });
            study.await(() -> bestDialog(display).isEmpty());
            assertNotEquals(before, PlanGridTest.plan(study).getReplacements().stream().map(Replacement::getYear).toList());
            display.syncExec(() -> study.session().undo());
            assertEquals(before, PlanGridTest.plan(study).getReplacements().stream().map(Replacement::getYear).toList());
        }
    }

    private static Optional<Shell> bestDialog(Display display) {
        return display.syncCall(() -> Arrays.stream(display.getShells()).filter(s -> s.getText().startsWith("Cheapest steps of plan “"))
                .findFirst());
    }

    private static Optional<Shell> levelDialog(Display display) {
        return display.syncCall(() -> Arrays.stream(display.getShells()).filter(s -> s.getText().startsWith("Keep plan “")).findFirst());
    }

    private static Optional<Shell> dialog(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().startsWith("Fill plan “")).findFirst();
    }

    private static String words(Shell shell) {
        return PlanGridTest.all(shell, Text.class).map(Text::getText).toList().toString();
    }

    /** Chooses a text in the last combo that offers it. */
    private static void choose(Shell shell, String text) {
        List<Combo> offering = PlanGridTest.all(shell, Combo.class).filter(c -> c.indexOf(text) >= 0).toList();
        Combo combo = offering.get(offering.size() - 1);
        combo.select(combo.indexOf(text));
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private static Button button(Shell shell, int id) {
        return PlanGridTest.all(shell, Button.class).filter(b -> Integer.valueOf(id).equals(b.getData())).findFirst().orElseThrow();
    }
}
