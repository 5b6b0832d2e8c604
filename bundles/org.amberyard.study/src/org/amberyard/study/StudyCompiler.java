package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.duty.DriverStyle;
import org.amberyard.core.duty.DutyInput;
import org.amberyard.core.duty.VehicleSpec;
import org.amberyard.core.duty.YardHabit;
import org.amberyard.core.money.FiscalYears;
import org.amberyard.core.money.MoneyBasis;
import org.amberyard.core.money.MoneyRates;
import org.amberyard.core.money.MoneyRules;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.FleetRules;
import org.amberyard.core.plan.MeasuredPack;
import org.amberyard.core.plan.Role;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.prices.EscalationBasis;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Settings;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.Timing;
import org.amberyard.model.study.YearNaming;
import org.amberyard.model.vehicles.VehicleType;

/**
 * Compiles the model that the user edits into the values that the core computes with. Years become counts from the base
 * year and references become places in lists.
 */
public final class StudyCompiler {
    private final Study study;
    private final Settings settings;
    private final Places<VehicleType> types;
    private final Places<Route> routes;

    private StudyCompiler(Study study) {
        this.study = study;
        this.settings = study.getSettings();
        this.types = new Places<>(study.getVehicleTypes());
        this.routes = new Places<>(study.getRoutes());
    }

    /**
     * Core input of a study without error findings.
     *
     * @throws IllegalArgumentException when an element that another refers to is not part of the study
     */
    public static StudyInput compile(Study study) {
        return new StudyCompiler(study).compile();
    }

    /** Fiscal years as the settings name them. */
    static FiscalYears fiscalYears(Settings settings) {
        return new FiscalYears(settings.getFiscalYearStart().getValue() + 1, settings.getFiscalYearNaming() == YearNaming.END);
    }

    private StudyInput compile() {
        MoneyRates rates = rates();
        MoneyRules money = new MoneyRules(rates, basis(), settings.getTiming() == Timing.MID_YEAR, fiscalYears(settings));
        List<VehicleTypeInput> vehicles = study.getVehicleTypes().stream().map(this::vehicle).toList();
        DutyInput duty = duty(vehicles);
        PlanCompiler plans = new PlanCompiler(study, types);
        return new StudyInput(study.getName(), settings.getCurrency(), settings.getBaseYear(),
                settings.getHorizonYears(), money, duty, vehicles, buses(), new DepotCompiler(settings).compile(study.getDepot()),
                new PriceCompiler(settings, rates).compile(study.getPrices()), new FundingCompiler(study, rates).compile(),
                AirCompiler.compile(study),
                new FleetRules(settings.getSpareCoverShare(), settings.getInsuranceShare(), settings.getReserveShare(),
                        UpkeepCompiler.rules(study), new TaxCompiler(settings).taxes()),
                plans.plans(), new Places<>(study.getPlans()).of(study.getBaseline()),
                new TripCompiler(study, duty.routes()).trips(), ActualsCompiler.compile(study));
    }

    private MoneyRates rates() {
        double inflation = settings.getGeneralInflation();
        return settings.getDiscountBasis() == EscalationBasis.NOMINAL
                ? MoneyRates.ofNominal(settings.getDiscountRate(), inflation)
                : new MoneyRates(settings.getDiscountRate(), inflation);
    }

    private MoneyBasis basis() {
        return switch (settings.getMoneyBasis()) {
            case CONSTANT -> MoneyBasis.CONSTANT;
            case NOMINAL -> MoneyBasis.NOMINAL;
        };
    }

    private DutyInput duty(List<VehicleTypeInput> vehicles) {
        DriverStyle style = DriverStyle.of(settings.getAccelerationMps2(), settings.getDecelerationMps2(),
                settings.getDriverHurry());
        YardHabit habit = new YardHabit(study.getDepot().isMiddayCharging(), study.getDepot().isPreconditioning(),
                DepotCompiler.portKw(study.getDepot()));
        List<VehicleSpec> specs = vehicles.stream().map(VehicleTypeInput::spec).toList();
        return new DutyInput(RouteCompiler.climate(study.getSite()), style, settings.getRiderMassKg(),
                study.getRoutes().stream().map(RouteCompiler::route).toList(), specs, habit,
                LogCompiler.measured(study, types, routes));
    }

    private VehicleTypeInput vehicle(VehicleType type) {
        int successor = type.getSuccessor() == null ? types.of(type) : types.of(type.getSuccessor());
        return VehicleCompiler.compile(type, successor);
    }

    private List<BusInput> buses() {
        List<BusInput> buses = new ArrayList<>();
        BusRecordCompiler records = new BusRecordCompiler(study);
        for (Bus bus : study.getBuses()) {
            int planned = bus.getPlannedRetirementYear();
            buses.add(new BusInput(bus.getName(), role(bus), types.of(bus.getType()), routes.ofOptional(bus.getRoute()),
                    bus.getInServiceYear() - settings.getBaseYear(), bus.getOdometerKm(), bus.getOtherKmPerYear(),
                    bus.getIdleHoursPerYear(), measured(bus),
                    planned == 0 ? OptionalInt.empty() : OptionalInt.of(planned - settings.getBaseYear()),
                    measuredPack(bus), records.of(bus)));
        }
        return buses;
    }

    private Optional<MeasuredPack> measuredPack(Bus bus) {
        int year = bus.getMeasuredHealthYear() > 0 ? bus.getMeasuredHealthYear() - settings.getBaseYear() : 0;
        return bus.getMeasuredHealth() > 0 ? Optional.of(new MeasuredPack(year, bus.getMeasuredHealth())) : Optional.empty();
    }

    private static OptionalDouble measured(Bus bus) {
        return bus.getMeasuredKmPerL() > 0 ? OptionalDouble.of(bus.getMeasuredKmPerL()) : OptionalDouble.empty();
    }

    private static Role role(Bus bus) {
        return switch (bus.getRole()) {
            case ROUTE -> Role.ROUTE;
            case SPARE -> Role.SPARE;
            case ACTIVITY -> Role.ACTIVITY;
        };
    }
}
