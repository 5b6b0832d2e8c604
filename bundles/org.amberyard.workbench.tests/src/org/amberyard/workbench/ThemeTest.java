package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Optional;
import org.amberyard.workbench.look.Theme;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.ui.PlatformUI;
import org.eclipse.ui.handlers.IHandlerService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

/** Chooses a dark window and a light one again. */
@ExtendWith(WorkbenchExtension.class)
class ThemeTest {

    @Test
    void theThemeOfTheNextStartIsChosen(Display display) {
        display.asyncExec(ThemeTest::choose);
        OpenStudy.await(display, () -> dialog(display).isPresent());
        display.syncExec(() -> dialog(display).orElseThrow().close());
        assertEquals(Theme.DARK, display.syncCall(Theme::chosen));
        assertEquals(Theme.LIGHT, display.syncCall(Theme::shown), "this run stays as it is");

        display.syncExec(ThemeTest::choose);
        assertEquals(Theme.LIGHT, display.syncCall(Theme::chosen));
    }

    private static void choose() {
        try {
            PlatformUI.getWorkbench().getService(IHandlerService.class).executeCommand("org.amberyard.workbench.darkTheme", null);
        } catch (CommandException e) {
            throw new AssertionError(e);
        }
    }

    private static Optional<Shell> dialog(Display display) {
        return Arrays.stream(display.getShells()).filter(s -> s.getText().equals("Dark window")).findFirst();
    }
}
