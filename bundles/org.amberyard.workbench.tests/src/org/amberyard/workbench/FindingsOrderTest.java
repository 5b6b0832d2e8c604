package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalInt;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.grid.GridModel;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PartInitException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Breaks the example on several pages; what keeps it from being evaluated stands first. */
@ExtendWith(WorkbenchExtension.class)
class FindingsOrderTest {

    @TempDir
    private Path folder;

    @Test
    void findingsStandByWeightThenByPage(Display display) throws Exception {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid grid = display.syncCall(() -> View.all(show(), Grid.class).get(0));
            EObject run = study.study().getRoutes().get(0).getRuns().get(0);
            EObject price = study.study().getPrices().get(0);
            study.await(() -> grid.model().rows() > 0);
            assertTrue(display.syncCall(() -> kinds(grid.model())).stream().allMatch(k -> k > 0), "no error in the example");
            // The price is of a later page than the run, and was broken first.
            set(study, price, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, -1.0);
            set(study, run, RoutesPackage.Literals.RUN__DISTANCE_KM, 0.0);
            study.await(() -> first(grid.model(), w -> w.startsWith("Run ")).isPresent()
                    && first(grid.model(), w -> w.startsWith("Fuel price ")).isPresent());
            display.syncExec(() -> inOrder(grid.model()));
        }
    }

    private static void inOrder(GridModel model) {
        List<Integer> kinds = kinds(model);
        assertEquals(kinds.stream().sorted().toList(), kinds, "errors, then warnings, then notes");
        assertTrue(kinds.contains(1) || kinds.contains(2), "something less grave comes after them");
        int run = first(model, w -> w.startsWith("Run ")).orElseThrow();
        int price = first(model, w -> w.startsWith("Fuel price ")).orElseThrow();
        assertTrue(run < price, "the routes come before the prices");
        assertEquals(0, kinds.get(price));
    }

    private static OptionalInt first(GridModel model, Predicate<String> where) {
        return IntStream.range(0, model.rows()).filter(r -> where.test(model.text(r, 1))).findFirst();
    }

    private static List<Integer> kinds(GridModel model) {
        return IntStream.range(0, model.rows()).mapToObj(r -> List.of("Error", "Warning", "Note").indexOf(model.text(r, 0))).toList();
    }

    private static void set(OpenStudy study, EObject element, EStructuralFeature feature, Object value) {
        study.display().syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), element, feature, value)));
    }

    private static Composite show() {
        try {
            OpenStudy.page().showView("org.amberyard.workbench.findings");
            return (Composite) OpenStudy.page().getWorkbenchWindow().getShell().getDisplay().getFocusControl().getParent();
        } catch (PartInitException e) {
            throw new AssertionError(e);
        }
    }
}
