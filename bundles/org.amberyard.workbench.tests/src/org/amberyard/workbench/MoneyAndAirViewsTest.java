package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.plans.Financing;
import org.amberyard.model.plans.FinancingKind;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansPackage;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Looks at ports by number, budget, fleet and emissions while plans, their financing and the factors change. */
@ExtendWith(WorkbenchExtension.class)
class MoneyAndAirViewsTest {
    private static final String ELECTRIC = "Electric in stages";
    private static final String ENGINES = "Like for like";

    @TempDir
    private Path folder;

    @Test
    void portsByNumberAreThoseOfThePlanChosen(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View ports = View.of(study, "portCount");
            ports.awaitText("Plan “" + ELECTRIC + "”: the cheapest ports of each number");
            assertTrue(ports.text().contains("Charged least cost, "), ports.text());

            ports.choose(0, ENGINES);
            ports.awaitText("Plan “" + ENGINES + "” has no electric bus in any year.");
        }
    }

    @Test
    void theBudgetShowsTheCapOnceThereIsOne(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View budget = View.of(study, "budgetByYear");
            budget.choose(0, ELECTRIC);
            budget.awaitText("Plan “" + ELECTRIC + "”: most in ");
            assertTrue(budget.text().contains("No cap is set: the plan’s “Budget cap per year” is 0."), budget.text());

            StudyResult earlier = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), plan(study),
                    PlansPackage.Literals.PLAN__YEARLY_CAP, 500_000.0)));
            study.awaitResultAfter(earlier);
            study.await(() -> budget.canvas().textAlternative().contains("Above the cap: "));

            budget.inputs();
            Grid plans = display.syncCall(() -> Tools.table("Plans").grid());
            assertTrue(display.syncCall(plans::isFocusControl), "the plans are in front");
            assertEquals("Budget cap per year (USD)",
                    display.syncCall(() -> plans.model().header(plans.selection().column())));
            assertTrue(display.syncCall(() -> plans.getClientArea().intersects(
                    plans.cellBounds(plans.selection().row(), plans.selection().column()))), "in sight");
            assertEquals("500,000", display.syncCall(
                    () -> plans.model().fullText(plans.selection().row(), plans.selection().column())));
        }
    }

    @Test
    void aPlanIsComparedWithAnyOther(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View way = View.of(study, "planDifference");
            way.choose(0, "Rebate buses only");
            way.awaitText("“Rebate buses only” costs ");
            assertTrue(way.text().contains("than “" + ENGINES + "”."), way.text());

            way.choose(1, ELECTRIC);
            study.await(() -> way.canvas().textAlternative().contains("than “" + ELECTRIC + "”."));
            way.choose(0, ELECTRIC);
            way.awaitText("“" + ELECTRIC + "” costs ");
            assertEquals(ENGINES, way.chosen(1), "a plan is not compared with itself");
        }
    }

    @Test
    void financingIsTypedChangesTheBudgetAndIsUndone(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View budget = View.of(study, "budgetByYear");
            budget.choose(0, ELECTRIC);
            budget.awaitText("Plan “" + ELECTRIC + "”: most in ");
            String cash = budget.text();
            study.goTo(plan(study), PlansPackage.Literals.PLAN__NAME);
            display.syncExec(() -> Tools.table("Financing").addElement());
            Financing loan = plan(study).getFinancing().get(0);
            assertTrue(display.syncCall(() -> Tools.table("Financing").grid().isVisible()), "in front of the other sheets");
            study.goTo(loan, PlansPackage.Literals.FINANCING__KIND);
            Tools.copy(display, "loan");
            new Keyboard(display).pressWith(SWT.CTRL, 'v');

            assertEquals(FinancingKind.LOAN, loan.getKind());
            study.await(() -> !budget.canvas().textAlternative().equals(cash)
                    && budget.canvas().textAlternative().startsWith("Plan "));

            display.syncExec(study.session()::undo);
            display.syncExec(study.session()::undo);
            assertTrue(plan(study).getFinancing().isEmpty());
            assertFalse(display.syncCall(() -> study.editor().isDirty()));
            study.await(() -> budget.canvas().textAlternative().equals(cash));
        }
    }

    @Test
    void theFleetIsThatOfThePlanChosen(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View fleet = View.of(study, "fleetByYear");
            fleet.choose(0, ENGINES);
            fleet.awaitText("Plan “" + ENGINES + "”: from 0 electric of 24 buses in 2026 to 0 of 24 in 2040");
            fleet.choose(0, ELECTRIC);
            fleet.awaitText("Plan “" + ELECTRIC + "”: from 0 electric of 24 buses in 2026 to 13 of 24 in 2040");
        }
    }

    @Test
    void anotherPollutantIsChosen(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View emissions = View.of(study, "emissions");
            emissions.awaitText("CO2e from 2026 to 2040");
            emissions.choose(0, "NOx");
            emissions.awaitText("NOx from 2026 to 2040");

            emissions.inputs();
            assertTrue(display.syncCall(() -> Tools.table("Engines").grid().isVisible()), "the factors are in front");
        }
    }

    @Test
    void defaultFactorsFillWhatIsEmptyInOneStep(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            EmissionFactors factors = study.study().getEmissionFactors();
            int engines = factors.getEngineEmissions().size();
            int health = factors.getHealthCosts().size();
            StudyResult earlier = study.result();
            display.syncExec(() -> {
                factors.getEngineEmissions().clear();
                factors.getWearEmissions().clear();
            });
            study.show(PageKind.AIR);

            display.syncExec(() -> Tools.press("Add default factors"));

            assertTrue(!factors.getEngineEmissions().isEmpty() && !factors.getWearEmissions().isEmpty());
            assertEquals(health, factors.getHealthCosts().size(), "none twice");
            int shown = display.syncCall(() -> Tools.table("Engines").grid().model().rows());
            assertEquals(factors.getEngineEmissions().size(), shown, "of " + engines + " before");
            study.awaitResultAfter(earlier);

            display.syncExec(() -> study.session().undo());

            assertTrue(factors.getEngineEmissions().isEmpty() && factors.getWearEmissions().isEmpty());
        }
    }

    private static Plan plan(OpenStudy study) {
        return study.study().getPlans().stream().filter(p -> p.getName().equals(ELECTRIC)).findFirst().orElseThrow();
    }
}
