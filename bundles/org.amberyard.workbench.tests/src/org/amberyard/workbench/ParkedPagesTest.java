package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.grid.Grid;
import org.amberyard.workbench.look.Theme;
import org.amberyard.workbench.preferences.Preferences;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Pages of the editor that are not on show wait elsewhere; what befalls the window meanwhile befalls them too. */
@ExtendWith(WorkbenchExtension.class)
class ParkedPagesTest {
    @TempDir
    private Path folder;

    private static Grid routes(OpenStudy study) {
        return study.goTo(study.study().getRoutes().get(0), RoutesPackage.Literals.ROUTE__NAME);
    }

    private static Grid buses(OpenStudy study) {
        return study.goTo(study.study().getBuses().get(0), FleetPackage.Literals.BUS__NAME);
    }

    /** Grounds of what the platform draws around a table. */
    private static List<Color> grounds(Grid grid) {
        Stream<Control> bars = View.all(grid.getParent(), ToolBar.class).stream().map(Control.class::cast);
        return Stream.concat(Stream.of((Control) grid.getParent()), bars).map(Control::getBackground).distinct().toList();
    }

    @Test
    void aPageThatWaitedIsAsDarkAsTheWindow(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Grid routes = routes(study);
            List<Color> light = display.syncCall(() -> grounds(routes));
            Grid buses = buses(study);
            assertFalse(display.syncCall(routes::isVisible));
            try {
                display.syncExec(() -> Commands.run("darkTheme"));
                assertEquals(Theme.DARK, Theme.shown());
                List<Color> dark = display.syncCall(() -> grounds(buses));
                routes(study);
                assertTrue(display.syncCall(routes::isVisible));
                assertEquals(dark, display.syncCall(() -> grounds(routes)));
            } finally {
                display.syncExec(() -> Commands.run("darkTheme"));
            }
            buses(study);
            routes(study);
            assertEquals(light, display.syncCall(() -> grounds(routes)));
        } finally {
            Preferences.THEME.set("light");
        }
    }

    @Test
    void aPageThatWaitedFillsTheWindowThatWasMovedAndMadeSmaller(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Shell window = display.syncCall(() -> OpenStudy.page().getWorkbenchWindow().getShell());
            Point size = display.syncCall(window::getSize);
            Grid routes = routes(study);
            int wide = display.syncCall(() -> routes.getSize().x);
            Grid buses = buses(study);
            try {
                display.syncExec(() -> window.setBounds(40, 30, size.x - 200, size.y - 100));
                study.await(() -> window.getSize().x == size.x - 200);
                routes(study);
                study.await(() -> routes.getSize().x > 0 && routes.getSize().x < wide);
                assertSame(window, display.syncCall(routes::getShell));
                assertFalse(display.syncCall(buses::isVisible));
            } finally {
                display.syncExec(() -> window.setBounds(0, 0, size.x, size.y));
                study.await(() -> window.getSize().equals(size));
            }
        }
    }

    @Test
    void theWindowInWhichPagesWaitIsNeverSeenAndGoesWithItsEditor(Display display) throws IOException {
        List<Shell> before = shells(display);
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            Arrays.stream(PageKind.values()).forEach(study::show);
            study.awaitResult();
            List<Shell> behind = shells(display).stream().filter(s -> !before.contains(s)).toList();
            assertEquals(1, behind.size());
            assertFalse(display.syncCall(behind.get(0)::isVisible));
            assertTrue(display.syncCall(() -> View.all(behind.get(0), Grid.class).size()) > PageKind.values().length);
        }
        assertEquals(before, shells(display));
    }

    private static List<Shell> shells(Display display) {
        return display.syncCall(() -> List.of(display.getShells()));
    }
}
