package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.YearActuals;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.language.Catalogue;
import org.amberyard.workbench.roll.RollDialog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Label;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.TabFolder;
import org.eclipse.swt.widgets.Table;
import org.eclipse.swt.widgets.TableItem;
import org.eclipse.swt.widgets.Text;
import org.eclipse.swt.widgets.Tree;
import org.eclipse.swt.widgets.TreeItem;
import org.eclipse.ui.IEditorPart;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Rolls the example to 2028 in the dialog. */
@ExtendWith(WorkbenchExtension.class)
class RollYearTest {

    @TempDir
    private Path folder;

    private static Optional<Shell> dialog(Display display) {
        return display.syncCall(() -> Arrays.stream(display.getShells()).filter(s -> s.getData() instanceof RollDialog).findFirst());
    }

    private static Button ok(Shell shell) {
        return PlanGridTest.all(shell, Button.class)
                .filter(b -> Integer.valueOf(IDialogConstants.OK_ID).equals(b.getData())).findFirst().orElseThrow();
    }

    private static void pick(Shell shell, String text) {
        Combo combo = PlanGridTest.all(shell, Combo.class).filter(c -> List.of(c.getItems()).contains(text)).findFirst().orElseThrow();
        combo.setText(text);
        combo.notifyListeners(SWT.Selection, new Event());
    }

    private static void check(Shell shell, String line) {
        Table table = PlanGridTest.all(shell, Table.class).filter(t -> rows(t).stream().anyMatch(r -> r.startsWith(line))).findFirst()
                .orElseThrow();
        TableItem item = Arrays.stream(table.getItems()).filter(i -> i.getText().startsWith(line)).findFirst().orElseThrow();
        item.setChecked(true);
        Event event = new Event();
        event.detail = SWT.CHECK;
        event.item = item;
        table.notifyListeners(SWT.Selection, event);
    }

    private static List<String> rows(Table table) {
        return Arrays.stream(table.getItems()).map(i -> {
            StringBuilder row = new StringBuilder(i.getText());
            for (int column = 1; column < table.getColumnCount(); column++) {
                row.append(" | ").append(i.getText(column));
            }
            return row.toString();
        }).toList();
    }

    private static List<String> rows(Tree tree) {
        return changes(tree).map(i -> {
            StringBuilder row = new StringBuilder(i.getText());
            for (int column = 1; column < tree.getColumnCount(); column++) {
                row.append(" | ").append(i.getText(column));
            }
            return row.toString();
        }).toList();
    }

    private static Stream<TreeItem> changes(Tree tree) {
        return Arrays.stream(tree.getItems()).flatMap(kind -> Arrays.stream(kind.getItems()));
    }

    private static boolean says(Display display, Predicate<String> row) {
        return display.syncCall(() -> dialog(display).stream().flatMap(s -> Stream.concat(
                PlanGridTest.all(s, Table.class).flatMap(t -> rows(t).stream()), PlanGridTest.all(s, Tree.class).flatMap(t -> rows(t).stream())))
                .anyMatch(row));
    }

    private static boolean ready(Display display) {
        return display.syncCall(() -> dialog(display).filter(s -> ok(s).isEnabled()).isPresent());
    }

    private static void run(Display display) {
        display.asyncExec(() -> Commands.run("rollYear"));
    }

    @Test
    void theNewStudyIsOpenedBesideTheOldOne(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            display.syncExec(() -> study.study().getActuals().add(actuals()));
            run(display);
            study.await(() -> ready(display));
            display.syncExec(() -> {
                Shell shell = dialog(display).orElseThrow();
                pick(shell, "Electric in stages");
                pick(shell, "2028");
                assertFalse(ok(shell).isEnabled(), "what was found for other choices is not theirs");
                check(shell, "Replacement 2027 B03");
                assertEquals(1, Arrays.stream(Job.getJobManager().find(null)).filter(j -> j.getName().equals("Roll to next year")).count(),
                        "one at a time, however often something is chosen");
            });
            study.await(() -> ready(display));
            display.syncExec(() -> check(dialog(display).orElseThrow(), "Upkeep of 2027"));
            study.await(() -> ready(display));
            assertTrue(says(display, "Settings | Base year | 2026 | 2028 | the years before it are over"::equals));
            assertTrue(says(display, "Replacement 2027 B03 of plan Electric in stages | Year | 2027 | 2028 | not carried out in time"::equals));
            assertTrue(says(display, r -> r.contains("Upkeep factor of earlier years") && r.endsWith("by the actuals of 2027")));
            assertTrue(says(display, r -> r.startsWith("Upkeep (USD) | 2027 | ")), "the year beside the plan");
            kindsHaveTheirNumbers(display);
            everythingIsSaidInSpanish(display);
            display.syncExec(() -> ok(dialog(display).orElseThrow()).notifyListeners(SWT.Selection, new Event()));
            study.await(() -> dialog(display).isEmpty());
            IEditorPart opened = display.syncCall(() -> OpenStudy.page().getActiveEditor());
            Study next = ((StudyEditor) opened).session().study();
            assertEquals(2028, next.getSettings().getBaseYear());
            assertEquals(study.study().getName() + " 2028", next.getName());
            Path place = Files.writeString(folder.resolve("a file"), "no folder").resolve("rolled.amberyard");
            assertThrows(StudyFileException.class, () -> ((StudyEditor) opened).session().saveAs(place));
            assertEquals("B01-2", next.getBuses().get(0).getName());
            assertEquals("B03", next.getBuses().get(2).getName());
            assertEquals(2026, study.study().getSettings().getBaseYear());
            assertTrue(((StudyEditor) opened).session().file().isEmpty() && opened.isDirty(), "it is yet to be saved, and closing it asks");
            display.syncExec(() -> OpenStudy.page().closeEditor(opened, false));
        }
    }

    private static void kindsHaveTheirNumbers(Display display) {
        display.syncExec(() -> PlanGridTest.all(dialog(display).orElseThrow(), Tree.class).flatMap(t -> Arrays.stream(t.getItems()))
                .forEach(kind -> {
                    assertTrue(kind.getText().endsWith(" (" + kind.getItemCount() + ")"), kind.getText());
                    assertTrue(kind.getExpanded(), kind.getText());
                }));
    }

    @Test
    void noTabIsEmptyWithoutAWord(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            run(display);
            study.await(() -> ready(display));
            display.syncExec(() -> {
                Shell shell = dialog(display).orElseThrow();
                TabFolder tabs = PlanGridTest.all(shell, TabFolder.class).findFirst().orElseThrow();
                assertTrue(tabs.getItem(2).getControl() instanceof Label said && said.getText().startsWith("No actuals are entered"));
                shell.close();
            });
            study.await(() -> dialog(display).isEmpty());
        }
    }

    private static YearActuals actuals() {
        YearActuals actuals = StudyFactory.eINSTANCE.createYearActuals();
        actuals.setYear(2027);
        actuals.setUpkeepCost(90_000.0);
        return actuals;
    }

    /** Whys and remarks are of the layers below. */
    private static void everythingIsSaidInSpanish(Display display) {
        Catalogue spanish = new Catalogue(new Locale("es"), Locale.US);
        display.syncExec(() -> {
            Shell shell = dialog(display).orElseThrow();
            List<String> unknown = new ArrayList<>();
            PlanGridTest.all(shell, Tree.class).flatMap(RollYearTest::changes)
                    .map(i -> i.getText(4)).distinct().filter(w -> spanish.found(w).isEmpty()).forEach(unknown::add);
            PlanGridTest.all(shell, Text.class).flatMap(t -> t.getText().lines()).map(l -> l.replaceFirst("^• ", ""))
                    .filter(l -> !l.isBlank() && spanish.found(l).isEmpty()).forEach(unknown::add);
            assertEquals(List.of(), unknown);
        });
    }
}
