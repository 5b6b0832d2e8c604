package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.entity.XYItemEntity;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

class RangeHeatMapTest {
    private static final int PLAN = 1;

    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.large());
    private final Chart chart = RangeHeatMap.of(result, PLAN, UnitSystem.US, ChartTheme.light());

    private RangeMonths months(UnitSystem system) {
        return new RangeMonths(result, PLAN, system);
    }

    private static RangeMonths.Cell cell(MonthStanding standing, double whenNew, double whenAged, int days) {
        return new RangeMonths.Cell(0, standing, whenNew, whenAged, days);
    }

    @Test
    void everyCellTellsTheMarginOfItsRouteAndMonthInTheUnitShown() {
        List<RouteAnswer> answers = RouteAnswer.of(result, PLAN);
        for (int route = 0; route < answers.size(); route++) {
            for (RouteFit.Month month : answers.get(route).fit().orElseThrow().months()) {
                RangeMonths.Cell metric = months(UnitSystem.METRIC).rows().get(route).cells().get(month.month());
                RangeMonths.Cell us = months(UnitSystem.US).rows().get(route).cells().get(month.month());
                assertEquals(month.whenNew().marginKm(), metric.whenNew(), 1e-9);
                assertEquals(month.whenAged().marginKm(), metric.whenAged(), 1e-9);
                assertEquals(month.whenAged().marginKm() / 1.609344, us.whenAged(), 1e-9);
                assertEquals(month.whenNew().passes() ? month.whenAged().passes() ? MonthStanding.FOR_LIFE
                        : MonthStanding.NEW_ONLY : MonthStanding.FAILS, us.standing());
            }
        }
    }

    @Test
    void cellsSpeakInWords() {
        RangeMonths us = months(UnitSystem.US);
        assertEquals(List.of("+23 mi"), us.lines(cell(MonthStanding.FOR_LIFE, 40, 23.4, 5)));
        assertEquals(List.of("−4 mi", "aged"), us.lines(cell(MonthStanding.NEW_ONLY, 9, -4, 1)));
        assertEquals(List.of("−12 mi", "fails"), us.lines(cell(MonthStanding.FAILS, -12, -20, 1)));
        assertEquals(List.of("−0.3 mi", "fails"), us.lines(cell(MonthStanding.FAILS, -0.3, -20, 1)));
        assertEquals(List.of("+23 km"), months(UnitSystem.METRIC).lines(cell(MonthStanding.FOR_LIFE, 40, 23.4, 5)));
        assertEquals("January, 4 mi short with an aged pack on day 3 of such days in a row",
                us.inMonth(cell(MonthStanding.NEW_ONLY, 9, -4, 3)));
        assertEquals("January, 4 mi short with an aged pack", us.inMonth(cell(MonthStanding.NEW_ONLY, 9, -4, 1)));
    }

    @Test
    void aMonthWithoutServiceSaysSo() {
        RangeMonths.Cell july = months(UnitSystem.US).rows().get(0).cells().get(6);
        assertEquals(MonthStanding.NOT_DRIVEN, july.standing());
        assertEquals(List.of("not", "driven"), months(UnitSystem.US).lines(july));
    }

    @Test
    void wordsNameTheWorstRouteAndMonth() {
        RangeMonths.Row worst = null;
        RangeMonths.Cell least = cell(MonthStanding.FOR_LIFE, 1e9, 1e9, 5);
        for (RangeMonths.Row row : months(UnitSystem.US).rows()) {
            for (RangeMonths.Cell cell : row.cells()) {
                if (cell.standing().judged() && RangeMonths.Cell.WORST_FIRST.compare(cell, least) < 0) {
                    worst = row;
                    least = cell;
                }
            }
        }
        String route = result.input().duty().routes().get(worst.answer().route()).name();
        assertTrue(chart.textAlternative().contains("Worst is " + route + " in " + MonthNames.full(least.month()) + ", "),
                chart.textAlternative());
    }

    @Test
    void whatFailsIsWorseThanWhatIsShortWhenAged() {
        List<RangeMonths.Cell> cells = new ArrayList<>(List.of(cell(MonthStanding.FOR_LIFE, 1, 0, 5),
                cell(MonthStanding.NEW_ONLY, 1, -99, 1), cell(MonthStanding.FAILS, -1, -2, 1),
                cell(MonthStanding.FAILS, -3, -9, 1)));
        cells.sort(RangeMonths.Cell.WORST_FIRST);
        assertEquals(List.of(-3.0, -1.0, -99.0, 0.0), cells.stream().map(RangeMonths.Cell::margin).toList());
    }

    @Test
    void dataHaveALineForEveryRouteAndMonth() {
        assertEquals(18 * 12, chart.data().rows().size());
        assertEquals("Margin with an aged pack (mi)", chart.data().columns().get(5));
        assertEquals("not driven", chart.data().rows().get(6).get(6));
    }

    @Test
    void aCellLeadsToItsRouteAndTipsTellIt() {
        XYPlot plot = (XYPlot) chart.chart().getPlot();
        int march = 2 * 12 + 2;
        XYItemEntity cell = new XYItemEntity(new Rectangle2D.Double(), plot.getDataset(), 0, march, "", "");
        assertEquals(new Subject(Subject.Kind.ROUTE, 2), chart.subjects().of(cell).orElseThrow());
        String tip = plot.getRenderer().getToolTipGenerator(0, march).generateToolTip(plot.getDataset(), 0, march);
        assertTrue(tip.startsWith("R03 · ") && tip.contains(": March, "), tip);
    }

    @Test
    void aStudyWithoutRoutesGivesAChart() {
        StudyResult empty = SampleDistrict.evaluated(SampleDistrict.withoutRoutes());
        Chart none = RangeHeatMap.of(empty, UnitSystem.US, ChartTheme.light());
        assertTrue(none.textAlternative().contains("Of 0 routes"), none.textAlternative());
        assertEquals(900, ChartExport.image(none, 900, none.preferredHeight(), 1).getWidth());
    }
}
