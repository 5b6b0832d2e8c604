package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.duty.BlockCheck;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayCharging;
import org.amberyard.core.duty.DutyTable;

/**
 * Charging demand of a plan in one year on each month's coldest or hottest operated day, whichever is higher. What is charged
 * at night is spread evenly over the charge window; what is charged between runs, over the time that each bus stands. Buses
 * without a route are left out: a spare drives when a route bus does not.
 *
 * @param nightPeaksKw demand in the night of each month from January to December, kW
 * @param middayPeaksKw highest demand between runs of each month, kW
 * @param batteryKwhOfNight energy into the batteries in the year's heaviest night, kWh
 */
public record DemandYear(List<Double> nightPeaksKw, List<Double> middayPeaksKw, double batteryKwhOfNight) {

    public DemandYear {
        nightPeaksKw = List.copyOf(nightPeaksKw);
        middayPeaksKw = List.copyOf(middayPeaksKw);
    }

    /** Demand of one year of a fleet. */
    static DemandYear of(StudyInput study, DutyTable duty, FleetHistory fleet, PortFleet ports, int year) {
        List<VehicleYear> electric = fleet.inYear(year).stream().filter(v -> v.meterKwh() > 0).toList();
        List<Double> nights = new ArrayList<>();
        List<Double> middays = new ArrayList<>();
        double heaviestKwh = 0;
        for (int month = 0; month < Climate.MONTHS; month++) {
            YardDay cold = yardDay(study, duty, electric, ports, year, month, true);
            YardDay hot = yardDay(study, duty, electric, ports, year, month, false);
            double nightKwh = Math.max(cold.nightKwh(), hot.nightKwh());
            heaviestKwh = Math.max(heaviestKwh, nightKwh);
            nights.add(study.depot().window().spreadKw(nightKwh / ports.efficiency(year)));
            middays.add(Math.max(cold.middayKw(), hot.middayKw()) / ports.efficiency(year));
        }
        return new DemandYear(nights, middays, heaviestKwh);
    }

    private static YardDay yardDay(StudyInput study, DutyTable duty, List<VehicleYear> electric, PortFleet ports, int year,
            int month, boolean cold) {
        YardDay yard = new YardDay();
        for (VehicleYear record : electric) {
            VehicleTypeInput type = study.types().get(record.vehicle().type());
            BlockCheck check = RouteFitting.check(study, ports.batteryKw(type, year), study.depot().middayCharging());
            study.buses().get(record.place()).route().ifPresent(route -> duty.use(route, record.vehicle().type())
                    .ifPresent(use -> use.days(month, cold).map(d -> check.charging(d, type.electric().orElseThrow().battery()))
                            .max((a, b) -> Double.compare(a.nightKwh(), b.nightKwh())).ifPresent(yard::add)));
        }
        return yard;
    }

    /** Sum of the twelve monthly demands, kW. */
    public double sumOfPeaksKw() {
        double sum = 0;
        for (int month = 0; month < Climate.MONTHS; month++) {
            sum += Math.max(nightPeaksKw.get(month), middayPeaksKw.get(month));
        }
        return sum;
    }

    /** Highest of the monthly demands, kW. */
    public double peakKw() {
        double peak = 0;
        for (int month = 0; month < Climate.MONTHS; month++) {
            peak = Math.max(peak, Math.max(nightPeaksKw.get(month), middayPeaksKw.get(month)));
        }
        return peak;
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

        void add(DayCharging charging) {
            sessions.addAll(charging.midday());
            nightKwh += charging.nightKwh();
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
