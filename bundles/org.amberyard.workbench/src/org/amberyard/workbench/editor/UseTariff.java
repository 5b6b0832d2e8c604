package org.amberyard.workbench.editor;

import java.util.List;
import org.amberyard.model.depot.Depot;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.Tariff;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.emf.edit.command.RemoveCommand;
import org.eclipse.emf.edit.command.SetCommand;
import org.eclipse.emf.edit.domain.EditingDomain;
import org.eclipse.osgi.util.NLS;

/** Puts a tariff into use and the one that was in use in its place, as one edit that can be undone. */
final class UseTariff {
    private final StudySession session;

    UseTariff(StudySession session) {
        this.session = session;
    }

    /** @param chosen a tariff of the study; nothing happens when it is in use already */
    void run(Tariff chosen) {
        Depot depot = session.study().getDepot();
        if (chosen == depot.getTariff()) {
            return;
        }
        EditingDomain domain = session.domain();
        int place = depot.getAlternativeTariffs().indexOf(chosen);
        CompoundCommand swap = new CompoundCommand(NLS.bind(Messages.UseTariff_done, chosen.getName()));
        swap.append(new RemoveCommand(domain, depot, Literals.DEPOT__ALTERNATIVE_TARIFFS, chosen));
        Tariff before = depot.getTariff();
        swap.append(new SetCommand(domain, depot, Literals.DEPOT__TARIFF, chosen));
        if (before != null) {
            swap.append(new AddCommand(domain, depot, Literals.DEPOT__ALTERNATIVE_TARIFFS, List.of(before), place));
        }
        session.execute(swap);
    }
}
