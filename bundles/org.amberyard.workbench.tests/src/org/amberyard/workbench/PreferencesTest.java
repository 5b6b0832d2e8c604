package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.amberyard.model.common.Month;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.preferences.NewStudySettings;
import org.amberyard.workbench.preferences.Preferences;
import org.amberyard.workbench.session.SessionTools;
import org.eclipse.core.runtime.preferences.InstanceScope;
import org.eclipse.jface.dialogs.IDialogConstants;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.widgets.Button;
import org.eclipse.swt.widgets.Combo;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Event;
import org.eclipse.swt.widgets.Link;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.Text;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Sets preferences in their dialog. */
@ExtendWith(WorkbenchExtension.class)
class PreferencesTest {
    private static final List<Preferences> IN_DIALOG = List.of(Preferences.LANGUAGE, Preferences.THEME, Preferences.COLOURS,
            Preferences.NUMBERS, Preferences.KEPT_AFTER_S, Preferences.UNITS, Preferences.FISCAL_YEAR_START);

    @TempDir
    private Path folder;

    private final Locale before = Locale.getDefault(Locale.Category.FORMAT);

    @AfterEach
    void forget() throws Exception {
        InstanceScope.INSTANCE.getNode(Preferences.NODE).clear();
        Locale.setDefault(Locale.Category.FORMAT, before);
    }

    @Test
    void whatIsSetInTheDialogIsKeptAndHolds(Display display) {
        Shell dialog = open(display);
        display.syncExec(() -> {
            choose(dialog, Preferences.LANGUAGE, "es");
            choose(dialog, Preferences.NUMBERS, "comma");
            choose(dialog, Preferences.KEPT_AFTER_S, "30");
            choose(dialog, Preferences.UNITS, "METRIC");
            choose(dialog, Preferences.FISCAL_YEAR_START, "7");
            View.all(dialog, Text.class).get(0).setText("CAD");
            press(dialog, IDialogConstants.OK_ID);
        });
        OpenStudy.await(display, () -> titled(display, "Language").isPresent());
        display.syncExec(() -> titled(display, "Language").orElseThrow().close());
        assertEquals("es", InstanceScope.INSTANCE.getNode("org.amberyard.workbench").get("language", null));
        assertEquals("1.234,5", String.format(Locale.getDefault(Locale.Category.FORMAT), "%,.1f", 1234.5));
        assertEquals(30_000, SessionTools.fresh().keptAfterMs());
        assertEquals(UnitChoice.METRIC, NewStudySettings.units());
        Settings settings = StudyFactory.eINSTANCE.createSettings();
        NewStudySettings.apply(settings);
        assertEquals("CAD", settings.getCurrency());
        assertEquals(Month.JULY, settings.getFiscalYearStart());
    }

    @Test
    void whatIsCancelledStaysAsItWas(Display display) {
        Shell dialog = open(display);
        display.syncExec(() -> {
            choose(dialog, Preferences.UNITS, "METRIC");
            press(dialog, IDialogConstants.CANCEL_ID);
        });
        assertEquals("US", Preferences.UNITS.get());
    }

    @Test
    void aBlankCurrencyCannotBeSet(Display display) {
        Shell dialog = open(display);
        display.syncExec(() -> {
            View.all(dialog, Text.class).get(0).setText(" ");
            assertFalse(button(dialog, IDialogConstants.OK_ID).isEnabled());
            press(dialog, IDialogConstants.CANCEL_ID);
        });
        assertThrows(IllegalArgumentException.class, () -> Preferences.CURRENCY.set(" "));
    }

    @Test
    void whatIsNotAllowedCountsAsNotSet() {
        InstanceScope.INSTANCE.getNode(Preferences.NODE).put("keptAfterSeconds", "soon");
        assertEquals(10, Preferences.KEPT_AFTER_S.number());
        String message = assertThrows(IllegalArgumentException.class, () -> Preferences.UNITS.set("yards")).getMessage();
        assertEquals("units cannot be “yards”; allowed are [US, METRIC]", message);
    }

    @Test
    void aLinkLeadsToTheSettingsOfTheStudy(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Shell dialog = open(display);
            display.syncExec(() -> View.all(dialog, Link.class).get(0).notifyListeners(SWT.Selection, new Event()));
            assertTrue(display.syncCall(dialog::isDisposed));
            assertEquals(PageKind.STUDY.title(), display.syncCall(() -> View.all(OpenStudy.page().getWorkbenchWindow().getShell(),
                    CTabFolder.class).stream().filter(f -> "StudyPages".equals(f.getData("org.eclipse.e4.ui.css.id"))).findFirst()
                    .orElseThrow().getSelection().getText().trim()));
        }
    }

    private static Shell open(Display display) {
        display.asyncExec(() -> Commands.run("preferences"));
        OpenStudy.await(display, () -> dialog(display).isPresent());
        return display.syncCall(() -> dialog(display).orElseThrow());
    }

    private static Optional<Shell> dialog(Display display) {
        return titled(display, "Preferences");
    }

    private static Optional<Shell> titled(Display display, String title) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals(title)).findFirst();
    }

    private static void choose(Shell dialog, Preferences preference, String choice) {
        View.all(dialog, Combo.class).get(IN_DIALOG.indexOf(preference)).select(preference.choices().indexOf(choice));
    }

    private static Button button(Shell dialog, int id) {
        return View.all(dialog, Button.class).stream().filter(b -> Integer.valueOf(id).equals(b.getData())).findFirst().orElseThrow();
    }

    private static void press(Shell dialog, int id) {
        button(dialog, id).notifyListeners(SWT.Selection, new Event());
    }
}
