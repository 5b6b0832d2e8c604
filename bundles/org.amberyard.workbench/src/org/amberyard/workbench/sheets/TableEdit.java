package org.amberyard.workbench.sheets;

import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.model.study.Study;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.osgi.util.NLS;

/** The import of a table as one edit that can be undone: what was found out on a copy is done, and nothing is read again. */
final class TableEdit extends ChangeCommand {
    private final Study study;
    private final SheetImport.Preview found;

    /**
     * @param place the sheet, for the name of the edit
     * @param found what the import does, without problems
     */
    TableEdit(Study study, String place, SheetImport.Preview found) {
        super(study);
        this.study = study;
        this.found = found;
        setLabel(NLS.bind(Messages.Table_done, place));
    }

    @Override
    protected void doExecute() {
        try {
            found.into(study);
        } catch (ImportException e) {
            throw new IllegalStateException("A table with problems is not offered for import", e);
        }
    }
}
