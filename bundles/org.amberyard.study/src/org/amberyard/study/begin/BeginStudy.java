package org.amberyard.study.begin;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.ToDoubleFunction;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.Role;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.prices.FuelPrice;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.Fuel;
import org.amberyard.model.vehicles.VehicleType;

/**
 * A whole study of a few answers, ready to be evaluated: as many alike routes as buses, a fleet of one body type or several whose ages lie
 * evenly between two years, a year whose temperatures swing evenly, and two plans: like for like, and electric by a year, the oldest buses first. All of
 * it is marked as assumed, so that the register of inputs says what is still to be found out.
 */
public final class BeginStudy {
    private static final String ENTERED = "entered when the study was begun";
    private static final String ASSUMED = "assumed when the study was begun: all routes alike, ages spread evenly; replace by the district's own";
    private static final int FIRST_DEPARTURE_MIN = 6 * 60 + 20;
    private static final int AFTERNOON_MIN = 8 * 60;
    private static final int BETWEEN_DEPARTURES_MIN = 5;
    private static final int WAVES = 6;
    private static final double MIN_PER_H = 60;

    private final Answers answers;
    private final Study study = StudyDefaults.create();
    private final Map<BodyType, ElectricType> electricOf = new EnumMap<>(BodyType.class);
    private final List<Bus> onRoutes = new ArrayList<>();

    private BeginStudy(Answers answers) {
        this.answers = answers;
    }

    /** The study of some answers. */
    public static Study of(Answers answers) {
        return with(answers, bodies -> PackSize.kwh(answers, bodies));
    }

    /**
     * The study of some answers.
     *
     * @param packKwh nominal energy of the pack of the electric buses of a body type
     */
    static Study with(Answers answers, ToDoubleFunction<Answers.Bodies> packKwh) {
        BeginStudy begin = new BeginStudy(answers);
        begin.study.setName(answers.name());
        begin.study.getSettings().setBaseYear(answers.baseYear());
        begin.study.getSettings().setUnits(answers.units());
        begin.study.getDepot().setName(answers.name());
        begin.study.getSite().setName(answers.name());
        EvenYear.write(begin.study.getSite(), answers.weather());
        note(begin.study.getSite(), EvenYear.SOURCE);
        begin.addPrices();
        begin.addCalendar();
        for (Answers.Bodies bodies : answers.fleet().bodies()) {
            CombustionType engine = AssumedTypes.engine(bodies.type(), Fuel.DIESEL);
            begin.addType(engine, bodies.engineBus());
            ElectricType electric = AssumedTypes.electric(bodies.type());
            electric.setBatteryKwh(packKwh.applyAsDouble(bodies));
            begin.addType(electric, bodies.electricBus());
            note(electric, "batteryKwh", PackSize.SOURCE);
            begin.electricOf.put(bodies.type(), electric);
            begin.addBuses(bodies, engine);
        }
        begin.addPlan();
        return begin.study;
    }

    static void note(Sourced element, String citation) {
        element.getSources().add(SourceNotes.of(SourceNotes.EVERY_FIELD, Quality.ASSUMED, citation, null));
    }

    private void addPrices() {
        study.getPrices().stream().filter(FuelPrice.class::isInstance).map(FuelPrice.class::cast).filter(p -> p.getFuel() == Fuel.DIESEL)
                .forEach(p -> {
                    p.setPricePerL(answers.prices().dieselPerL());
                    note(p, ENTERED);
                });
        FlatTariff tariff = (FlatTariff) study.getDepot().getTariff();
        tariff.setEnergyPricePerKwh(answers.prices().energyPerKwh());
        tariff.setDemandPricePerKw(answers.prices().demandPerKw());
        note(tariff, ENTERED);
    }

    private static void note(Sourced element, String field, String citation) {
        element.getSources().add(SourceNotes.of(field, Quality.ASSUMED, citation, null));
    }

    private void addType(VehicleType type, double price) {
        type.setPurchasePrice(price);
        note(type, "purchasePrice", ENTERED);
        study.getVehicleTypes().add(type);
    }

    private void addCalendar() {
        ServiceCalendar calendar = SchoolYear.of(answers.day().daysPerYear());
        note(calendar, SchoolYear.SOURCE);
        study.getCalendars().add(calendar);
        if (answers.fleet().spares() == 0) {
            study.getSettings().setSpareCoverShare(0);
        }
    }

    private void addBuses(Answers.Bodies bodies, VehicleType type) {
        int all = bodies.onRoutes() + bodies.spares();
        for (int place = 0; place < all; place++) {
            boolean spare = place >= bodies.onRoutes();
            Bus bus = bus(place, spare, all, type);
            if (!spare) {
                Route route = route(bodies.type());
                study.getRoutes().add(route);
                bus.setRoute(route);
                onRoutes.add(bus);
            }
            study.getBuses().add(bus);
        }
    }

    /** Spares are the oldest buses of their body type. */
    private Bus bus(int place, boolean spare, int all, VehicleType type) {
        Answers.Fleet fleet = answers.fleet();
        double share = all == 1 ? 0 : (double) (all - 1 - place) / (all - 1);
        int year = (int) Math.round(fleet.oldestYear() + share * (fleet.newestYear() - fleet.oldestYear()));
        double routeKm = answers.day().km() * answers.day().daysPerYear();
        double kmPerYear = spare ? spareKm(routeKm) : routeKm;
        Bus bus = FleetFactory.eINSTANCE.createBus();
        bus.setName(String.format(Locale.ROOT, "B%02d", study.getBuses().size() + 1));
        bus.setRole(spare ? Role.SPARE : Role.ROUTE);
        bus.setType(type);
        bus.setModelYear(year);
        bus.setEngineModelYear(year - 1);
        bus.setInServiceYear(year);
        bus.setOdometerKm(kmPerYear * Math.max(0, answers.baseYear() - year));
        bus.setOtherKmPerYear(spare ? kmPerYear : 0);
        note(bus, ASSUMED);
        return bus;
    }

    /** What the route buses do not drive because spares stand in for them. */
    private double spareKm(double routeKm) {
        return study.getSettings().getSpareCoverShare() * routeKm * answers.fleet().onRoutes() / answers.fleet().spares();
    }

    private Route route(BodyType bodyType) {
        int place = study.getRoutes().size();
        ServiceCalendar calendar = study.getCalendars().get(study.getCalendars().size() - 1);
        Route route = RoutesFactory.eINSTANCE.createRoute();
        route.setName(String.format(Locale.ROOT, "R%02d", place + 1));
        route.setBodyType(bodyType);
        int departure = FIRST_DEPARTURE_MIN + place % WAVES * BETWEEN_DEPARTURES_MIN;
        route.getRuns().add(run("AM", RunKind.MORNING, departure, calendar));
        route.getRuns().add(run("PM", RunKind.AFTERNOON, departure + AFTERNOON_MIN, calendar));
        note(route, ASSUMED);
        return route;
    }

    private Run run(String name, RunKind kind, int departureMin, ServiceCalendar calendar) {
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setName(name);
        run.setKind(kind);
        run.setCalendar(calendar);
        run.setDepartureMin(departureMin);
        run.setDurationMin(answers.day().hours() * MIN_PER_H / 2);
        run.setDistanceKm(answers.day().km() / 2);
        return run;
    }

    /** Evenly from the second year on, the oldest buses first, with a port for each. */
    private void addPlan() {
        study.getBaseline().setName("Like for like");
        Plan plan = PlansFactory.eINSTANCE.createPlan();
        plan.setName("Electric by " + answers.electricBy());
        int years = Math.max(1, answers.electricBy() - answers.baseYear());
        List<Bus> oldestFirst = new ArrayList<>(onRoutes);
        oldestFirst.sort((a, b) -> a.getInServiceYear() - b.getInServiceYear());
        int[] perYear = new int[years];
        for (int turn = 0; turn < oldestFirst.size(); turn++) {
            int year = turn * years / oldestFirst.size();
            perYear[year]++;
            Bus bus = oldestFirst.get(turn);
            plan.getReplacements().add(step(bus, answers.baseYear() + 1 + year, electricOf.get(bus.getType().getBodyType())));
        }
        for (int year = 0; year < years; year++) {
            if (perYear[year] > 0) {
                plan.getPortPurchases().add(ports(answers.baseYear() + 1 + year, perYear[year]));
            }
        }
        note(plan, ASSUMED);
        study.getPlans().add(plan);
    }

    private static Replacement step(Bus bus, int year, ElectricType type) {
        Replacement step = PlansFactory.eINSTANCE.createReplacement();
        step.setBus(bus);
        step.setYear(year);
        step.setNewType(type);
        return step;
    }

    private PortPurchase ports(int year, int count) {
        PortPurchase ports = PlansFactory.eINSTANCE.createPortPurchase();
        ports.setYear(year);
        ports.setPortType(study.getDepot().getPortTypes().get(0));
        ports.setCount(count);
        return ports;
    }
}
