package org.amberyard.core.plan;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.EmissionSource;
import org.amberyard.core.air.Emissions;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.yard.YardYear;

/**
 * What one year of a plan puts into the air.
 *
 * @param emissions by source; power plants answer for all energy at the meter, what ports draw at rest included
 * @param otherGrid the power plants on the basis that was not chosen; empty where it has no factors
 */
public record AirYear(Emissions emissions, Optional<Masses> otherGrid) {

    /** Greenhouse gas of engines, kg CO2e. */
    public double tailpipeKg() {
        return co2e(EmissionSource.DRIVING) + co2e(EmissionSource.IDLING);
    }

    /** Greenhouse gas of fuel-fired heaters, kg CO2e. */
    public double heaterKg() {
        return co2e(EmissionSource.HEATER);
    }

    /** Greenhouse gas of power plants, kg CO2e. */
    public double gridKg() {
        return co2e(EmissionSource.GRID);
    }

    /** All greenhouse gas but that upstream of the tank, kg CO2e. */
    public double totalKg() {
        return tailpipeKg() + heaterKg() + gridKg();
    }

    private double co2e(EmissionSource source) {
        return emissions.of(source).kg(Pollutant.CO2E);
    }

    /** The years of a plan. */
    static List<AirYear> all(StudyInput study, DutyTable duty, FleetHistory fleet, List<YardYear> yards) {
        BusAir buses = new BusAir(study, duty);
        return IntStream.range(0, study.years()).mapToObj(year -> of(buses, study.air().factors(), fleet, yards.get(year), year))
                .toList();
    }

    private static AirYear of(BusAir buses, AirFactors factors, FleetHistory fleet, YardYear yard, int year) {
        Emissions sum = Emissions.NONE;
        for (VehicleYear record : fleet.inYear(year)) {
            sum = sum.plus(buses.of(record));
        }
        double meterKwh = yard.neededKwh();
        return new AirYear(sum.with(EmissionSource.GRID, factors.grid().of(meterKwh, year, factors.warming())),
                factors.otherGrid().map(g -> g.of(meterKwh, year, factors.warming())));
    }
}
