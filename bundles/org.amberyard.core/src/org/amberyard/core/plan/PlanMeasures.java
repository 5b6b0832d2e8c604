package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.money.CostLedger;
import org.amberyard.core.money.DiscountFactor;
import org.amberyard.core.yard.YardYear;

/**
 * A plan in single figures.
 *
 * @param presentCost present value of all costs at the base date
 * @param annualEquivalent level yearly cost, in constant money at the end of each year, with the same present value
 * @param km distance driven over the study, km
 * @param costPerKm present cost over the distance, both discounted: the levelised cost per distance, constant money;
 *     empty where nothing is driven
 * @param costPerRiderDay present cost over the days on which riders are carried, each rider counted once a day, both discounted;
 *     empty where the riders of a route are not known
 * @param co2eKg greenhouse gas over the study, kg
 * @param fuelL fuel over the study, L
 * @param meterKwh energy at the meter over the study, what ports draw at rest included, kWh
 * @param kmByYear distance of each year, km
 */
public record PlanMeasures(double presentCost, double annualEquivalent, double km, OptionalDouble costPerKm,
        OptionalDouble costPerRiderDay, double co2eKg, double fuelL, double meterKwh, List<Double> kmByYear) {

    public PlanMeasures {
        kmByYear = List.copyOf(kmByYear);
    }

    static PlanMeasures of(StudyInput study, CostLedger ledger, FleetHistory fleet, List<YardYear> yards, List<AirYear> air) {
        double[] kmByYear = new double[study.years()];
        double fuelL = 0;
        for (VehicleYear record : fleet.years()) {
            kmByYear[record.year()] += record.use().km();
            fuelL += record.use().fuelL() + record.use().heaterFuelL();
        }
        double meterKwh = yards.stream().mapToDouble(YardYear::neededKwh).sum();
        double co2e = air.stream().mapToDouble(AirYear::totalKg).sum();
        return new PlanMeasures(0, 0, Arrays.stream(kmByYear).sum(), OptionalDouble.empty(), OptionalDouble.empty(), co2e, fuelL, meterKwh,
                Arrays.stream(kmByYear).boxed().toList()).at(study, ledger);
    }

    /** The same with other costs and rates. */
    PlanMeasures at(StudyInput study, CostLedger ledger) {
        double rate = study.money().rates().real();
        double present = ledger.presentValue();
        double presentKm = 0;
        double presentYears = 0;
        for (int year = 0; year < study.years(); year++) {
            double factor = DiscountFactor.single(rate, study.money().time(CostCategory.UPKEEP, year));
            presentKm += kmByYear.get(year) * factor;
            presentYears += factor;
        }
        double annual = present * DiscountFactor.capitalRecovery(rate, study.years());
        return new PlanMeasures(present, annual, km, presentKm > 0 ? OptionalDouble.of(present / presentKm) : OptionalDouble.empty(),
                perRiderDay(study.duty().routes(), present / presentYears), co2eKg, fuelL, meterKwh, kmByYear);
    }

    /** The routes of a study carry the same riders in all its years. */
    private static OptionalDouble perRiderDay(List<RouteInput> routes, double costPerYear) {
        double riderDays = routes.stream().mapToDouble(r -> r.riders().orElse(0) * (double) r.serviceDays()).sum();
        boolean known = riderDays > 0 && routes.stream().allMatch(r -> r.riders().isPresent());
        return known ? OptionalDouble.of(costPerYear / riderDays) : OptionalDouble.empty();
    }
}
