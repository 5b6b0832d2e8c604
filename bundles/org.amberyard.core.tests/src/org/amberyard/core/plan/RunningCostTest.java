package org.amberyard.core.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.duty.Heater;
import org.amberyard.core.money.CostCategory;
import org.junit.jupiter.api.Test;

/** What a bus costs to run in a year, by hand with the figures of {@link TinyDistrict}: fuel or the night's energy, upkeep, insurance, fees. */
class RunningCostTest {
    private static final double CENT = 0.005;
    private static final double YEARS = 2;

    private final StudyInput study = TinyPacks.withHeater(TinyDistrict.study(), new Heater(Heater.Source.FUEL_FIRED, 20, 2.2, 0.05, 0.8));
    private final DutyTable duty = DutyTable.of(study.duty());
    private final StudyResult result = StudyEvaluation.of(study, duty);
    private final YearOfDriving driving = new YearOfDriving(study, duty, new PortFleet(study.depot(), study.plans().get(1).ports()));
    private final RunningCost running = new RunningCost(study, driving, result.figures());

    private static VehicleYear record(PlanResult plan, int year, int place) {
        return plan.fleet().inYear(year).stream().filter(r -> r.place() == place).findFirst().orElseThrow();
    }

    private double cost(int year, int place, Vehicle bus) {
        return running.perYear(year, place, bus, YEARS).at(new PriceBook(study), year, CostCategory.BUS_PURCHASE);
    }

    /** A bus of the present fleet, 12 years old, in its first year, at whose end diesel for engine and heater costs 0.95 and 1 % more. */
    @Test
    void anEngineBus() {
        VehicleYear record = record(result.baseline(), 0, 0);
        EnergyUse use = driving.of(0, 0, record.vehicle()).record().use();
        double middle = record.vehicle().ageYears(0) + YEARS / 2;
        double fuel = 0.95 * 1.01 * (use.fuelL() + use.heaterFuelL());
        double fluid = 0.9 * use.fuelL() * study.types().get(TinyDistrict.DIESEL).engine().orElseThrow().exhaustFluidShare();
        double upkeep = use.km() * (0.26 + 0.026 * middle);
        double insured = new BusValues(study).insured(record.vehicle(), middle).at(new PriceBook(study), 0, CostCategory.INSURANCE);
        assertTrue(use.fuelL() > 0);
        assertEquals(fuel + fluid + upkeep + 0.01 * insured + 120, cost(0, 0, record.vehicle()), CENT);
    }

    /** Energy through ports of 88 % at the price of the night, and diesel for its heater. */
    @Test
    void anElectricBusWithAFuelFiredHeater() {
        VehicleYear record = record(result.plans().get(1), 3, 0);
        EnergyUse use = driving.of(3, 0, record.vehicle()).record().use();
        double middle = record.vehicle().ageYears(3) + YEARS / 2;
        double energy = (use.batteryKwh() + use.gridKwh()) / 0.88 * result.figures().prices().nightPerKwh();
        double fuel = 0.95 * Math.pow(1.01, 4) * use.heaterFuelL();
        double upkeep = use.km() * (0.22 + 0.016 * middle);
        double insured = new BusValues(study).insured(record.vehicle(), middle).at(new PriceBook(study), 3, CostCategory.INSURANCE);
        assertTrue(use.heaterFuelL() > 0 && use.fuelL() == 0);
        assertEquals(energy + fuel + upkeep + 0.01 * insured + 120, cost(3, 0, record.vehicle()), CENT);
    }

    /** Energy of the night costs what the tariff asks for a kWh: 0.10 and 0.005 of riders. */
    @Test
    void theNightCostsTheTariffsPrice() {
        assertEquals(0.105, result.figures().prices().nightPerKwh(), 1e-12);
        assertEquals(List.of(0.88), study.depot().ports().stream().map(p -> p.efficiency()).toList());
    }
}
