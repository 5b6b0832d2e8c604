package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.awt.image.DataBufferInt;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.LegendItemCollection;
import org.jfree.chart.axis.ValueAxis;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.Range;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class ChartLensTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(SampleDistrict.small());

    private final Chart costs = CumulativeCostChart.of(RESULT, UnitSystem.US, ChartTheme.light());
    private final XYPlot lines = (XYPlot) costs.chart().getPlot();
    private final Chart annual = AnnualCostChart.of(RESULT, UnitSystem.US, ChartTheme.light());
    private final CategoryPlot bars = (CategoryPlot) annual.chart().getPlot();

    static List<Function<ChartTheme, Chart>> charts() {
        return ChartExportTest.charts();
    }

    private static int[] pixels(Chart chart) {
        BufferedImage image = ChartExport.image(chart, 700, 400, 1);
        return ((DataBufferInt) image.getRaster().getDataBuffer()).getData();
    }

    @ParameterizedTest
    @MethodSource("charts")
    void whatWasLookedAtOtherwiseIsWholeAgain(Function<ChartTheme, Chart> build) {
        int[] untouched = pixels(build.apply(ChartTheme.light()));
        Chart chart = build.apply(ChartTheme.light());
        ChartLens lens = new ChartLens(chart);
        assertArrayEquals(untouched, pixels(chart));

        Optional<ChartZoom> part = lens.part(0.25, 0.5, 0.5, 0.75);
        lens.look(new ChartLook(Set.copyOf(lens.series()), part, List.of(new ChartRemark("seen", lens.at(0.4, 0.6)))));
        assertFalse(Arrays.equals(untouched, pixels(chart)));
        lens.look(ChartLook.WHOLE);
        assertArrayEquals(untouched, pixels(chart));
    }

    @Test
    void aDraggedPartIsThatPartOfTheAxes() {
        Range years = lines.getDomainAxis().getRange();
        Range money = lines.getRangeAxis().getRange();
        ChartLens lens = new ChartLens(costs);
        lens.look(ChartLook.WHOLE.with(lens.part(0.25, 0.5, 0.5, 1)));

        assertRange(years.getLowerBound() + years.getLength() / 4, years.getLowerBound() + years.getLength() / 2, lines.getDomainAxis());
        assertRange(money.getCentralValue(), money.getUpperBound(), lines.getRangeAxis());
        assertEquals(" Zoomed in.", lens.words(ChartLook.WHOLE));
    }

    @ParameterizedTest
    @MethodSource("charts")
    void notesAreDrawnWhereTheyBelongInEveryPart(Function<ChartTheme, Chart> build) {
        Chart chart = build.apply(ChartTheme.light());
        ChartLens lens = new ChartLens(chart);
        ChartPoint place = lens.at(0.4, 0.55);
        Optional<ChartZoom> around = lens.part(0.3, 0.5, 0.45, 0.65);
        Optional<ChartZoom> beside = lens.part(0.6, 0.8, 0.45, 0.65);
        ChartLook noted = new ChartLook(Set.of(), Optional.empty(), List.of(new ChartRemark("dear winter", place)));

        assertTrue(changes(chart, lens, noted));
        assertTrue(changes(chart, lens, noted.with(around)));
        lens.look(noted.with(around));
        assertEquals(place.across(), lens.at(0.5, 0.5).across(), 1e-9 * Math.max(1, Math.abs(place.across())));
        assertEquals(place.upward(), lens.at(0.5, 0.5).upward(), 1e-9 * Math.max(1, Math.abs(place.upward())));
        assertFalse(changes(chart, lens, noted.with(beside)));
        assertEquals(" Note: dear winter", lens.words(ChartLook.WHOLE.with(List.of(new ChartRemark("dear winter", place)))).replace(" Zoomed in.", ""));
    }

    /** True when notes change the picture. */
    private static boolean changes(Chart chart, ChartLens lens, ChartLook noted) {
        lens.look(noted.with(List.of()));
        int[] without = pixels(chart);
        lens.look(noted);
        return !Arrays.equals(without, pixels(chart));
    }

    @Test
    void aNoteInOtherUnitsKeepsItsWordsAndLosesItsPlace() {
        ChartLens lens = new ChartLens(costs);
        ChartLook astray = ChartLook.WHOLE.with(List.of(new ChartRemark("seen", new ChartPoint("(EUR)", 1e9, 1e9))));
        assertTrue(changes(costs, lens, astray));
    }

    @Test
    void boxesOfNotesOnOnePlaceKeepClearOfEachOther() {
        ChartLens lens = new ChartLens(costs);
        List<ChartRemark> many = IntStream.range(0, 4).mapToObj(i -> new ChartRemark("note " + i, lens.at(0.5, 0.5))).toList();
        lens.look(ChartLook.WHOLE.with(many));
        int[] four = pixels(costs);
        lens.look(ChartLook.WHOLE.with(many.subList(0, 3)));
        int[] three = pixels(costs);
        List<Integer> more = IntStream.range(0, four.length).filter(i -> four[i] != three[i]).boxed().toList();
        lens.look(ChartLook.WHOLE.with(many.subList(0, 1)));
        int[] one = pixels(costs);
        lens.look(ChartLook.WHOLE);
        int[] none = pixels(costs);
        List<Integer> first = IntStream.range(0, four.length).filter(i -> one[i] != none[i]).boxed().toList();
        assertTrue(more.size() > 100 && Collections.disjoint(more, first.subList(0, first.size() / 2)));
    }

    @Test
    void aPartOfAPartCountsFromWhatIsShownAndGoesNoFurtherThanTheWhole() {
        Range years = lines.getDomainAxis().getRange();
        ChartLens lens = new ChartLens(costs);
        lens.look(ChartLook.WHOLE.with(lens.part(0.5, 1, 0, 1)));
        lens.look(ChartLook.WHOLE.with(lens.part(0.5, 1.5, 0, 1)));
        assertRange(years.getCentralValue(), years.getUpperBound(), lines.getDomainAxis());
        assertEquals(Optional.empty(), lens.part(-3, 4, -3, 4));
    }

    @Test
    void aPartStaysInTheFiguresOfTheAxesWhenTheChartIsMadeAnew() {
        ChartLens lens = new ChartLens(costs);
        ChartLook look = ChartLook.WHOLE.with(lens.part(0.2, 0.4, 0.1, 0.5));
        lens.look(look);
        Range years = lines.getDomainAxis().getRange();
        Chart again = CumulativeCostChart.of(RESULT, UnitSystem.US, ChartTheme.dark());
        new ChartLens(again).look(look);
        assertEquals(years, ((XYPlot) again.chart().getPlot()).getDomainAxis().getRange());

        Chart others = AnnualCostChart.of(RESULT, UnitSystem.US, ChartTheme.light());
        int[] whole = pixels(others);
        new ChartLens(others).look(look);
        assertArrayEquals(whole, pixels(others), "a part of other axes means nothing");
    }

    @Test
    void someOfTheBarsFillTheWidth() {
        ChartLens lens = new ChartLens(annual);
        lens.look(ChartLook.WHOLE.with(lens.part(0, 0.5, 0, 1)));
        int years = RESULT.input().years();
        java.awt.geom.Rectangle2D area = new java.awt.geom.Rectangle2D.Double(0, 0, 1000, 100);
        var axis = bars.getDomainAxis();
        var bottom = org.jfree.chart.ui.RectangleEdge.BOTTOM;
        double middle = axis.getCategoryMiddle(years / 2, years, area, bottom);
        double first = axis.getCategoryMiddle(0, years, area, bottom);
        assertTrue(first > 0 && first < 1000, "the first year is there");
        assertTrue(axis.getCategoryStart(years - 1, years, area, bottom) > 1000, "the last one is not");
        assertTrue(middle > 900 && middle < 1150, "the one in the middle is at the end: " + middle);
    }

    @Test
    void whatIsHiddenIsGreyInTheLegendAndTheAxisFitsTheRest() {
        ChartLens lens = new ChartLens(annual);
        assertEquals(List.of("Capital", "Funding", "Energy", "Upkeep and fees", "Residual"), lens.series());
        double before = bars.getRangeAxis().getUpperBound();
        ChartLook look = ChartLook.WHOLE.toggled("Capital");
        lens.look(look);

        assertTrue(bars.getRangeAxis().getUpperBound() < 0.8 * before, "the tallest bars are gone");
        LegendItemCollection legend = bars.getLegendItems();
        assertEquals(5, legend.getItemCount());
        assertTrue(contrast((Color) legend.get(0).getLabelPaint(), Color.WHITE) > 4.5, "readable");
        assertEquals(" Hidden: Capital.", lens.words(look));
        assertEquals(ChartLook.WHOLE, look.toggled("Capital"));
    }

    @Test
    void aLineTakesItsMarksAlong() {
        ChartLens lens = new ChartLens(costs);
        String name = lens.series().get(1);
        lens.look(ChartLook.WHOLE.toggled(name));
        for (int set = 0; set < lines.getDatasetCount(); set++) {
            for (int series = 0; series < lines.getDataset(set).getSeriesCount(); series++) {
                boolean hidden = lines.getDataset(set).getSeriesKey(series).toString().equals(name);
                assertEquals(!hidden, lines.getRenderer(set).isSeriesVisible(series));
            }
        }
    }

    private static void assertRange(double from, double to, ValueAxis axis) {
        assertEquals(from, axis.getLowerBound(), 1e-6 * Math.abs(from) + 1e-6);
        assertEquals(to, axis.getUpperBound(), 1e-6 * Math.abs(to) + 1e-6);
    }

    /** Contrast of WCAG 2.1, from memory. */
    private static double contrast(Color one, Color other) {
        double a = luminance(one);
        double b = luminance(other);
        return (Math.max(a, b) + 0.05) / (Math.min(a, b) + 0.05);
    }

    private static double luminance(Color color) {
        return 0.2126 * linear(color.getRed()) + 0.7152 * linear(color.getGreen()) + 0.0722 * linear(color.getBlue());
    }

    private static double linear(int value) {
        double share = value / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }
}
