package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayCharging;

/**
 * Charging demand of a plan in one year on each month's coldest or hottest operated day, whichever is higher. What is charged
 * at night, heat of the night included, is spread evenly over the charge window; what is charged between runs, over the time that each bus stands. Heat
 * before departure counts as if all buses left together. Buses without a route are left out: a spare drives when a route bus
 * does not.
 *
 * @param nightPeaksKw demand in the night of each month from January to December, kW
 * @param middayPeaksKw highest demand between runs of each month, kW
 * @param preheatPeaksKw demand for heat before departure of each month, kW
 * @param batteryKwhOfNight energy into the batteries in the year's heaviest night, kWh
 */
public record DemandYear(List<Double> nightPeaksKw, List<Double> middayPeaksKw, List<Double> preheatPeaksKw,
        double batteryKwhOfNight) {

    public DemandYear {
        nightPeaksKw = List.copyOf(nightPeaksKw);
        middayPeaksKw = List.copyOf(middayPeaksKw);
        preheatPeaksKw = List.copyOf(preheatPeaksKw);
    }

    /** Demand of one year of a fleet. */
    static DemandYear of(StudyInput study, ChargingDays charging, FleetHistory fleet, PortFleet ports, int year) {
        List<OnRoute> electric = onRoutes(study, fleet, ports, year);
        List<Double> nights = new ArrayList<>();
        List<Double> middays = new ArrayList<>();
        List<Double> preheats = new ArrayList<>();
        double heaviestKwh = 0;
        for (int month = 0; month < Climate.MONTHS; month++) {
            YardDay cold = yardDay(charging, electric, month, true);
            YardDay hot = yardDay(charging, electric, month, false);
            double nightKwh = Math.max(cold.nightKwh() + cold.nightHeatKwh(), hot.nightKwh() + hot.nightHeatKwh());
            heaviestKwh = Math.max(heaviestKwh, Math.max(cold.nightKwh(), hot.nightKwh()));
            nights.add(study.depot().window().spreadKw(nightKwh / ports.efficiency(year)));
            middays.add(Math.max(cold.middayKw(), hot.middayKw()) / ports.efficiency(year));
            preheats.add(Math.max(cold.preheatKw(), hot.preheatKw()) / ports.efficiency(year));
        }
        return new DemandYear(nights, middays, preheats, heaviestKwh);
    }

    /** An electric bus on a route, and the power into its battery. */
    private record OnRoute(int route, int type, double batteryKw) {
    }

    private static List<OnRoute> onRoutes(StudyInput study, FleetHistory fleet, PortFleet ports, int year) {
        List<OnRoute> electric = new ArrayList<>();
        for (VehicleYear record : fleet.inYear(year)) {
            VehicleTypeInput type = study.types().get(record.vehicle().type());
            OptionalInt route = study.buses().get(record.place()).route();
            if (type.electric().isPresent() && route.isPresent()) {
                electric.add(new OnRoute(route.getAsInt(), record.vehicle().type(), ports.batteryKw(type, year)));
            }
        }
        return electric;
    }

    private static YardDay yardDay(ChargingDays charging, List<OnRoute> electric, int month, boolean cold) {
        YardDay yard = new YardDay();
        electric.forEach(bus -> yard.add(charging.of(bus.route(), bus.type(), bus.batteryKw(), month, cold)));
        return yard;
    }

    /** Highest demand of a month, kW. */
    public double peakKw(int month) {
        return Math.max(preheatPeaksKw.get(month), Math.max(nightPeaksKw.get(month), middayPeaksKw.get(month)));
    }

    /** Sum of the twelve monthly demands, kW. */
    public double sumOfPeaksKw() {
        return IntStream.range(0, Climate.MONTHS).mapToDouble(this::peakKw).sum();
    }

    /** Highest of the monthly demands, kW. */
    public double peakKw() {
        return IntStream.range(0, Climate.MONTHS).mapToDouble(this::peakKw).max().orElseThrow();
    }

    /** Load on the service with the ports of a year. */
    ServiceYear service(DepotInput depot, PortFleet ports, int year) {
        double connected = ports.connectedKw(year);
        return new ServiceYear(ports.count(year), connected, peakKw(), depot.service().loadKva(connected),
                depot.service().loadKva(peakKw()), depot.service().transformerKva(),
                depot.service().breakerContinuousKva());
    }

    /** Sum of what the buses charge on one day, energy into the batteries. */
    private static final class YardDay {
        private final List<DayCharging.Session> sessions = new ArrayList<>();
        private double nightKwh;
        private double nightHeatKwh;
        private double preheatKw;

        void add(DayCharging charging) {
            sessions.addAll(charging.midday());
            nightKwh += charging.nightKwh();
            nightHeatKwh += charging.nightHeatKwh();
            preheatKw += charging.preheatKw();
        }

        double nightHeatKwh() {
            return nightHeatKwh;
        }

        double preheatKw() {
            return preheatKw;
        }

        double nightKwh() {
            return nightKwh;
        }

        /** Highest sum of the powers of sessions that overlap; it can only be reached when one of them starts. */
        double middayKw() {
            double highest = 0;
            for (DayCharging.Session start : sessions) {
                double sum = 0;
                for (DayCharging.Session other : sessions) {
                    if (other.fromMin() <= start.fromMin() && start.fromMin() < other.toMin()) {
                        sum += other.batteryKw();
                    }
                }
                highest = Math.max(highest, sum);
            }
            return highest;
        }
    }
}
