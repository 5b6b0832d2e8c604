package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import org.amberyard.workbench.charts.ChartCanvas;
import org.amberyard.workbench.look.DarkTabs;
import org.amberyard.workbench.look.Palette;
import org.amberyard.workbench.look.Theme;
import org.amberyard.workbench.preferences.Preferences;
import org.eclipse.swt.SWT;
import org.eclipse.swt.custom.CTabFolder;
import org.eclipse.swt.graphics.Color;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Image;
import org.eclipse.swt.graphics.ImageData;
import org.eclipse.swt.graphics.RGB;
import org.eclipse.swt.widgets.Display;
import org.eclipse.swt.widgets.Scale;
import org.eclipse.swt.widgets.Shell;
import org.eclipse.swt.widgets.ToolBar;
import org.eclipse.swt.widgets.ToolItem;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

/** Makes the window dark and light again while it is open. */
@ExtendWith(WorkbenchExtension.class)
class ThemeTest {

    @TempDir
    private Path folder;

    @Test
    void theWindowAndItsChartsTurnDarkAndLightAgainAtOnce(Display display) throws IOException {
        try (OpenStudy study = OpenStudy.inFolder(display, folder)) {
            View bill = View.of(study, "electricBill");
            ChartCanvas canvas = display.syncCall(bill::canvas);
            Color light = display.syncCall(() -> ground(bill));
            assertEquals(Palette.PAPER.in(Theme.LIGHT), light);
            try {
                display.syncExec(ThemeTest::toggle);
                assertEquals(Theme.DARK, Theme.shown());
                assertEquals("dark", Preferences.THEME.get());
                assertEquals(Palette.PAPER.in(Theme.DARK), display.syncCall(() -> ground(bill)));
                study.await(() -> corner(canvas).equals(Palette.PAPER.in(Theme.DARK).getRGB()) && !canvas.isFaded());
            } finally {
                display.syncExec(ThemeTest::toggle);
            }
            assertEquals(light, display.syncCall(() -> ground(bill)));
            study.await(() -> corner(canvas).equals(Palette.PAPER.in(Theme.LIGHT).getRGB()));
        } finally {
            Preferences.THEME.set("light");
        }
    }

    /** In colours of the palette in a dark window, and as the platform draws them in a light one. */
    @Test
    void theSignsOfPartStacksAreSeenInTheDark(Display display) {
        CTabFolder folder = display.syncCall(() -> {
            Shell shell = new Shell(display);
            CTabFolder made = new CTabFolder(shell, SWT.TOP);
            made.setTabHeight(60);
            made.setMinimizeVisible(true);
            made.setMaximizeVisible(true);
            made.setRenderer(new DarkTabs(made));
            made.setSize(400, 200);
            made.layout();
            return made;
        });
        try {
            display.syncExec(ThemeTest::toggle);
            try {
                OpenStudy.await(display, () -> signs(folder).stream().allMatch(i -> has(i, Palette.INK.in(Theme.DARK).getRGB())));
                assertEquals(2, display.syncCall(() -> signs(folder).size()));
            } finally {
                display.syncExec(ThemeTest::toggle);
            }
            OpenStudy.await(display, () -> signs(folder).stream().noneMatch(i -> has(i, Palette.INK.in(Theme.DARK).getRGB())));
        } finally {
            display.syncExec(() -> folder.getShell().dispose());
            Preferences.THEME.set("light");
        }
    }

    private static List<Image> signs(CTabFolder folder) {
        return View.all(folder, ToolBar.class).stream().flatMap(b -> Arrays.stream(b.getItems())).map(ToolItem::getImage).filter(Objects::nonNull).toList();
    }

    private static boolean has(Image image, RGB colour) {
        ImageData data = image.getImageData();
        for (int x = 0; x < data.width; x++) {
            for (int y = 0; y < data.height; y++) {
                if (data.palette.getRGB(data.getPixel(x, y)).equals(colour)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Ground of a part of the view that is drawn by the platform. */
    private static Color ground(View view) {
        return View.all(view.control(), Scale.class).get(0).getParent().getBackground();
    }

    /** Colour near the corner of what the chart's canvas paints. */
    private static RGB corner(ChartCanvas canvas) {
        Image image = new Image(canvas.getDisplay(), canvas.getSize().x, canvas.getSize().y);
        GC gc = new GC(image);
        canvas.print(gc);
        gc.dispose();
        RGB rgb = image.getImageData().palette.getRGB(image.getImageData().getPixel(6, 6));
        image.dispose();
        return rgb;
    }

    private static void toggle() {
        Commands.run("darkTheme");
    }
}
