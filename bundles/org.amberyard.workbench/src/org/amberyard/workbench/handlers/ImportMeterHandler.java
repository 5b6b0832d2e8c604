package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.MeterImport;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Reads a meter's interval data, says what was read and assumed, and makes it the building's load when that is agreed to. */
public final class ImportMeterHandler extends ImportHandler<MeterImport> {

    @Override
    Words words() {
        return new Words(Messages.Meter_title, Messages.Meter_fileKind, "*.csv", Messages.Meter_failed);
    }

    @Override
    FileReading<MeterImport> reading(Path file, StudyEditor editor) {
        return new MeterReading(file, editor.session().study().getDepot().getBuildingMonths());
    }

    @Override
    void offer(MeterImport imported, Shell shell, StudyEditor editor) {
        if (MessageDialog.openConfirm(shell, Messages.Meter_offer, String.join("\n", imported.sentences()))) {
            editor.reveal(new MeterAddition(editor.session(), imported).add(), null);
        }
    }
}
