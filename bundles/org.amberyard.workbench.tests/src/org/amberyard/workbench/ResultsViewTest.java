package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.grid.SortOrder;
import org.amberyard.workbench.session.WhatIfWork;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.ui.PartInitException;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.WorkbenchException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Chooses among the tables of results. */
@ExtendWith(WorkbenchExtension.class)
class ResultsViewTest {

    @TempDir
    private Path folder;

    @Test
    void aTableIsFoundByAPartOfItsTitle(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = show(study);
            String before = title(display, view);
            press(display, view);
            study.await(() -> list(display).isPresent());
            display.syncExec(() -> {
                Tree tree = View.all(list(display).orElseThrow(), Tree.class).get(0);
                assertEquals("Costs and finance", tree.getItem(0).getText());
                assertTrue(tree.getItemCount() > 5, "tables are grouped");
                assertEquals(before, tree.getSelection()[0].getText(), "the one on show");
                Text filter = View.all(list(display).orElseThrow(), Text.class).get(0);
                filter.setText("who pays");
                assertEquals(1, tree.getItemCount());
                assertEquals("Who pays for each purchase", tree.getSelection()[0].getText());
                filter.notifyListeners(SWT.DefaultSelection, new Event());
            });
            assertTrue(list(display).isEmpty(), "the list is closed");
            assertEquals("Who pays for each purchase", title(display, view));
            Grid grid = display.syncCall(() -> View.all(view, Grid.class).get(0));
            study.await(() -> grid.model().rows() > 0 && grid.model().header(2).equals("Purchase"));
            assertEquals(3, display.syncCall(() -> grid.model().frozenColumns()), "plan, year and purchase stay");
            assertEquals("Cost, money of the year (USD)", display.syncCall(() -> grid.model().header(4)));
        }
    }

    @Test
    void rowsAreFoundByWordsAndSortedByFigures(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = show(study);
            choose(study, view, "Plans in single figures");
            Grid grid = display.syncCall(() -> View.all(view, Grid.class).get(0));
            study.await(() -> grid.model().rows() == 3);
            display.syncExec(() -> View.all(view, Text.class).get(0).setText("stages electric"));
            assertEquals(List.of("Electric in stages"), display.syncCall(() -> firsts(grid)));
            display.syncExec(() -> View.all(view, Text.class).get(0).setText("no such plan"));
            assertEquals(List.of(), display.syncCall(() -> firsts(grid)));
            display.syncExec(() -> View.all(view, Text.class).get(0).setText(""));
            display.syncExec(() -> grid.model().sort(2, true));
            assertEquals(List.of("Rebate buses only", "Like for like", "Electric in stages"), display.syncCall(() -> firsts(grid)), "by present cost");
            display.syncExec(() -> grid.model().sort(2, false));
            assertEquals(List.of("Electric in stages", "Like for like", "Rebate buses only"), display.syncCall(() -> firsts(grid)));
        }
    }

    /** New figures come into the table as it is on show: sorted, filtered, with the row that was chosen, which is in sight. */
    @Test
    void aTableStaysSortedAndFilteredWhenItIsMadeAnew(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = show(study);
            choose(study, view, "Costs by year");
            Grid grid = display.syncCall(() -> View.all(view, Grid.class).get(0));
            study.await(() -> grid.model().rows() > 30 && grid.model().columnName(0).equals("plan"));
            int year = display.syncCall(() -> column(grid, "year"));
            display.syncExec(() -> View.all(view, Text.class).get(0).setText("stages"));
            display.syncExec(() -> {
                grid.sort(new SortOrder("year", false));
                grid.goTo(2, year);
            });
            List<String> years = display.syncCall(() -> column(grid, year));
            assertEquals(years.stream().sorted(Comparator.reverseOrder()).toList(), years);
            String chosen = years.get(2);

            StudyResult before = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study().getSettings(),
                    StudyPackage.Literals.SETTINGS__DISCOUNT_RATE, 0.07)));
            study.awaitResultAfter(before);
            study.await(() -> !grid.isFaded());

            assertEquals(years, display.syncCall(() -> column(grid, year)));
            assertEquals(chosen, display.syncCall(() -> grid.model().text(grid.selection().row(), year)));
            assertEquals(Optional.of(new SortOrder("year", false)), display.syncCall(grid::order));
            choose(study, view, "Plans in single figures");
            study.await(() -> grid.model().rows() == 3);
            choose(study, view, "Costs by year");
            study.await(() -> grid.model().rows() > 30);
            assertEquals(Optional.of(new SortOrder("year", false)), display.syncCall(grid::order), "as it was left");
        }
    }

    /** A shorter horizon takes rows away above the chosen one, which is found by what it is about. */
    @Test
    void theChosenRowIsTheSameWhenRowsAboveItGo(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = show(study);
            choose(study, view, "Costs by year");
            Grid grid = display.syncCall(() -> View.all(view, Grid.class).get(0));
            study.await(() -> grid.model().rows() > 100 && grid.model().columnName(0).equals("plan"));
            List<String> wanted = List.of("Electric in stages", "2030", "Capital");
            int row = display.syncCall(() -> IntStream.range(0, grid.model().rows()).filter(r -> head(grid, r).equals(wanted)).findFirst().orElseThrow());
            display.syncExec(() -> grid.goTo(row, 2));

            StudyResult before = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study().getSettings(),
                    StudyPackage.Literals.SETTINGS__HORIZON_YEARS, 12)));
            study.awaitResultAfter(before);
            study.await(() -> !grid.isFaded());

            assertEquals(wanted, display.syncCall(() -> head(grid, grid.selection().row())));
            assertTrue(display.syncCall(() -> grid.selection().row()) < row);
        }
    }

    private static List<String> head(Grid grid, int row) {
        return IntStream.range(0, 3).mapToObj(column -> grid.model().text(row, column)).toList();
    }

    private static int column(Grid grid, String name) {
        return IntStream.range(0, grid.model().columns()).filter(c -> grid.model().columnName(c).equals(name)).findFirst().orElseThrow();
    }

    private static List<String> column(Grid grid, int column) {
        return IntStream.range(0, grid.model().rows()).mapToObj(row -> grid.model().text(row, column)).toList();
    }

    private static void choose(OpenStudy study, Composite view, String table) {
        press(study.display(), view);
        study.await(() -> list(study.display()).isPresent());
        study.display().syncExec(() -> {
            Text filter = View.all(list(study.display()).orElseThrow(), Text.class).get(0);
            filter.setText(table);
            filter.notifyListeners(SWT.DefaultSelection, new Event());
        });
    }

    private static List<String> firsts(Grid grid) {
        return IntStream.range(0, grid.model().rows()).mapToObj(row -> grid.model().text(row, 0)).toList();
    }

    @Test
    void theCommandThatFiltersRowsGoesToTheFieldOfTheView(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = show(study);
            Text search = display.syncCall(() -> View.all(view, Text.class).get(0));
            display.asyncExec(() -> Commands.run("filterRows"));
            study.await(() -> display.getFocusControl() == search);
        }
    }

    /** Each layout opens on the table that fits it, and on the one that was chosen there when it is shown again. */
    @Test
    void eachLayoutHasItsOwnTable(Display display) throws IOException {
        InstanceScope.INSTANCE.getNode("org.amberyard.workbench/tables").remove("ROUTES");
        InstanceScope.INSTANCE.getNode("org.amberyard.workbench/tables").remove("DEPOT");
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            try {
                layOut(display, "routes");
                Composite view = show(study);
                study.await(() -> title(display, view).equals("Routes and electric types"));
                Grid grid = display.syncCall(() -> View.all(view, Grid.class).get(0));
                study.await(() -> grid.model().columns() > 3 && grid.model().header(3).equals("Why") && grid.model().rows() > 30);
                assertEquals(2, display.syncCall(() -> grid.model().frozenColumns()), "route and type stay");
                layOut(display, "depot");
                study.await(() -> title(display, view).equals("Electric service by year"));
                choose(study, view, "Electric bills by year");
                layOut(display, "routes");
                study.await(() -> title(display, view).equals("Routes and electric types"));
                layOut(display, "depot");
                study.await(() -> title(display, view).equals("Electric bills by year"));
            } finally {
                layOut(display, "district");
            }
        }
    }

    private static void layOut(Display display, String name) {
        display.syncExec(() -> {
            try {
                PlatformUI.getWorkbench().showPerspective("org.amberyard.workbench." + name, OpenStudy.page().getWorkbenchWindow());
            } catch (WorkbenchException e) {
                throw new AssertionError(e);
            }
        });
    }

    /** The tables of a what-if are there once it was run, with its draws and seed, and say when the study is another one. */
    @Test
    void aWhatIfHasItsTables(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            InstanceScope.INSTANCE.getNode("org.amberyard.workbench/tables").remove("WHAT_IF");
            layOut(display, "whatIfLayout");
            Composite view = show(study);
            assertEquals("Prices at which a plan costs as much as the baseline", title(display, view), "as long as none was run");
            display.syncExec(() -> {
                study.study().getWhatIf().setDraws(40);
                study.study().getWhatIf().getCorrelations().clear();
                study.study().getWhatIf().getInputs().subList(1, study.study().getWhatIf().getInputs().size()).clear();
                study.study().getWhatIf().setGridAcross(null);
                study.study().getWhatIf().setGridUpward(null);
            });
            display.syncExec(() -> study.session().whatIf().run());
            study.await(() -> study.session().whatIf().phase() == WhatIfWork.Phase.DONE);
            study.await(() -> title(display, view).equals("Plans over all draws"));
            Grid grid = display.syncCall(() -> View.all(view, Grid.class).get(0));
            study.await(() -> grid.model().rows() == 3 && grid.model().columnName(1).equals("draws"));
            assertEquals("40", display.syncCall(() -> grid.model().text(0, 1)));
            assertTrue(said(display, view).startsWith("40 draws, seed 1."), said(display, view));
            assertFalse(display.syncCall(grid::isFaded));
            StudyResult before = study.result();
            display.syncExec(() -> study.session().execute(SetCommand.create(study.session().domain(), study.study().getSettings(),
                    StudyPackage.Literals.SETTINGS__DISCOUNT_RATE, 0.07)));
            study.awaitResultAfter(before);
            study.await(() -> said(display, view).contains("earlier version of the study. Changed since: "));
            study.await(grid::isFaded);
            choose(study, view, "Plans in single figures");
            study.await(() -> grid.model().columnName(1).equals("is_baseline") && !grid.isFaded());
            choose(study, view, "Plans over all draws");
            study.await(() -> grid.model().columnName(1).equals("draws") && grid.isFaded());
            layOut(display, "district");
        }
    }

    private static String said(Display display, Composite view) {
        return display.syncCall(() -> View.all(view, Label.class).stream().map(Label::getText).filter(t -> !t.isBlank()).findFirst().orElse(""));
    }

    @Test
    void theViewOfPortsLeadsToWhatAnOutageDoes(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Composite view = show(study);
            View ports = View.of(study, "portOccupancy");
            display.syncExec(() -> View.all(ports.control(), Button.class).stream().filter(b -> b.getText().equals("Outage"))
                    .findFirst().orElseThrow().notifyListeners(SWT.Selection, new Event()));
            assertEquals("One port out of order for a school week", title(display, view));
            Grid grid = display.syncCall(() -> View.all(view, Grid.class).get(0));
            study.await(() -> grid.model().rows() > 2 && grid.model().header(4).equals("Ports left"));
            assertEquals(List.of("2027", "2028"), display.syncCall(() -> List.of(grid.model().text(0, 1), grid.model().text(1, 1))),
                    "a row for each year that charges");
        }
    }

    private static Composite show(OpenStudy study) {
        return study.display().syncCall(() -> {
            try {
                OpenStudy.page().showView("org.amberyard.workbench.results");
                return ((Grid) study.display().getFocusControl()).getParent();
            } catch (PartInitException e) {
                throw new AssertionError(e);
            }
        });
    }

    private static Button chooser(Composite view) {
        return View.all(view, Button.class).get(0);
    }

    private static String title(Display display, Composite view) {
        return display.syncCall(() -> chooser(view).getText().replace("  ▾", ""));
    }

    private static void press(Display display, Composite view) {
        display.asyncExec(() -> chooser(view).notifyListeners(SWT.Selection, new Event()));
    }

    private static Optional<Shell> list(Display display) {
        return display.syncCall(() -> Arrays.stream(display.getShells()).filter(s -> !View.all(s, Tree.class).isEmpty())
                .filter(s -> s.getParent() != null && View.all(s, Grid.class).isEmpty()).findFirst());
    }
}
