package org.amberyard.study;

import java.util.Optional;
import org.amberyard.core.battery.FadeState;
import org.amberyard.core.battery.PackWear;
import org.amberyard.core.plan.SecondHand;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.BusRecord;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;

/** Compiles what is known of the years of buses before the base year. */
final class BusRecordCompiler {
    private final Study study;

    BusRecordCompiler(Study study) {
        this.study = study;
    }

    org.amberyard.core.plan.BusRecord of(Bus bus) {
        return study.getBusRecords().stream().filter(r -> r.getBus() == bus).findFirst().map(this::compiled)
                .orElse(org.amberyard.core.plan.BusRecord.NONE);
    }

    private org.amberyard.core.plan.BusRecord compiled(BusRecord bus) {
        return new org.amberyard.core.plan.BusRecord(pack(bus), used(bus), tasks(bus));
    }

    /** Its pack, where the record tells all of it and the bus has one. */
    private static Optional<Vehicle.Pack> pack(BusRecord bus) {
        boolean told = bus.getPackYears() != null && bus.getPackKm() != null && bus.getPackFullCycles() != null
                && bus.getPackLossByAge() != null && bus.getPackLossByCycles() != null;
        return told && bus.getBus().getType() instanceof ElectricType
                ? Optional.of(new Vehicle.Pack(new PackWear(bus.getPackYears(), bus.getPackFullCycles(),
                        new FadeState(bus.getPackLossByAge(), bus.getPackLossByCycles())), bus.getPackKm(), bus.getPackPriceShare()))
                : Optional.empty();
    }

    private static Optional<Vehicle.Used> used(BusRecord bus) {
        return bus.getUsedPrice() > 0
                ? Optional.of(new Vehicle.Used(new SecondHand(bus.getUsedAgeYears(), bus.getUsedOdometerKm(), bus.getUsedPrice(), 1),
                        bus.getUsedPackLifeLeft()))
                : Optional.empty();
    }

    private Optional<org.amberyard.core.plan.BusRecord.TasksSince> tasks(BusRecord bus) {
        int year = bus.getTasksFromYear() - study.getSettings().getBaseYear();
        return bus.getTasksFromYear() > 0 && year < 0
                ? Optional.of(new org.amberyard.core.plan.BusRecord.TasksSince(year, bus.getTasksFromKm())) : Optional.empty();
    }
}
