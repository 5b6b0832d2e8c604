package org.amberyard.core.charging;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.depot.Port;

/**
 * What a yard misses while one of its ports is out of order for some school days in a row. What is missing is added up as if
 * every bus still drove its runs; a bus that lacks more than its pack has to spare cannot.
 *
 * @param port type of the port that is down
 * @param days shortfalls of each day; what a bus lacks at a departure it has to make up at its next plug-in
 */
public record PortOutage(Port port, List<List<ChargeShortfall>> days) {

    public PortOutage {
        days = days.stream().map(List::copyOf).toList();
    }

    /** True when every bus is ready on every day. */
    public boolean harmless() {
        return days.stream().allMatch(List::isEmpty);
    }

    /** The largest shortfall of any departure, kWh; 0 when there is none. */
    public double worstKwh() {
        return days.stream().flatMap(List::stream).mapToDouble(ChargeShortfall::shortKwh).max().orElse(0);
    }

    /**
     * One port out of order, for each type of port of the yard in turn.
     *
     * @param stretch the school day that comes again and again
     * @param units ports
     * @param rule policy
     * @param days number of school days
     */
    public static List<PortOutage> of(YardStretch stretch, List<PortUnit> units, ChargeRule rule, int days) {
        List<PortOutage> outages = new ArrayList<>();
        for (PortUnit down : units.stream().distinct().toList()) {
            List<PortUnit> left = new ArrayList<>(units);
            left.remove(down);
            outages.add(new PortOutage(down.port(), new Run(stretch, left, rule).days(days)));
        }
        return outages;
    }

    /** Days with the ports that are left. */
    private static final class Run {
        private final YardStretch stretch;
        private final List<PortUnit> units;
        private final ChargeRule rule;
        private final SpareCharge spare;
        private final int[] before;
        private final double[] owedKwh;

        private Run(YardStretch stretch, List<PortUnit> units, ChargeRule rule) {
            this.stretch = stretch;
            this.units = units;
            this.rule = rule;
            this.spare = new SpareCharge(stretch.plugIns());
            this.before = staysBefore(stretch.plugIns());
            this.owedKwh = new double[before.length];
        }

        private List<List<ChargeShortfall>> days(int days) {
            List<List<ChargeShortfall>> found = new ArrayList<>();
            for (int day = 0; day < days; day++) {
                found.add(day());
            }
            return found;
        }

        /** A day; run again until what is missing at one plug-in has been handed to the bus's next on the same day. */
        private List<ChargeShortfall> day() {
            double[] morningKwh = owedKwh.clone();
            double[] shortKwh = null;
            ChargeSchedule schedule = null;
            for (int pass = 0; pass < before.length + 1; pass++) {
                schedule = YardCharging.of(owing(morningKwh, shortKwh), units, rule).schedule();
                double[] now = shortKwh(schedule);
                if (Arrays.equals(now, shortKwh)) {
                    break;
                }
                shortKwh = now;
            }
            for (int place = 0; place < before.length; place++) {
                owedKwh[place] = staysOver(place) ? shortKwh[before[place]] : 0;
            }
            return missing(schedule);
        }

        /** Buses that lack what they drive on; the others make up for what is missing at their next plug-in. */
        private List<ChargeShortfall> missing(ChargeSchedule schedule) {
            return schedule.shortfalls().stream().flatMap(s -> {
                double kwh = spare.missingKwh(place(s.plugIn()), s.shortKwh());
                return kwh > 0 ? Stream.of(new ChargeShortfall(s.plugIn(), kwh, s.moreMin())) : Stream.empty();
            }).toList();
        }

        private int place(PlugIn stay) {
            return IntStream.range(0, before.length).filter(p -> stretch.plugIns().get(p).bus() == stay.bus()
                    && stretch.plugIns().get(p).fromMin() == stay.fromMin()).findFirst().orElseThrow();
        }

        /** True when the stay before it is one of the day before. */
        private boolean staysOver(int place) {
            return stretch.plugIns().get(before[place]).fromMin() >= stretch.plugIns().get(place).fromMin();
        }

        private YardStretch owing(double[] morningKwh, double[] shortKwh) {
            List<PlugIn> plugIns = new ArrayList<>();
            for (int place = 0; place < before.length; place++) {
                double sameDay = shortKwh == null || staysOver(place) ? 0 : shortKwh[before[place]];
                PlugIn stay = stretch.plugIns().get(place);
                plugIns.add(stay.withKwh(stay.batteryKwh() + morningKwh[place] + sameDay));
            }
            return stretch.with(plugIns);
        }

        private double[] shortKwh(ChargeSchedule schedule) {
            double[] found = new double[before.length];
            for (int place = 0; place < found.length; place++) {
                PlugIn stay = stretch.plugIns().get(place);
                double kwh = (stay.endShare() - schedule.endShares()[place]) * stay.acceptance().curve().usableKwh();
                found[place] = kwh > ChargeSchedule.ROUNDING_KWH ? kwh : 0;
            }
            return found;
        }

        /** For each plug-in the one of the same bus before it; the last of the day before the first. */
        private static int[] staysBefore(List<PlugIn> plugIns) {
            int[] before = new int[plugIns.size()];
            List<Integer> places = PlugList.ordered(plugIns,
                    Comparator.comparingInt(PlugIn::bus).thenComparingDouble(PlugIn::fromMin));
            int first = 0;
            for (int order = 0; order < before.length; order++) {
                int bus = plugIns.get(places.get(order)).bus();
                boolean opens = order == 0 || plugIns.get(places.get(order - 1)).bus() != bus;
                boolean closes = order + 1 == before.length || plugIns.get(places.get(order + 1)).bus() != bus;
                first = opens ? order : first;
                before[places.get(order)] = opens ? -1 : places.get(order - 1);
                if (closes) {
                    before[places.get(first)] = places.get(order);
                }
            }
            return before;
        }
    }
}
