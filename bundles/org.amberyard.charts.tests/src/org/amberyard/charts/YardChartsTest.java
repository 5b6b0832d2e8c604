package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortMix;
import org.amberyard.core.charging.PortOption;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.yard.PortChoice;
import org.amberyard.core.yard.PortCurve;
import org.amberyard.core.yard.PortOffer;
import org.amberyard.core.yard.StretchKind;
import org.amberyard.core.yard.StretchLoad;
import org.amberyard.core.yard.YardYear;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.XYPlot;
import org.junit.jupiter.api.Test;

/** Charts of the yard of the sample district. */
class YardChartsTest {
    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
    private final YardDay first = YardDay.first(result).orElseThrow();
    private final YardYear yard = result.plans().get(1).yards().get(9);
    private final YardLoads loads = new YardLoads();
    private final ChartTheme theme = ChartTheme.light();

    private static double sum(Chart chart, int fromColumn) {
        return chart.data().rows().stream().flatMap(r -> r.stream().skip(fromColumn)).mapToDouble(c -> (double) c).sum();
    }

    @Test
    void theFirstDayIsThatOfTheHighestBillAndItsDemand() {
        assertEquals(1, first.plan());
        assertEquals(9, first.year());
        double highest = yard.bills().bills().stream().mapToDouble(b -> b.total()).max().orElseThrow();
        assertEquals(highest, yard.bills().bills().get(first.month()).total());
        Chart chart = DayLoadChart.of(result, first, loads, UnitSystem.US, theme);
        assertTrue(chart.textAlternative().contains("This sets “Demand” on the month's bill."), chart.textAlternative());
    }

    @Test
    void theDayLoadAddsUpToTheLoadBehindTheService() {
        Chart chart = DayLoadChart.of(result, first, loads, UnitSystem.US, theme);
        double peakKw = first.of(loads.of(yard.input()).get(first.month())).map(s -> IntStream.range(0, s.serviceKw().length)
                .mapToDouble(i -> s.serviceKw()[i]).sum()).orElseThrow();
        assertEquals(peakKw, sum(chart, 3), 1e-6);
    }

    @Test
    void linesOfTheBillAddUpToItsTotal() {
        Chart chart = BillWaterfallChart.of(result, 1, 9, 0, loads, UnitSystem.US, theme);
        List<List<Object>> rows = chart.data().rows();
        double lines = rows.stream().limit(rows.size() - 1L).mapToDouble(r -> (double) r.get(2)).sum();
        assertEquals((double) rows.get(rows.size() - 1).get(2), lines, 1e-9);
        assertEquals(yard.bills().bills().get(0).total(), lines, 1e-9);
        assertTrue(chart.textAlternative().contains(" of service, charged spread to departure: "), chart.textAlternative());
        assertTrue(chart.textAlternative().contains("; drawing then: "), chart.textAlternative());
    }

    @Test
    void thePolicyInUseCostsWhatTheBillsSay() {
        Chart chart = PolicyCostChart.of(result, 1, 9, UnitSystem.US, theme);
        List<Object> spread = chart.data().rows().get(yard.input().rule().policy().ordinal());
        assertEquals(yard.parts().total(), (double) spread.get(4), 1e-9);
        assertTrue(chart.textAlternative().contains("the policy in use, spread to departure, costs "), chart.textAlternative());
        assertEquals(5, PolicyCostChart.of(result, 1, 4, UnitSystem.US, theme).data().rows().size(),
                "years before the last too");
        assertTrue(chart.textAlternative().contains(" more than least cost: what foresight is worth."), chart.textAlternative());
    }

    @Test
    void everyBusStandsAtAPort() {
        Chart chart = PortOccupancyChart.of(result, first, loads, UnitSystem.US, theme);
        assertEquals(yard.input().buses().size(), chart.data().rows().stream().map(r -> r.get(1)).distinct().count());
        assertTrue(chart.textAlternative().startsWith("Plan “Electric in stages”, "), chart.textAlternative());
    }

    /** Buses that stand at the yard for hours on a cold day draw for their packs, whether they are charged or not. */
    @Test
    void heatIsShownAtThePlugThatGivesIt() {
        Chart chart = PortOccupancyChart.of(result, first, loads, UnitSystem.US, theme);
        StretchLoad stretch = first.of(loads.of(yard.input()).get(first.month())).orElseThrow();
        double heatKwh = stretch.heatKw().stream().flatMapToDouble(Arrays::stream).sum() * yard.input().stepMin() / 60;
        double shownKwh = chart.data().rows().stream().filter(r -> r.get(2).equals("heat or cooling"))
                .mapToDouble(r -> (double) r.get(5)).sum();
        assertTrue(heatKwh > 10, "a cold day: " + heatKwh);
        assertEquals(heatKwh, shownKwh, 1e-6 * heatKwh);
    }

    @Test
    void theServiceIsShownForEveryYear() {
        Chart chart = ServiceLoadChart.of(result, 1, UnitSystem.US, theme);
        assertEquals(10, chart.data().rows().size());
        assertEquals(result.plans().get(1).service().get(9).connectedKva(), chart.data().rows().get(9).get(1));
        assertTrue(chart.textAlternative().contains("listed load-management system"), chart.textAlternative());
    }

    @Test
    void theCheapestPortsAndThoseOfThePlanAreNamed() {
        Chart chart = PortCountChart.of(result, 1, Progress.NONE, UnitSystem.US, theme);
        List<PortCurve> curves = result.plans().get(1).yardComparison().ports(Progress.NONE);
        for (PortCurve curve : curves) {
            assertTrue(chart.textAlternative().contains("Charged " + curve.policy().label() + ", "
                    + curve.offer().words(curve.cheapest().orElseThrow().mix()) + " cost least, "), chart.textAlternative());
        }
        assertEquals(4, chart.data().rows().stream().filter(r -> r.get(8).equals("yes")).count(), "a cheapest for each policy");
        assertEquals(4, chart.data().rows().stream().filter(r -> r.get(9).equals("yes")).count(), "the ports of the plan");
        for (List<Object> row : chart.data().rows()) {
            assertEquals((double) row.get(6), (double) row.get(3) + (double) row.get(4) + (double) row.get(5), 1e-9);
        }
        XYPlot plot = chart.chart().getXYPlot();
        String tip = plot.getRenderer(0).getToolTipGenerator(0, 0).generateToolTip(plot.getDataset(0), 0, 0);
        assertTrue(tip.startsWith("at once, 1 × AC 19.2 kW: USD "), tip);
    }

    /** A mix of ports that serves under no policy is still shown where the plan buys it, with its fault. */
    @Test
    void portsThatLeaveABusShortAreNamedSo() {
        PortOffer offer = new PortOffer(List.of(new PortOption(yard.input().ports().get(0).port(), 1000)), 0);
        PortChoice bought = new PortChoice(PortMix.ofUnits(yard.input().ports(), offer.options()), 0, yard.parts(), false);
        PortCurve curve = new PortCurve(ChargePolicy.AT_ONCE, offer, List.of(), Optional.of(bought));
        PortCounts counts = new PortCounts(result, 1, List.of(curve));
        assertFalse(counts.any());
        assertTrue(counts.sentences().contains("Charged at once, no number of the ports on offer serves; those of the plan, 2 × AC "
                + "19.2 kW, cost "), counts.sentences());
        assertTrue(counts.sentences().endsWith("and leave a bus short on some day."), counts.sentences());
        assertEquals("no", counts.data().rows().get(0).get(7));
        assertTrue(counts.none().endsWith("has ready on every day, whatever the policy."), counts.none());
    }

    @Test
    void aPlanWithoutElectricBusesSaysSo() {
        String none = "Plan “Like-for-like diesel” has no electric bus in 2035.";
        YardDay day = new YardDay(0, 9, 0, StretchKind.SERVICE_DAY, false);
        assertEquals(none, DayLoadChart.of(result, day, loads, UnitSystem.US, theme).textAlternative());
        assertEquals(none, PortOccupancyChart.of(result, day, loads, UnitSystem.US, theme).textAlternative());
        assertEquals(none, BillWaterfallChart.of(result, 0, 9, 0, loads, UnitSystem.US, theme).textAlternative());
        assertEquals(none, PolicyCostChart.of(result, 0, 9, UnitSystem.US, theme).textAlternative());
        assertEquals("Plan “Like-for-like diesel” has no electric bus in any year.",
                PortCountChart.of(result, 0, Progress.NONE, UnitSystem.US, theme).textAlternative());
        assertEquals(Optional.empty(), YardDay.first(SampleDistrict.evaluated(SampleDistrict.baselineOnly())));
    }

    @Test
    void aMonthWithoutServiceHasNoDay() {
        int july = 6;
        assertEquals(List.of(), YardDay.in(result, 1, 9, july));
        YardDay day = new YardDay(1, 9, july, StretchKind.COLDEST_DAY, false);
        Chart chart = DayLoadChart.of(result, day, loads, UnitSystem.US, theme);
        assertEquals("July has no coldest day.", chart.textAlternative());
    }
}
