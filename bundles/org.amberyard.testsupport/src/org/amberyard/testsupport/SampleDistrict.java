package org.amberyard.testsupport;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.air.AirInput;
import org.amberyard.core.depot.ChargeWindow;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.duty.Climate;
import org.amberyard.core.duty.DriverStyle;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.EnergyModel;
import org.amberyard.core.duty.FuelKind;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.core.duty.RunInput;
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
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.ChargingRules;
import org.amberyard.core.plan.DepotInput;
import org.amberyard.core.plan.FleetRules;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.PriceDeck;
import org.amberyard.core.plan.Role;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.tariff.Tariff;
import org.amberyard.core.yard.Metering;

/** Invented districts of any size; all figures are made up. */
public final class SampleDistrict {
    private static final double SHORTEST_RUN_KM = 12;
    private static final double LONGEST_RUN_KM = 78;
    private static final List<Integer> SCHOOL_DAYS = List.of(19, 18, 20, 19, 21, 8, 0, 4, 20, 21, 17, 14);

    private final int routes;
    private final int years;

    private SampleDistrict(int routes, int years) {
        this.routes = routes;
        this.years = years;
    }

    /** Three buses on three routes, ten years: like-for-like diesel and an electric plan. */
    public static StudyInput small() {
        return new SampleDistrict(3, 10).study(1, true);
    }

    /** Eighteen buses on eighteen routes, fifteen years: like-for-like diesel and two electric plans. */
    public static StudyInput large() {
        return new SampleDistrict(18, 15).study(2, true);
    }

    /** The small district with a baseline only. */
    public static StudyInput baselineOnly() {
        return new SampleDistrict(3, 10).study(0, true);
    }

    /** The small district without routes. */
    public static StudyInput withoutRoutes() {
        return new SampleDistrict(3, 10).study(1, false);
    }

    /** A study with other emission factors. */
    public static StudyInput withAir(StudyInput study, AirInput air) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), study.buses(), study.depot(), study.prices(), study.funding(), air, study.rules(), study.plans(),
                study.baseline(), study.trips());
    }

    /** A study with other buses. */
    public static StudyInput withBuses(StudyInput study, List<BusInput> buses) {
        return new StudyInput(study.name(), study.currency(), study.baseYear(), study.years(), study.money(), study.duty(),
                study.types(), buses, study.depot(), study.prices(), study.funding(), study.air(), study.rules(), study.plans(),
                study.baseline(), study.trips());
    }

    /** Results of a study, evaluated once for all tests of a run. */
    public static StudyResult evaluated(StudyInput study) {
        return SampleResults.of(study);
    }

    /** Results of a study that share nothing with any others. */
    public static StudyResult evaluatedAfresh(StudyInput study) {
        return SampleResults.afresh(study);
    }

    private StudyInput study(int electricPlans, boolean withRoutes) {
        List<VehicleTypeInput> types = SampleTypes.all();
        DutyInput duty = new DutyInput(climate(), new DriverStyle(1, 1.2, 1), 45, withRoutes ? routes() : List.of(),
                types.stream().map(VehicleTypeInput::spec).toList(), new YardHabit(true, false, 17), List.of());
        MoneyRules money = new MoneyRules(new MoneyRates(0.03, 0.025), MoneyBasis.CONSTANT, false);
        return new StudyInput("Sample district", "USD", 2026, years, money, duty, types, buses(withRoutes), depot(),
                prices(), FundingInput.of(List.of(grant())), SampleAir.whole(), new FleetRules(0.05, 0.01, 0.2), plans(electricPlans), 0, List.of());
    }

    private Programme grant() {
        Offer offer = new Offer(Map.of("C", new BusAward(0, 0, 0.75, 180_000)),
                new PortAward(0, 0.5, 20_000, PortAward.Cover.ALL), ShareAward.NONE, ShareAward.NONE, false);
        return new Programme("Clean bus grant", MoneyKind.STATE, 1, 0, years, 1, offer, Budget.ofBuses(routes), Match.NONE,
                Conditions.NONE, Payout.ADVANCE);
    }

    private static Climate climate() {
        List<Climate.MonthWeather> months = new ArrayList<>();
        for (int month = 0; month < Climate.MONTHS; month++) {
            double mean = 10 - 12 * Math.cos(2 * Math.PI * month / Climate.MONTHS);
            months.add(new Climate.MonthWeather(day(mean - 5, mean + 5), day(mean - 18, mean - 10),
                    day(mean + 6, mean + 15)));
        }
        return new Climate(250, months);
    }

    private static WeatherDay day(double lowC, double highC) {
        return WeatherDay.ofExtremes(lowC, highC, new double[WeatherDay.HOURS]);
    }

    private List<RouteInput> routes() {
        List<RouteInput> list = new ArrayList<>();
        for (int i = 0; i < routes; i++) {
            double km = SHORTEST_RUN_KM + (LONGEST_RUN_KM - SHORTEST_RUN_KM) * i / Math.max(1, routes - 1);
            boolean yard = i % 3 != 2;
            list.add(new RouteInput(String.format("R%02d", i + 1), "C",
                    List.of(run("morning", 390, km, yard), run("afternoon", 870, km, yard)), EnergyModel.PHYSICS));
        }
        return list;
    }

    private static RunInput run(String name, double departureMin, double km, boolean yard) {
        return new RunInput(name, departureMin, 35 + 1.4 * km, km, 18, 18, 22, 72, 6 * km, yard, false,
                SCHOOL_DAYS, Optional.empty());
    }

    private List<BusInput> buses(boolean withRoutes) {
        List<BusInput> buses = new ArrayList<>();
        for (int i = 0; i < routes; i++) {
            OptionalInt route = withRoutes ? OptionalInt.of(i) : OptionalInt.empty();
            buses.add(new BusInput(String.format("B%02d", i + 1), Role.ROUTE, SampleTypes.DIESEL, route, -(i % 12) - 1,
                    21_000.0 * (i % 12 + 1), 1_500, 60, OptionalDouble.empty(), OptionalInt.empty()));
        }
        return buses;
    }

    private static DepotInput depot() {
        return new DepotInput(List.of(new Port("AC 19.2 kW", false, 19.2, 0.9, 20, 6_200, 9_000, 10, 30, 240)),
                List.of(new DepotInput.SiteWork("Trench and switchgear", 90_000, 30)),
                new ServiceInput(480, 400, 300, 0.95, 60), new ChargeWindow(1260, 330),
                Metering.own(Tariff.flat("Flat", 120, 0.11, 0.01, 9.5, 0.03)), List.of(), ChargingRules.spreadBeside(60));
    }

    private static PriceDeck prices() {
        PriceDeck.Price diesel = new PriceDeck.Price(1.0, new PricePath(0.015, List.of()));
        return new PriceDeck(Map.of(FuelKind.DIESEL, diesel), new PriceDeck.Price(0.8, PricePath.FLAT),
                new PriceDeck.Price(160, new PricePath(-0.03, List.of())), Map.of());
    }

    private List<PlanInput> plans(int electricPlans) {
        List<PlanInput> plans = new ArrayList<>();
        plans.add(new PlanInput("Like-for-like diesel", List.of(), List.of(), List.of(), List.of()));
        if (electricPlans > 0) {
            plans.add(electric("Electric in stages", 2, List.of(0)));
        }
        if (electricPlans > 1) {
            plans.add(electric("Electric at once, no grant", Integer.MAX_VALUE, List.of()));
        }
        return plans;
    }

    /** The shorter two thirds of the routes go electric, a number of buses in each year from the first. */
    private PlanInput electric(String name, int busesPerYear, List<Integer> programmes) {
        List<PlanInput.Replacement> steps = new ArrayList<>();
        int electric = Math.max(1, 2 * routes / 3);
        for (int place = 0; place < electric; place++) {
            int type = place < routes / 3 ? SampleTypes.SMALL_PACK : SampleTypes.LARGE_PACK;
            steps.add(new PlanInput.Replacement(place / busesPerYear, place, OptionalInt.of(type), OptionalInt.empty(),
                    programmes));
        }
        List<PlanInput.PortPurchase> ports =
                List.of(new PlanInput.PortPurchase(0, 0, (electric + 1) / 2, programmes),
                        new PlanInput.PortPurchase(Math.min(3, years - 1), 0, electric / 2, programmes));
        return new PlanInput(name, steps, ports, List.of(new PlanInput.WorkOrder(0, 0, List.of())),
                Collections.singletonList(new PlanInput.OneOff(0, "Training", 15_000, List.of())));
    }
}
