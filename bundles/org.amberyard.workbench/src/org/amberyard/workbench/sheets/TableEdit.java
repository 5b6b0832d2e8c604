package org.amberyard.workbench.sheets;

import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.sheet.SheetImport;
import org.amberyard.model.study.Study;
import org.eclipse.emf.edit.command.ChangeCommand;
import org.eclipse.osgi.util.NLS;

/** The import of a table as one edit that can be undone. */
final class TableEdit extends ChangeCommand {
    private final Study study;
    private final SheetImport made;

    TableEdit(Study study, SheetImport made) {
        super(study);
        this.study = study;
        this.made = made;
        setLabel(NLS.bind(Messages.Table_done, made.sheet().place()));
    }

    @Override
    protected void doExecute() {
        try {
            made.into(study);
        } catch (ImportException e) {
            throw new IllegalStateException("The study is no longer the one that the table was tried on", e);
        }
    }
}
