package org.amberyard.workbench.look;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import org.amberyard.charts.ChartTheme;
import org.eclipse.swt.graphics.Color;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Text can be read on every ground; ratios are those of WCAG 2.1, success criteria 1.4.3 and 1.4.11, from memory. */
class PaletteTest {
    private static final double TEXT = 4.5;
    private static final double MARK = 3;
    private static final Set<Palette> GROUNDS = EnumSet.of(Palette.PAPER, Palette.BAND, Palette.AMBER_WASH, Palette.ERROR_WASH,
            Palette.WARNING_WASH, Palette.ELECTRIC_1, Palette.ELECTRIC_2, Palette.ELECTRIC_3, Palette.ELECTRIC_4, Palette.ENGINE_1,
            Palette.ENGINE_2, Palette.ENGINE_3, Palette.ENGINE_4);

    @ParameterizedTest
    @EnumSource(Theme.class)
    void textStandsOutFromItsGround(Theme theme) {
        for (Palette ground : GROUNDS) {
            assertContrast(Palette.INK, ground, theme, TEXT);
        }
        for (Palette ground : EnumSet.of(Palette.PAPER, Palette.BAND, Palette.AMBER_WASH, Palette.ERROR_WASH, Palette.WARNING_WASH)) {
            assertContrast(Palette.MUTED, ground, theme, TEXT);
        }
        assertContrast(Palette.WARNING, Palette.PAPER, theme, TEXT);
        assertContrast(Palette.WARNING, Palette.WARNING_WASH, theme, TEXT);
        assertContrast(Palette.ERROR, Palette.PAPER, theme, TEXT);
        assertContrast(Palette.ERROR, Palette.ERROR_WASH, theme, TEXT);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void figuresThatAreNotUpToDateStepBackAndAreStillThere(Theme theme) {
        assertContrast(Palette.FADED, Palette.PAPER, theme, MARK);
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void chartsWriteOnTheirGroundSoThatItCanBeRead(Theme theme) {
        for (ChartTheme charts : List.of(theme.charts(), theme == Theme.DARK ? ChartTheme.strongDark() : ChartTheme.strongLight())) {
            assertContrast(charts.text(), charts.background());
            assertContrast(charts.quietText(), charts.background());
        }
    }

    private static void assertContrast(java.awt.Color text, java.awt.Color ground) {
        double ratio = ratio(luminance(swt(text)), luminance(swt(ground)));
        assertTrue(ratio >= TEXT, text + " on " + ground + ": " + ratio);
    }

    private static Color swt(java.awt.Color color) {
        return new Color(color.getRed(), color.getGreen(), color.getBlue());
    }

    @ParameterizedTest
    @EnumSource(Theme.class)
    void marksStandOutFromPaper(Theme theme) {
        for (Palette mark : EnumSet.of(Palette.AMBER, Palette.ERROR, Palette.WARNING, Palette.NOTICE)) {
            assertContrast(mark, Palette.PAPER, theme, MARK);
        }
    }

    private static void assertContrast(Palette text, Palette ground, Theme theme, double least) {
        double ratio = ratio(luminance(text.in(theme)), luminance(ground.in(theme)));
        assertTrue(ratio >= least, text + " on " + ground + ", " + theme + ": " + ratio);
    }

    private static double ratio(double one, double other) {
        return (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
