package org.amberyard.workbench.editor;

import java.util.List;
import org.amberyard.exchange.DefaultFactors;
import org.amberyard.model.study.EmissionFactors;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.common.command.CompoundCommand;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.edit.command.AddCommand;

/** Fills each table of emission factors that is empty with the default ones, as one edit that can be undone. */
final class AddDefaultFactors {
    private final StudySession session;

    AddDefaultFactors(StudySession session) {
        this.session = session;
    }

    void run() {
        EmissionFactors factors = session.study().getEmissionFactors();
        EmissionFactors defaults = DefaultFactors.all();
        CompoundCommand edit = new CompoundCommand(Messages.DefaultFactors);
        for (EReference table : factors.eClass().getEReferences()) {
            List<EObject> rows = rows(defaults, table);
            if (rows(factors, table).isEmpty() && !rows.isEmpty()) {
                edit.append(AddCommand.create(session.domain(), factors, table, rows));
            }
        }
        if (!edit.isEmpty()) {
            session.execute(edit);
        }
    }

    private static List<EObject> rows(EmissionFactors factors, EReference table) {
        return ((List<?>) factors.eGet(table)).stream().map(EObject.class::cast).toList();
    }
}
