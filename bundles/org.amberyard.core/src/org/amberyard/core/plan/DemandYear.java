package org.amberyard.core.plan;

import java.util.List;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DayBlock;
import org.amberyard.core.duty.DutyTable;

/**
 * Charging demand of a plan in one year when the energy of each month's coldest day is spread evenly over the night.
 *
 * @param monthlyPeaksKw demand of each month from January to December, kW
 * @param meterKwh energy at the meter in the year, kWh
 */
public record DemandYear(List<Double> monthlyPeaksKw, double meterKwh) {

    public DemandYear {
        monthlyPeaksKw = List.copyOf(monthlyPeaksKw);
    }

    /** Demand of one year of a fleet. */
    static DemandYear of(StudyInput study, DutyTable duty, FleetHistory fleet, PortFleet ports,
            int year) {
        List<VehicleYear> electric = fleet.inYear(year).stream().filter(v -> v.meterKwh() > 0).toList();
        Double[] peaks = new Double[Climate.MONTHS];
        for (int month = 0; month < Climate.MONTHS; month++) {
            double batteryKwh = 0;
            for (VehicleYear record : electric) {
                batteryKwh += coldestDayKwh(study, duty, record, month);
            }
            peaks[month] = study.depot().window().spreadKw(batteryKwh / ports.efficiency(year));
        }
        double meterKwh = electric.stream().mapToDouble(VehicleYear::meterKwh).sum();
        return new DemandYear(List.of(peaks), meterKwh);
    }

    private static double coldestDayKwh(StudyInput study, DutyTable duty, VehicleYear record,
            int month) {
        BusInput bus = study.buses().get(record.place());
        return bus.route().isEmpty() ? 0
                : duty.use(bus.route().getAsInt(), record.vehicle().type()).map(u -> u.coldestDays().get(month))
                        .map(DayBlock::batteryKwh).orElse(0.0);
    }

    /** Sum of the twelve monthly demands, kW. */
    public double sumOfPeaksKw() {
        return monthlyPeaksKw.stream().mapToDouble(Double::doubleValue).sum();
    }

    /** Highest of the monthly demands, kW. */
    public double peakKw() {
        return monthlyPeaksKw.stream().mapToDouble(Double::doubleValue).max().orElse(0);
    }

    /** Load on the service with the ports of a year. */
    ServiceYear service(DepotInput depot, PortFleet ports, int year) {
        double connected = ports.connectedKw(year);
        return new ServiceYear(ports.count(year), connected, peakKw(), depot.service().loadKva(connected),
                depot.service().loadKva(peakKw()), depot.service().transformerKva(),
                depot.service().breakerContinuousKva());
    }
}
