package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Rectangle2D;
import java.util.List;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.annotations.CategoryTextAnnotation;
import org.jfree.chart.entity.CategoryItemEntity;
import org.jfree.chart.plot.CategoryPlot;
import org.jfree.data.category.CategoryDataset;
import org.junit.jupiter.api.Test;

class RangeMarginChartTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());

    private static CategoryPlot plot(Chart chart) {
        return (CategoryPlot) chart.chart().getPlot();
    }

    @Test
    void barsAreTheMarginsOfTheFitsInTheUnitShown() {
        CategoryPlot metric = plot(RangeMarginChart.of(result, UnitSystem.METRIC, ChartTheme.light()));
        CategoryPlot us = plot(RangeMarginChart.of(result, UnitSystem.US, ChartTheme.light()));
        List<RouteAnswer> answers = RouteAnswer.of(result, 1);
        for (int route = 0; route < 3; route++) {
            RouteFit fit = answers.get(route).fit().orElseThrow();
            assertEquals(fit.newMidday().marginKm(), metric.getDataset().getValue(0, route).doubleValue(), 1e-9);
            assertEquals(fit.agedMidday().marginKm(), metric.getDataset().getValue(1, route).doubleValue(), 1e-9);
            assertEquals(fit.newMidday().marginKm() / 1.609344, us.getDataset().getValue(0, route).doubleValue(), 1e-9);
        }
    }

    @Test
    void failureIsSaidInWords() {
        CategoryPlot plot = plot(RangeMarginChart.of(result, UnitSystem.US, ChartTheme.light()));
        List<?> notes = plot.getAnnotations();
        assertTrue(((CategoryTextAnnotation) notes.get(2)).getText().trim().startsWith("fails: "));
        String tip = plot.getRenderer().getToolTipGenerator(0, 2).generateToolTip(plot.getDataset(), 0, 2);
        int days = result.outlooks().get(1).get(2).failingWhenAged().orElseThrow().total();
        String remedy = result.outlooks().get(1).get(2).cure().orElseThrow().words(result.input());
        assertTrue(tip.contains("Fails with an aged pack on " + days + " days a year; best remedy: " + remedy), tip);
    }

    @Test
    void aRouteLeftToAnEngineShowsTheBestFitAndSaysSo() {
        List<RouteAnswer> baseline = RouteAnswer.of(result, 0);
        assertTrue(baseline.stream().noneMatch(RouteAnswer::electric));
        assertEquals(result.fits().best(0, true), baseline.get(0).fit());
        Chart chart = RangeMarginChart.of(result, 0, UnitSystem.US, ChartTheme.light());
        assertTrue(chart.textAlternative().contains("R01 · E226 °"), chart.textAlternative());
        assertTrue(chart.data().rows().stream().allMatch(r -> "no".equals(r.get(2))));
    }

    @Test
    void theAssignedTypeIsThatAtTheEndOfTheStudy() {
        List<RouteAnswer> answers = RouteAnswer.of(result, 1);
        assertEquals(1, answers.get(0).assignedType().orElseThrow());
        assertEquals(2, answers.get(1).assignedType().orElseThrow());
        assertTrue(answers.get(2).assignedType().isEmpty());
    }

    @Test
    void aBarLeadsToItsRoute() {
        Chart chart = RangeMarginChart.of(result, 1, UnitSystem.US, ChartTheme.light());
        CategoryDataset dataset = plot(chart).getDataset();
        CategoryItemEntity bar = new CategoryItemEntity(new Rectangle2D.Double(), "", "", dataset, dataset.getRowKey(0),
                dataset.getColumnKey(2));
        assertEquals(new Subject(Subject.Kind.ROUTE, 2), chart.subjects().of(bar).orElseThrow());
    }
}
