package org.amberyard.study.roll;

import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.BusRecord;
import org.amberyard.model.fleet.FleetFactory;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Writes what is known of the years before the new base year into the records of buses. */
final class BusRecords {
    private static final String DRIVEN = "as driven by the new base year";

    private final Study study;
    private final RollLog log;
    private final Map<String, Bus> before;
    private final int oldBase;
    private final Map<String, BusRecord> told = new HashMap<>();

    /** @param before buses that stood at the old base date, by number */
    BusRecords(Study study, RollLog log, Map<String, Bus> before, int oldBase) {
        this.study = study;
        this.log = log;
        this.before = before;
        this.oldBase = oldBase;
        study.getBusRecords().stream().filter(r -> r.getBus() != null)
                .forEach(r -> told.put(r.getBus().getName(), EcoreUtil.copy(r)));
    }

    /** Writes the record of the bus that stands in a place, where there is something to tell. */
    void write(Bus bus, Vehicle vehicle) {
        boolean electric = study.getVehicleTypes().get(vehicle.type()) instanceof ElectricType;
        boolean tasks = !study.getMaintenanceTasks().isEmpty();
        if (!electric && !tasks && vehicle.used().isEmpty()) {
            forget(bus);
            return;
        }
        BusRecord kept = study.getBusRecords().stream().filter(r -> r.getBus() == bus).findFirst().orElseGet(() -> added(bus));
        writePack(kept, vehicle, electric);
        writeUsed(kept, vehicle);
        if (tasks) {
            writeTasks(kept, vehicle, before.containsKey(vehicle.unit()) && !vehicle.unit().equals(bus.getName()));
        }
    }

    /** No bus of the record stands in a place any more. */
    void forget(Bus bus) {
        study.getBusRecords().stream().filter(r -> r.getBus() == bus).toList().forEach(this::remove);
    }

    private void remove(BusRecord empty) {
        log.goes(empty, "the bus that it told of is no longer there");
        study.getBusRecords().remove(empty);
    }

    private BusRecord added(Bus bus) {
        BusRecord fresh = FleetFactory.eINSTANCE.createBusRecord();
        fresh.setBus(bus);
        study.getBusRecords().add(fresh);
        return fresh;
    }

    private void writePack(BusRecord of, Vehicle vehicle, boolean electric) {
        PackWear wear = vehicle.pack().wear();
        set(of, Literals.BUS_RECORD__PACK_YEARS, electric ? wear.years() : null);
        set(of, Literals.BUS_RECORD__PACK_KM, electric ? vehicle.pack().km() : null);
        set(of, Literals.BUS_RECORD__PACK_FULL_CYCLES, electric ? wear.fullCycles() : null);
        set(of, Literals.BUS_RECORD__PACK_LOSS_BY_AGE, electric ? wear.fade().calendarLoss() : null);
        set(of, Literals.BUS_RECORD__PACK_LOSS_BY_CYCLES, electric ? wear.fade().cycleLoss() : null);
        set(of, Literals.BUS_RECORD__PACK_PRICE_SHARE, vehicle.pack().priceShare());
    }

    private void writeUsed(BusRecord of, Vehicle vehicle) {
        Optional<Vehicle.Used> used = vehicle.used();
        set(of, Literals.BUS_RECORD__USED_AGE_YEARS, used.map(u -> u.as().ageYears()).orElse(0));
        set(of, Literals.BUS_RECORD__USED_ODOMETER_KM, used.map(u -> u.as().odometerKm()).orElse(0.0));
        set(of, Literals.BUS_RECORD__USED_PRICE, used.map(u -> u.as().price()).orElse(0.0));
        set(of, Literals.BUS_RECORD__USED_PACK_LIFE_LEFT, used.map(Vehicle.Used::packLifeLeft).orElse(1.0));
    }

    /** Tasks go on from the year in which the study first saw the bus; those of a bus that has moved start evenly. */
    private void writeTasks(BusRecord of, Vehicle vehicle, boolean moved) {
        if (moved) {
            set(of, Literals.BUS_RECORD__TASKS_FROM_YEAR, 0);
            set(of, Literals.BUS_RECORD__TASKS_FROM_KM, 0.0);
            return;
        }
        Optional<BusRecord> earlier = Optional.ofNullable(told.get(vehicle.unit())).filter(r -> r.getTasksFromYear() > 0);
        Optional<Bus> known = Optional.ofNullable(before.get(vehicle.unit()));
        int bought = oldBase + vehicle.used().map(u -> vehicle.inServiceYear() + u.as().ageYears()).orElse(vehicle.inServiceYear());
        double boughtKm = vehicle.used().map(u -> u.as().odometerKm()).orElse(0.0);
        set(of, Literals.BUS_RECORD__TASKS_FROM_YEAR, earlier.map(BusRecord::getTasksFromYear)
                .orElse(known.isPresent() ? oldBase : bought));
        set(of, Literals.BUS_RECORD__TASKS_FROM_KM, earlier.map(BusRecord::getTasksFromKm)
                .orElse(known.map(Bus::getOdometerKm).orElse(boughtKm)));
    }

    private void set(BusRecord of, EAttribute field, Object value) {
        log.set(of, field, value, DRIVEN);
    }
}
