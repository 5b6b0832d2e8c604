package org.amberyard.model.validation;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.amberyard.model.fleet.Bus;
import org.amberyard.model.fleet.BusRecord;
import org.amberyard.model.fleet.FleetPackage.Literals;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** A bus has one record; what it tells of the pack is whole, and its years are over. */
final class BusRecordRule implements Rule {
    private static final List<EAttribute> PACK = List.of(Literals.BUS_RECORD__PACK_YEARS, Literals.BUS_RECORD__PACK_KM,
            Literals.BUS_RECORD__PACK_FULL_CYCLES, Literals.BUS_RECORD__PACK_LOSS_BY_AGE,
            Literals.BUS_RECORD__PACK_LOSS_BY_CYCLES);

    @Override
    public void check(Study study, Findings findings) {
        Set<Bus> told = new HashSet<>();
        for (BusRecord bus : study.getBusRecords()) {
            if (bus.getBus() != null && !told.add(bus.getBus())) {
                findings.error(bus, Literals.BUS_RECORD__BUS, "the bus has a record already; keep one row for each bus.");
            }
            checkPack(bus, findings);
            checkTasks(bus, study, findings);
        }
    }

    private static void checkPack(BusRecord bus, Findings findings) {
        List<EAttribute> empty = PACK.stream().filter(field -> bus.eGet(field) == null).toList();
        if (!empty.isEmpty() && empty.size() < PACK.size()) {
            findings.error(bus, empty.get(0), "it is empty, but other fields tell of the pack; fill in “"
                    + Phrase.inside(FieldInfo.of(empty.get(0)).label()) + "” or empty them all.");
        }
    }

    private static void checkTasks(BusRecord bus, Study study, Findings findings) {
        int base = study.getSettings() == null ? Integer.MAX_VALUE : study.getSettings().getBaseYear();
        if (bus.getTasksFromYear() > base) {
            findings.error(bus, Literals.BUS_RECORD__TASKS_FROM_YEAR, findings.fact(bus, Literals.BUS_RECORD__TASKS_FROM_YEAR)
                    + ", after the base year " + base + "; it must be the base year or an earlier one.");
        }
    }
}
