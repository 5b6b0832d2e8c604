package org.amberyard.workbench.handlers;

import java.util.List;
import org.amberyard.exchange.MeterImport;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;

/** Makes imported days the building's load, in place of those of the same months, as one step that can be undone. */
public final class MeterAddition {

    private final StudySession session;
    private final MeterImport imported;

    /** An addition to the study of a session. */
    public MeterAddition(StudySession session, MeterImport imported) {
        this.session = session;
        this.imported = imported;
    }

    /** Adds the days; answers the first. */
    public BuildingLoadDay add() {
        Depot depot = session.study().getDepot();
        imported.keepSolar(depot);
        CompoundCommand change = new CompoundCommand(Messages.Meter_added);
        replace(change, DepotPackage.Literals.DEPOT__BUILDING_LOAD_DAYS, imported.replaced(depot), imported.days());
        replace(change, DepotPackage.Literals.DEPOT__METER_DAYS, imported.replacedDates(depot), imported.dated());
        session.execute(change);
        return imported.days().get(0);
    }

    private void replace(CompoundCommand change, EReference days, List<?> old, List<?> now) {
        Depot depot = session.study().getDepot();
        if (!old.isEmpty()) {
            change.append(new RemoveCommand(session.domain(), depot, days, old));
        }
        if (!now.isEmpty()) {
            change.append(new AddCommand(session.domain(), depot, days, now));
        }
    }
}
