package org.amberyard.study.roll;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.amberyard.core.duty.EnergyUse;
import org.amberyard.core.plan.ActualFigure;
import org.amberyard.core.plan.ActualYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.FleetPackage;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.prices.PricesPackage;
import org.amberyard.model.routes.Route;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehicleType;
import org.amberyard.model.vehicles.VehiclesPackage;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What came of the last year that is over, beside what was assumed, and put in its place. */
final class Actuals {
    private final Study study;
    private final RollLog log;
    private final StudyResult before;
    private final PlanResult plan;
    private final Optional<ActualYear> known;
    private final String why;

    /** @param years years that are over, from the old base year on */
    Actuals(Study study, RollLog log, StudyResult before, int plan, int years) {
        this.study = study;
        this.log = log;
        this.before = before;
        this.plan = before.plans().get(plan);
        this.known = before.input().actuals().stream().filter(a -> a.year() >= 0 && a.year() < years)
                .reduce((earlier, later) -> later);
        this.why = "by the actuals of " + known.map(this::calendar).orElse(0);
    }

    private int calendar(ActualYear year) {
        return before.input().baseYear() + year.year();
    }

    List<ActualProposal> proposals() {
        List<ActualProposal> all = new ArrayList<>();
        known.ifPresent(year -> {
            add(all, ActualProposal.Kind.FUEL_PRICE, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L,
                    over(planned(ActualFigure.FUEL_COST), planned(ActualFigure.FUEL)),
                    over(ActualFigure.FUEL_COST.actual(year), ActualFigure.FUEL.actual(year)));
            add(all, ActualProposal.Kind.FUEL_USE, Literals.YEAR_ACTUALS__FUEL_L, planned(ActualFigure.FUEL), ActualFigure.FUEL.actual(year));
            add(all, ActualProposal.Kind.ELECTRICITY_USE, Literals.YEAR_ACTUALS__ELECTRICITY_KWH, planned(ActualFigure.ELECTRICITY),
                    ActualFigure.ELECTRICITY.actual(year));
            add(all, ActualProposal.Kind.UPKEEP, Literals.YEAR_ACTUALS__UPKEEP_COST, planned(ActualFigure.UPKEEP),
                    ActualFigure.UPKEEP.actual(year));
        });
        return all;
    }

    private OptionalDouble planned(ActualFigure figure) {
        return figure.planned(plan, known.orElseThrow().year());
    }

    private static OptionalDouble over(OptionalDouble cost, OptionalDouble amount) {
        return cost.isPresent() && amount.orElse(0) > 0 ? OptionalDouble.of(cost.getAsDouble() / amount.getAsDouble())
                : OptionalDouble.empty();
    }

    private void add(List<ActualProposal> all, ActualProposal.Kind kind, EStructuralFeature as, OptionalDouble assumed,
            OptionalDouble actual) {
        if (assumed.orElse(0) > 0 && actual.orElse(0) > 0) {
            RoundedText figures = new RoundedText(study);
            all.add(new ActualProposal(kind, calendar(known.orElseThrow()), figures.shown(as, assumed.getAsDouble()),
                    figures.shown(as, actual.getAsDouble()), actual.getAsDouble() / assumed.getAsDouble()));
        }
    }

    void take(ActualProposal proposal) {
        switch (proposal.kind()) {
            case FUEL_PRICE -> study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast)
                    .forEach(p -> log.set(p, PricesPackage.Literals.FUEL_PRICE__PRICE_PER_L, proposal.ratio() * p.getPricePerL(), why));
            case FUEL_USE -> takeFuel(proposal.ratio());
            case ELECTRICITY_USE -> takeElectricity(proposal);
            case UPKEEP -> takeUpkeep(proposal.ratio());
        }
    }

    private List<VehicleYear> driven() {
        return plan.fleet().inYear(known.orElseThrow().year());
    }

    private Optional<VehicleYear> driven(Bus bus) {
        return driven().stream().filter(v -> v.vehicle().unit().equals(bus.getName())).findFirst();
    }

    private void takeFuel(double ratio) {
        for (Bus bus : study.getBuses()) {
            Optional<EnergyUse> use = driven(bus).map(VehicleYear::use).filter(u -> u.fuelL() > 0);
            if (bus.getType() instanceof CombustionType && use.isPresent()) {
                log.set(bus, FleetPackage.Literals.BUS__MEASURED_KM_PER_L, use.get().km() / (ratio * use.get().fuelL()), why);
            }
        }
    }

    private void takeElectricity(ActualProposal proposal) {
        Set<List<Object>> logged = new HashSet<>();
        for (VehicleYear bus : driven()) {
            OptionalInt route = before.input().buses().get(bus.place()).route();
            VehicleType type = study.getVehicleTypes().get(bus.vehicle().type());
            if (route.isPresent() && type instanceof ElectricType && logged.add(List.of(route.getAsInt(), type))) {
                before.duty().use(route.getAsInt(), bus.vehicle().type()).map(u -> u.year()).filter(u -> u.km() > 0)
                        .ifPresent(use -> logUse(study.getRoutes().get(route.getAsInt()), type, use, proposal, logged));
            }
        }
    }

    /** The first log of a route takes the place of those that the study has of electric buses on it. */
    private void logUse(Route route, VehicleType type, EnergyUse use, ActualProposal proposal, Set<List<Object>> logged) {
        if (logged.add(List.of(route))) {
            study.getConsumptionLogs().stream().filter(l -> l.getRoute() == route && l.getType() instanceof ElectricType).toList()
                    .forEach(l -> {
                        log.goes(l, why);
                        study.getConsumptionLogs().remove(l);
                    });
        }
        ConsumptionLog entry = FleetFactory.eINSTANCE.createConsumptionLog();
        entry.setType(type);
        entry.setRoute(route);
        entry.setDistanceKm(use.km());
        entry.setEnergyKwh(proposal.ratio() * use.batteryKwh());
        entry.setNote("Energy at the meter in " + proposal.year() + ": " + proposal.actual() + " where " + proposal.assumed()
                + " was assumed");
        study.getConsumptionLogs().add(entry);
        log.added(entry, why + ": " + route.getName() + ", " + type.getName());
    }

    private void takeUpkeep(double ratio) {
        driven().stream().map(v -> v.vehicle().type()).distinct().sorted().map(study.getVehicleTypes()::get)
                .forEach(type -> log.set(type, VehiclesPackage.Literals.VEHICLE_TYPE__UPKEEP_FACTOR,
                        ratio * (type.getUpkeepFactor() > 0 ? type.getUpkeepFactor() : 1), why));
    }
}
