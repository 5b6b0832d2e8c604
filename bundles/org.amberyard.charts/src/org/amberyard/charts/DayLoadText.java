package org.amberyard.charts;

import java.text.DecimalFormat;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.tariff.BillLine;
import org.amberyard.core.tariff.PeakMoment;
import org.amberyard.core.units.MonthNames;
import org.amberyard.core.yard.YardYear;

/** The yard's day in words and figures. */
final class DayLoadText {
    private static final int DAY_MIN = 1440;
    private static final int MOST_NAMED = 3;
    private static final DecimalFormat PRICE = Figures.pattern("0.000");

    private final StudyResult result;
    private final YardDay asked;
    private final YardYear yard;
    private final DayLoad load;
    private final PriceBands prices;

    DayLoadText(StudyResult result, YardDay asked, DayLoad load, PriceBands prices) {
        this.result = result;
        this.asked = asked;
        this.yard = asked.yard(result);
        this.load = load;
        this.prices = prices;
    }

    /** The hour of the highest load and who charges then. */
    private String peak(int mostNamed) {
        int step = load.peakStep();
        List<String> names = load.chargingAt(step);
        String charge = names.isEmpty() ? "no bus charges then"
                : (names.size() == 1 ? "1 bus charges" : names.size() + " buses charge") + " then: " + listed(names, mostNamed);
        double heat = load.heatKw(step);
        return asked.heading(result) + ": " + (yard.input().metering().shared() ? "the shared meter" : "the meter of charging")
                + " peaks at " + Figures.whole(load.meterKw()[step]) + " kW at " + moment(step) + "; " + charge
                + (heat > 0.5 ? "; heat takes " + Figures.whole(heat) + " kW" : "");
    }

    /** Clock of a step, with the day where the stretch has several. */
    String moment(int step) {
        int minute = step * load.stepMin();
        String clock = ClockTickFormat.clock(minute);
        return asked.kind().days().size() == 1 ? clock
                : clock + " on the " + asked.kind().days().get(minute / DAY_MIN).label();
    }

    static String listed(List<String> names, int most) {
        return names.size() <= most + 1 ? String.join(", ", names)
                : String.join(", ", names.subList(0, most)) + " and " + (names.size() - most) + " more";
    }

    /** What sets the demand that is billed. */
    private String billed() {
        List<BillLine> demands = yard.bills().bills().get(asked.month()).lines().stream().filter(BillSteps::onDemand)
                .toList();
        return demands.isEmpty() ? "No demand is paid for in " + MonthNames.full(asked.month()) + "."
                : demands.stream().map(this::billed).distinct().collect(Collectors.joining(" "));
    }

    private String billed(BillLine line) {
        boolean here = line.peak().filter(this::isHere).isPresent();
        return here ? "This sets “" + line.label() + "” on the month's bill."
                : "“" + line.label() + "” on the month's bill is set by " + line.demand().orElseThrow().explanation() + ".";
    }

    private boolean isHere(PeakMoment peak) {
        int step = load.peakStep();
        int perDay = DAY_MIN / load.stepMin();
        return peak.month() == asked.month() && peak.day().label().endsWith(asked.label()) && peak.step() == step % perDay
                && Math.abs(peak.kw() - load.meterKw()[step]) < 0.1;
    }

    /** Two lines under the title. */
    String caption() {
        return peak(MOST_NAMED) + ".\n" + billed() + demandHours();
    }

    private String demandHours() {
        return prices.demandPerKw() > 0 && !prices.demandByHours()
                ? " One more kW costs " + Figures.money(result.input().currency(), prices.demandPerKw()) + " at any hour." : "";
    }

    String price(PriceBands.Band band) {
        return PRICE.format(band.perKwh()) + (prices.demandByHours() && band.demand() ? ", demand counts" : "");
    }

    /** What the chart shows, with every bus that charges at the peak. */
    String sentences() {
        String hours = prices.bands().stream().map(b -> ClockTickFormat.clock(b.fromMin()) + " " + PRICE.format(b.perKwh()))
                .collect(Collectors.joining(", "));
        return peak(Integer.MAX_VALUE - 1) + ". " + billed() + demandHours() + " Price of one more kWh in "
                + result.input().currency() + " from " + hours + ". Highest load behind the service, building included: "
                + Figures.whole(load.servicePeakKw()) + " kW of " + Figures.whole(limitKw()) + " kW that it carries.";
    }

    /** Load that the service carries, kW. */
    double limitKw() {
        return result.plans().get(asked.plan()).service().get(asked.year()).limitKva()
                * result.input().depot().service().powerFactor();
    }

    ChartData data() {
        List<String> columns = new ArrayList<>(List.of("Day", "Time", "Price (" + result.input().currency() + "/kWh)"));
        load.layers().forEach(l -> columns.add(l.label() + " (kW)"));
        List<List<Object>> rows = new ArrayList<>();
        for (int step = 0; step < load.steps(); step++) {
            int fromMin = step * load.stepMin();
            List<Object> row = new ArrayList<>(List.of(1 + fromMin / DAY_MIN, ClockTickFormat.clock(fromMin),
                    prices.bands().stream().filter(b -> b.fromMin() <= fromMin && fromMin < b.toMin()).findFirst().orElseThrow()
                            .perKwh()));
            int at = step;
            load.layers().forEach(l -> row.add(l.kw()[at]));
            rows.add(row);
        }
        return new ChartData(columns, rows);
    }
}
