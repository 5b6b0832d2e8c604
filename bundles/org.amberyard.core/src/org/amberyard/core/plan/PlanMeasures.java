package org.amberyard.core.plan;

import java.util.List;
import java.util.stream.IntStream;
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
 * @param costPerKm present cost over the distance, both discounted: the levelised cost per distance, constant money
 * @param co2eKg greenhouse gas over the study, kg
 * @param fuelL fuel over the study, L
 * @param meterKwh energy at the meter over the study, what ports draw at rest included, kWh
 */
public record PlanMeasures(double presentCost, double annualEquivalent, double km, double costPerKm, double co2eKg,
        double fuelL, double meterKwh) {

    static PlanMeasures of(StudyInput study, CostLedger ledger, FleetHistory fleet, List<YardYear> yards, List<AirYear> air) {
        double rate = study.money().rates().real();
        double present = ledger.presentValue();
        double[] factors = IntStream.range(0, study.years())
                .mapToDouble(year -> DiscountFactor.single(rate, study.money().time(CostCategory.UPKEEP, year))).toArray();
        double km = 0;
        double presentKm = 0;
        double fuelL = 0;
        double meterKwh = yards.stream().mapToDouble(YardYear::neededKwh).sum();
        for (VehicleYear record : fleet.years()) {
            km += record.use().km();
            presentKm += record.use().km() * factors[record.year()];
            fuelL += record.use().fuelL() + record.use().heaterFuelL();
        }
        double co2e = air.stream().mapToDouble(AirYear::totalKg).sum();
        double annual = present * DiscountFactor.capitalRecovery(rate, study.years());
        return new PlanMeasures(present, annual, km, presentKm > 0 ? present / presentKm : 0, co2e, fuelL, meterKwh);
    }
}
