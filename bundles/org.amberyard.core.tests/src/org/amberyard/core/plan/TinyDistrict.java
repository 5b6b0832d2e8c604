package org.amberyard.core.plan;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.air.SampleAir;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DriverStyle;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.DutyTable;
import org.amberyard.core.duty.ElectricSpec;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.EngineSpec;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.duty.SampleBus;
import org.amberyard.core.duty.WeatherDay;
import org.amberyard.core.duty.YardHabit;
import org.amberyard.core.funding.Budget;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.Conditions;
import org.amberyard.core.funding.FundingInput;
import org.amberyard.core.funding.Match;
import org.amberyard.core.funding.MoneyKind;
import org.amberyard.core.funding.Offer;
import org.amberyard.core.funding.Payout;
import org.amberyard.core.funding.PortAward;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.ShareAward;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.money.PricePath;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.upkeep.UpkeepRate;
import org.amberyard.core.yard.Metering;

/** A small invented district for tests: two route buses and a spare, a diesel and an electric type, two plans. */
public final class TinyDistrict {
    static final int DIESEL = 0;
    static final int ELECTRIC = 1;
    static final int YEARS = 4;

    private TinyDistrict() {
    }

    public static StudyInput study() {
        return study(new MoneyRules(new MoneyRates(0.02, 0.025), MoneyBasis.CONSTANT, false));
    }

    static StudyInput study(MoneyRules money) {
        return new StudyInput("Tiny", "USD", 2026, YEARS, money, duty(), List.of(diesel(), electric()), buses(), depot(),
                prices(), FundingInput.of(List.of(grant())), SampleAir.greenhouseGas(), new FleetRules(0.05, 0.01, 0.15), List.of(dieselPlan(), electricPlan()),
                0,
                List.of());
    }

    static PlanResult evaluated(StudyInput study, DutyTable duty, int plan) {
        return StudyEvaluation.of(study, duty).plans().get(plan);
    }

    static StudyInput withPlans(StudyInput study, PlanInput... plans) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), study.air(),
                study.rules(), List.of(plans), 0, study.trips());
    }

    static StudyInput withBuses(StudyInput study, List<BusInput> buses) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), buses, study.depot(), study.prices(), study.funding(), study.air(), study.rules(),
                study.plans(), 0, study.trips());
    }

    static StudyInput withRules(StudyInput study, FleetRules rules) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), study.air(), rules,
                study.plans(), 0, study.trips());
    }

    static StudyInput withFunding(StudyInput study, FundingInput funding) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), funding, study.air(), study.rules(),
                study.plans(), 0, study.trips());
    }

    static StudyInput withDepot(StudyInput study, DepotInput depot) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), depot, study.prices(), study.funding(), study.air(), study.rules(),
                study.plans(), 0, study.trips());
    }

    static StudyInput withDuty(StudyInput study, DutyInput duty) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), duty,
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), study.air(), study.rules(),
                study.plans(), 0, study.trips());
    }

    /** The same where a worn-out diesel bus has another value. */
    static StudyInput withDieselAtRetirement(StudyInput study, double value) {
        VehicleTypeInput type = study.types().get(DIESEL);
        VehiclePrices p = type.prices();
        List<VehicleTypeInput> types = new ArrayList<>(study.types());
        types.set(DIESEL, new VehicleTypeInput(type.spec(), new VehiclePrices(p.purchase(), p.lifeYears(), p.lifeKm(),
                p.spareExtraYears(), value, p.upkeep(), p.registrationPerYear(), p.fuelFiredHeater(), p.packs()),
                type.acAcceptanceKw(), type.dcAcceptanceKw(), type.successor()));
        return withTypes(study, types);
    }

    static StudyInput withTypes(StudyInput study, List<VehicleTypeInput> types) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                types, study.buses(), study.depot(), study.prices(), study.funding(), study.air(), study.rules(),
                study.plans(), 0, study.trips());
    }

    static DutyInput duty() {
        return new DutyInput(climate(), new DriverStyle(0.7, 0.9, 1), 55, List.of(route("North", 24), route("South", 40)),
                List.of(diesel().spec(), electric().spec()), new YardHabit(true, false, 17), List.of());
    }

    /** The same where the riders of the first routes are known. */
    static DutyInput dutyWithRiders(int... riders) {
        DutyInput duty = duty();
        List<RouteInput> routes = new ArrayList<>(duty.routes());
        for (int place = 0; place < riders.length; place++) {
            RouteInput route = routes.get(place);
            routes.set(place, new RouteInput(route.name(), route.bodyType(), OptionalInt.of(riders[place]), route.runs(),
                    route.energyModel()));
        }
        return new DutyInput(duty.climate(), duty.style(), duty.riderMassKg(), routes, duty.vehicles(), duty.habit(), List.of());
    }

    static Climate climate() {
        return new Climate(300, Collections.nCopies(12, new Climate.MonthWeather(day(-4, 6), day(-22, -10), day(15, 28))));
    }

    private static WeatherDay day(double lowC, double highC) {
        return WeatherDay.ofExtremes(lowC, highC, new double[WeatherDay.HOURS]);
    }

    static RouteInput route(String name, double km) {
        return new RouteInput(name, "C", List.of(run("AM", 390, km), run("PM", 860, km)), EnergyModel.PHYSICS);
    }

    static RunInput run(String name, double departureMin, double km) {
        return SampleBus.run(name, departureMin, 70, km, 20, 25, 64, 60, Collections.nCopies(12, 15));
    }

    static VehicleTypeInput diesel() {
        EngineSpec sample = SampleBus.diesel();
        EngineSpec spec = new EngineSpec("Diesel", SampleBus.body(8300, sample.body().driveline()), FuelKind.DIESEL, 0.4, 1.8,
                0.025, 0.2, sample.heater());
        return new VehicleTypeInput(spec, prices(150_000, 0.26, 0.026), 0, 0, DIESEL);
    }

    static VehicleTypeInput electric() {
        ElectricSpec sample = SampleBus.electric();
        ElectricSpec spec = new ElectricSpec("Electric", SampleBus.body(9700, SampleBus.DRIVELINE), sample.recovery(),
                sample.heater(), sample.battery(), Optional.empty());
        return new VehicleTypeInput(spec, prices(330_000, 0.22, 0.016), 19.2, 60, ELECTRIC);
    }

    private static VehiclePrices prices(double purchase, double upkeep, double rise) {
        return new VehiclePrices(purchase, 15, 400_000, 8, 3500, new UpkeepRate(upkeep, rise), 120,
                OptionalDouble.of(5000), PackPrices.NONE);
    }

    static List<BusInput> buses() {
        return List.of(
                new BusInput("1", Role.ROUTE, DIESEL, OptionalInt.of(0), -12, 200_000, 0, 100,
                        OptionalDouble.empty(), OptionalInt.of(1)),
                new BusInput("2", Role.ROUTE, DIESEL, OptionalInt.of(1), -5, 90_000, 500, 100,
                        OptionalDouble.empty(), OptionalInt.empty()),
                new BusInput("3", Role.SPARE, DIESEL, OptionalInt.empty(), -16, 150_000, 4000, 40,
                        OptionalDouble.empty(), OptionalInt.empty()));
    }

    private static DepotInput depot() {
        Port port = new Port("AC", false, 19.2, 0.88, 15, 6000, 9000, 2, 30, 250);
        return new DepotInput(List.of(port), List.of(new DepotInput.SiteWork("Trench", 80_000, 30)),
                new ServiceInput(480, 800, 300, 0.95, 80), new ChargeWindow(1320, 315),
                Metering.own(Tariff.flat("Flat", 100, 0.10, 0.005, 5, 0)), List.of(), ChargingRules.spreadBeside(80));
    }

    private static PriceDeck prices() {
        PricePath rising = new PricePath(0.01, List.of());
        return new PriceDeck(Map.of(FuelKind.DIESEL, new PriceDeck.Price(0.95, rising)),
                new PriceDeck.Price(0.9, PricePath.FLAT), new PriceDeck.Price(250, PricePath.FLAT),
                Map.of(PriceDeck.Subject.ELECTRIC_BUS, new PricePath(-0.01, List.of())));
    }

    private static Programme grant() {
        Offer offer = new Offer(Map.of("C", new BusAward(10_000, 0, 0.5, 60_000)),
                new PortAward(0, 0.5, 5000, PortAward.Cover.ALL), new ShareAward(0.5, 1e9), ShareAward.NONE, false);
        return new Programme("Fund", MoneyKind.STATE, 1, 1, 2, 1, offer, Budget.ofBuses(1), Match.NONE, Conditions.NONE,
                Payout.ADVANCE);
    }

    static StudyInput withAir(StudyInput study, AirInput air) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), air, study.rules(),
                study.plans(), 0, study.trips());
    }

    static PlanInput dieselPlan() {
        return new PlanInput("Diesel", List.of(), List.of(), List.of(), List.of());
    }

    static PlanInput electricPlanWithoutAwards() {
        PlanInput plan = electricPlan();
        return new PlanInput(plan.name(), plan.replacements().stream()
                .map(r -> new PlanInput.Replacement(r.year(), r.place(), r.newType(), r.cascadeTo(), List.of())).toList(),
                plan.ports().stream().map(p -> new PlanInput.PortPurchase(p.year(), p.port(), p.count(), List.of())).toList(),
                plan.works().stream().map(w -> new PlanInput.WorkOrder(w.year(), w.work(), List.of())).toList(), plan.oneOffs());
    }

    static PlanInput electricPlan() {
        return new PlanInput("Electric",
                List.of(new PlanInput.Replacement(1, 0, OptionalInt.of(ELECTRIC), OptionalInt.of(2), List.of(0)),
                        new PlanInput.Replacement(2, 1, OptionalInt.of(ELECTRIC), OptionalInt.empty(), List.of(0))),
                List.of(new PlanInput.PortPurchase(1, 0, 2, List.of(0))),
                List.of(new PlanInput.WorkOrder(1, 0, List.of(0))), List.of(new PlanInput.OneOff(1, "Training", 9000, List.of())));
    }
}
