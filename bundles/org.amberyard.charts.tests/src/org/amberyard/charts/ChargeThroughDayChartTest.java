package org.amberyard.charts;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.duty.BlockCheck.Moment;
import org.amberyard.core.duty.BlockCheck.Outcome;
import org.amberyard.core.plan.BusDay;
import org.amberyard.core.plan.DayKind;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.testsupport.SampleDistrict;
import org.jfree.chart.plot.XYPlot;
import org.jfree.data.xy.XYDataset;
import org.junit.jupiter.api.Test;

class ChargeThroughDayChartTest {
    private static final int PLAN = 1;
    private static final BusDay.Asked JANUARY = new BusDay.Asked(0, 8, 0, false, DayKind.COLDEST);

    private final StudyResult result = SampleDistrict.evaluated(SampleDistrict.small());
    private final BusDay day = BusDay.of(result, PLAN, JANUARY).orElseThrow();
    private final Chart chart = chart(JANUARY, UnitSystem.US);

    private Chart chart(BusDay.Asked asked, UnitSystem system) {
        return ChargeThroughDayChart.of(result, PLAN, asked, system, ChartTheme.light());
    }

    private XYPlot plot() {
        return (XYPlot) chart.chart().getPlot();
    }

    /** The same day with other moments. */
    private BusDay with(Moment... moments) {
        return new BusDay(day.asked(), day.route(), day.type(), day.health(), day.usableKwh(), day.block(), List.of(moments),
                day.outcome());
    }

    @Test
    void theLinePassesThroughEveryMomentAboveTheFloor() {
        XYDataset charge = plot().getDataset(0);
        XYDataset floor = plot().getDataset(1);
        List<Moment> moments = day.moments();
        for (int i = 0; i < moments.size() - 1; i++) {
            assertEquals(moments.get(i).minute(), charge.getXValue(0, i));
            assertEquals(100 * moments.get(i).chargeShare(), charge.getYValue(0, i), 1e-9);
            assertEquals(100 * moments.get(i).floorShare(), floor.getYValue(0, i), 1e-9);
        }
        int last = charge.getItemCount(0) - 1;
        assertEquals(moments.size() + 2, charge.getItemCount(0));
        assertEquals(390 + 1440, charge.getXValue(0, last));
        assertEquals(100 * moments.get(moments.size() - 1).chargeShare(), charge.getYValue(0, last), 1e-9);
    }

    @Test
    void theNightIsLevelUntilTheHoursOfCharging() {
        XYDataset charge = plot().getDataset(0);
        int arrival = day.moments().size() - 2;
        assertEquals(1260, charge.getXValue(0, arrival + 1));
        assertEquals(charge.getYValue(0, arrival), charge.getYValue(0, arrival + 1));
        assertEquals(330 + 1440, charge.getXValue(0, arrival + 2));
        assertEquals(charge.getYValue(0, arrival + 3), charge.getYValue(0, arrival + 2));
    }

    @Test
    void aWindowAfterMidnightIsThatOfTheNextMorning() {
        BusDay late = with(new Moment(390, 1, 0.2), new Moment(900, 0.5, 0.2), new Moment(1830, 1, 0.2));
        ChargePath path = ChargePath.of(late, new ChargeWindow(30, 330));
        assertEquals(List.of(new ChargePath.Charging(1470, 1770, 0.5)), path.charging());
    }

    @Test
    void aBusThatComesLateChargesFromThenAndAnEarlyOneUntilItLeaves() {
        BusDay late = with(new Moment(300, 1, 0.2), new Moment(1380, 0.5, 0.2), new Moment(1740, 0.9, 0.2));
        ChargePath path = ChargePath.of(late, new ChargeWindow(1260, 330));
        assertEquals(List.of(new ChargePath.Charging(1380, 1740, 0.4)), path.charging());
    }

    @Test
    void onlyTimesThatBringEnergyAreCharging() {
        BusDay noPort = with(new Moment(390, 1, 0.2), new Moment(450, 0.8, 0.2), new Moment(870, 0.8, 0.2),
                new Moment(930, 0.6, 0.2), new Moment(1830, 0.6, 0.2));
        assertEquals(List.of(), ChargePath.of(noPort, new ChargeWindow(1260, 330)).charging());
        assertEquals(2, ChargePath.of(day, new ChargeWindow(1260, 330)).charging().size());
    }

    @Test
    void theAnswerNamesBusTypeDayLowestChargeAndDistance() {
        Moment lowest = day.moments().get(1);
        for (Moment moment : day.moments()) {
            lowest = moment.chargeShare() < lowest.chargeShare() ? moment : lowest;
        }
        double km = (lowest.chargeShare() - lowest.floorShare()) * day.usableKwh() * day.block().km()
                / day.block().batteryKwh();
        String run = lowest == day.moments().get(1) ? "morning" : "afternoon";
        String start = "Bus B01, E150, coldest day of January 2034: lowest " + Math.round(100 * lowest.chargeShare())
                + " % at the end of " + run + ", ";
        assertTrue(chart.textAlternative().startsWith(start + Math.round(km / 1.609344) + " mi above the reserve"),
                chart.textAlternative());
        String metric = chart(JANUARY, UnitSystem.METRIC).textAlternative();
        assertTrue(metric.startsWith(start + Math.round(km) + " km above the reserve"), metric);
    }

    @Test
    void aDayThatEndsBelowTheReserveSaysSo() {
        Outcome fails = new Outcome(100, 120, -10, -0.1, -16.09344, "afternoon", 2, false);
        BusDay belowReserve = new BusDay(day.asked(), day.route(), day.type(), 1, day.usableKwh(), day.block(),
                List.of(new Moment(390, 1, 0.2), new Moment(450, 0.1, 0.2), new Moment(1830, 0.5, 0.2)), fails);
        String text = new ChargeDayText(result, belowReserve, UnitSystem.US).sentences();
        assertTrue(text.contains("lowest 10 % at the end of morning, ") && text.contains(" mi below the reserve"), text);
        assertTrue(text.endsWith("A week of such days fails on day 2, 10 mi below the reserve."), text);
    }

    @Test
    void runsAndChargingStandOnTheTimeAxis() {
        List<String> tips = ((List<?>) plot().getAnnotations()).stream().map(a -> ((DayStrip) a).getToolTipText())
                .collect(Collectors.toList());
        assertEquals(4, tips.size());
        assertTrue(tips.get(0).startsWith("morning, 6:30 to "), tips.toString());
        assertTrue(tips.get(1).startsWith("afternoon, 14:30 to "), tips.toString());
        assertTrue(tips.get(3).endsWith(" kWh, 21:00 to 5:30"), tips.toString());
    }

    @Test
    void dataTellTheClockAndWhatHappens() {
        List<List<Object>> rows = chart.data().rows();
        assertEquals(List.of("6:30", "departure of morning"), rows.get(0).subList(0, 2));
        assertEquals("end of afternoon", rows.get(3).get(1));
        assertEquals(List.of("6:30", "next departure"), rows.get(4).subList(0, 2));
        assertEquals((double) rows.get(1).get(2) / 100 * day.usableKwh(), (double) rows.get(1).get(4), 1e-9);
    }

    @Test
    void whereThereIsNoDayTheChartSaysWhy() {
        BusDay.Asked diesel = new BusDay.Asked(2, 8, 0, false, DayKind.COLDEST);
        assertEquals("B03 is not electric in 2034; its type is Diesel C.",
                chart(diesel, UnitSystem.US).textAlternative());
        BusDay.Asked july = new BusDay.Asked(0, 8, 6, false, DayKind.NORMAL);
        assertEquals("R01, the route of B01, is not driven on school days of July.",
                chart(july, UnitSystem.US).textAlternative());
        BusDay.Asked extended = new BusDay.Asked(0, 8, 0, true, DayKind.NORMAL);
        Chart none = chart(extended, UnitSystem.US);
        assertEquals("R01, the route of B01, is not driven on extended-year days of January.", none.textAlternative());
        assertEquals(List.of(), none.data().rows());
        StudyResult noRoutes = SampleDistrict.evaluated(SampleDistrict.withoutRoutes());
        assertEquals("B01 has no route.", ChargeThroughDayChart.of(noRoutes, PLAN, JANUARY, UnitSystem.US,
                ChartTheme.light()).textAlternative());
    }

    @Test
    void clocksStartAgainAfterADay() {
        assertEquals("6:05", ClockTickFormat.clock(365));
        assertEquals("0:00", ClockTickFormat.clock(1440));
        assertEquals("5:30", new ClockTickFormat().format(1770));
        assertEquals("23:30", ClockTickFormat.clock(-30));
    }

    @Test
    void theWholeChartLeadsToItsBus() {
        assertEquals(new Subject(Subject.Kind.BUS, 0), chart.subjects().of(null).orElseThrow());
    }
}
