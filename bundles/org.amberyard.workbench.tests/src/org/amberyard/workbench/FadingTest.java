package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.plan.PlanActions;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Figures that are not those of the study fade, and the plan on show does not jump while its results are being computed. */
@ExtendWith(WorkbenchExtension.class)
class FadingTest {

    @TempDir
    private Path folder;

    private static Grid headline(OpenStudy study) {
        return study.display().syncCall(() -> View.all(OpenStudy.page().getWorkbenchWindow().getShell(), Grid.class).get(0));
    }

    private static void setPrice(OpenStudy study, double perL) {
        study.display().syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                study.study().getPrices().get(0), PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, perL)));
    }

    /** Edits that follow each other at once keep the results from being computed, as one that takes long does. */
    @Test
    void figuresFadeWhileNewOnesAreLong(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View causes = View.of(study, "energyByCause");
            Grid headline = headline(study);
            assertFalse(display.syncCall(() -> causes.canvas().isFaded() || headline.isFaded()));
            StudyResult earlier = study.result();

            int edits = 0;
            while (!display.syncCall(() -> causes.canvas().isFaded() && headline.isFaded()
                    && causes.canvas().textAlternative().startsWith("Computing… Route "))) {
                setPrice(study, 1 + 0.001 * edits);
                edits++;
                assertTrue(edits < 200, "chart and headline have not faded");
                OpenStudy.pause(10);
            }

            study.awaitResultAfter(earlier);
            study.await(() -> !causes.canvas().isFaded() && !headline.isFaded());
            causes.awaitText("Route ");
        }
    }

    @Test
    void aTableOfAStudyThatCannotBeEvaluatedIsFaded(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid headline = headline(study);
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(),
                    study.study().getBuses().get(0), FleetPackage.Literals.BUS__TYPE, null)));
            study.await(headline::isFaded);
            display.syncExec(() -> study.session().undo());
            study.await(() -> !headline.isFaded());
        }
    }

    @Test
    void aCopyIsShownAsSoonAsItIsComputedAndItsOriginalUntilThen(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View months = View.of(study, "rangeByMonth");
            StudyResult earlier = study.result();
            display.syncExec(() -> {
                Plan plan = study.study().getPlans().get(1);
                new PlanActions(study.session()).copy(plan, "Second thoughts");
                assertEquals("Electric in stages", months.combo(0).getText());
            });
            study.awaitResultAfter(earlier);
            assertEquals("Second thoughts", months.chosen(0));
            study.await(() -> months.canvas().textAlternative().contains("plan “Second thoughts”"));

            StudyResult later = study.result();
            display.syncExec(() -> study.session().undo());
            study.awaitResultAfter(later);
            assertEquals("Electric in stages", months.chosen(0));
        }
    }
}
