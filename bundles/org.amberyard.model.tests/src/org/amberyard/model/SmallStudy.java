package org.amberyard.model;

import org.amberyard.model.common.BodyType;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.funding.AwardStatus;
import org.amberyard.model.funding.BusAward;
import org.amberyard.model.funding.FundingFactory;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.plans.Plan;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PortPurchase;
import org.amberyard.model.plans.Replacement;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.model.routes.Route;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.Run;
import org.amberyard.model.routes.RunKind;
import org.amberyard.model.routes.Trip;
import org.amberyard.model.site.ServiceCalendar;
import org.amberyard.model.site.SiteFactory;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.CombustionType;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.VehiclesFactory;

/** A study with one of each thing that is right in every respect; tests spoil one value and look at what is said. */
public final class SmallStudy {
    public final Study study = StudyDefaults.create();
    public final ServiceCalendar school = SiteFactory.eINSTANCE.createServiceCalendar();
    public final Route route = RoutesFactory.eINSTANCE.createRoute();
    public final Run am;
    public final Run pm;
    public final CombustionType diesel = VehiclesFactory.eINSTANCE.createCombustionType();
    public final ElectricType electric = VehiclesFactory.eINSTANCE.createElectricType();
    public final Bus bus;
    public final Programme rebate = FundingFactory.eINSTANCE.createProgramme();
    public final BusAward award = FundingFactory.eINSTANCE.createBusAward();
    public final Plan plan = PlansFactory.eINSTANCE.createPlan();
    public final Replacement replacement = PlansFactory.eINSTANCE.createReplacement();
    public final PortPurchase ports = PlansFactory.eINSTANCE.createPortPurchase();

    public SmallStudy() {
        school.setName("School year");
        school.setSeptemberDays(21);
        school.setJuneDays(10);
        study.getCalendars().add(school);
        route.setName("R01");
        study.getRoutes().add(route);
        am = addRun("AM", RunKind.MORNING, 390);
        pm = addRun("PM", RunKind.AFTERNOON, 870);
        diesel.setName("C diesel");
        electric.setName("C electric");
        study.getVehicleTypes().add(diesel);
        study.getVehicleTypes().add(electric);
        bus = addBus("B01");
        bus.setRoute(route);
        rebate.setName("Rebate");
        rebate.setLastYear(2030);
        rebate.setStatus(AwardStatus.COMMITTED);
        rebate.setLetter("Letter of award");
        rebate.getBusAwards().add(award);
        study.getProgrammes().add(rebate);
        addPlan();
    }

    private void addPlan() {
        plan.setName("Electric");
        replacement.setBus(bus);
        replacement.setNewType(electric);
        replacement.getProgrammes().add(rebate);
        ports.setPortType(study.getDepot().getPortTypes().get(0));
        plan.getReplacements().add(replacement);
        plan.getPortPurchases().add(ports);
        study.getPlans().add(plan);
    }

    /** Adds a run of an hour to the route. */
    public Run addRun(String name, RunKind kind, int departureMin) {
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setName(name);
        run.setKind(kind);
        run.setCalendar(school);
        run.setDepartureMin(departureMin);
        route.getRuns().add(run);
        return run;
    }

    /** Adds a diesel route bus that has no route yet. */
    public Bus addBus(String name) {
        Bus added = FleetFactory.eINSTANCE.createBus();
        added.setName(name);
        added.setType(diesel);
        study.getBuses().add(added);
        return added;
    }

    /** Adds a log that is right in every respect, of 100 km with the electric type at 5 °C. */
    public ConsumptionLog addLog() {
        ConsumptionLog log = FleetFactory.eINSTANCE.createConsumptionLog();
        log.setType(electric);
        log.setOutsideC(5.0);
        log.setHours(4);
        log.setEnergyKwh(110);
        study.getConsumptionLogs().add(log);
        return log;
    }

    /** Adds a trace that is right in every respect: 100 m in 20 s, up and down by 3 m. */
    public DriveTrace addTrace() {
        DriveTrace trace = RoutesFactory.eINSTANCE.createDriveTrace();
        trace.setName("Measured");
        trace.setTimesS("0 10 20");
        trace.setSpeedsMps("0 10 0");
        trace.setElevationsM("100 103 100");
        study.getTraces().add(trace);
        return trace;
    }

    /** Adds a trip that is right in every respect, of 80 km and 5 h, which bus B01 drives as its other distance. */
    public Trip addTrip(String name, String date) {
        Trip trip = RoutesFactory.eINSTANCE.createTrip();
        trip.setName(name);
        trip.setDate(date);
        trip.setBus(bus);
        study.getTrips().add(trip);
        bus.setOtherKmPerYear(bus.getOtherKmPerYear() + trip.getRoundTripKm());
        return trip;
    }

    /** Adds a diesel type of a body type. */
    public CombustionType addDiesel(String name, BodyType body) {
        CombustionType type = VehiclesFactory.eINSTANCE.createCombustionType();
        type.setName(name);
        type.setBodyType(body);
        study.getVehicleTypes().add(type);
        return type;
    }

    /** Adds a route bus type of another body with a route and a bus of its own. */
    public Bus addSmallBus(String name) {
        Route own = RoutesFactory.eINSTANCE.createRoute();
        own.setName("Route of " + name);
        own.setBodyType(BodyType.A);
        Run run = RoutesFactory.eINSTANCE.createRun();
        run.setName("AM");
        run.setCalendar(school);
        own.getRuns().add(run);
        study.getRoutes().add(own);
        Bus small = addBus(name);
        small.setType(addDiesel("A diesel", BodyType.A));
        small.setRoute(own);
        return small;
    }
}
