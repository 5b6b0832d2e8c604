package org.amberyard.workbench.handlers;

import org.amberyard.exchange.MeterImport;
import org.amberyard.model.depot.BuildingLoadDay;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.CompoundCommand;
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
        if (!imported.replaced(depot).isEmpty()) {
            change.append(new RemoveCommand(session.domain(), depot, DepotPackage.Literals.DEPOT__BUILDING_LOAD_DAYS,
                    imported.replaced(depot)));
        }
        change.append(new AddCommand(session.domain(), depot, DepotPackage.Literals.DEPOT__BUILDING_LOAD_DAYS, imported.days()));
        session.execute(change);
        return imported.days().get(0);
    }
}
