package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.time.DateTimeException;
import java.time.ZoneId;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.MeterImport;
import org.amberyard.exchange.MeterSource;
import org.amberyard.model.depot.Depot;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.jface.dialogs.InputDialog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;

/** Reads a meter's interval data, says what was read and assumed, and makes it the building's load when that is agreed to. */
public final class ImportMeterHandler extends ImportHandler<MeterSource> {

    @Override
    Words words() {
        return new Words(Messages.Meter_title, Messages.Meter_fileKind, "*.csv;*.xml", Messages.Meter_failed);
    }

    @Override
    FileReading<MeterSource> reading(Path file, StudyEditor editor) {
        return new MeterReading(file);
    }

    @Override
    void offer(MeterSource source, Shell shell, StudyEditor editor) {
        OptionalInt meter = NameChoice.ask(shell, Messages.Meter_title, Messages.Meter_choose, source.meters());
        if (meter.isPresent()) {
            zone(source, meter.getAsInt(), shell).ifPresent(zone -> offer(source, meter.getAsInt(), zone, shell, editor));
        }
    }

    private void offer(MeterSource source, int meter, ZoneId zone, Shell shell, StudyEditor editor) {
        try {
            Depot depot = editor.session().study().getDepot();
            MeterImport imported = source.load(meter, zone, depot.getBuildingMonths());
            String words = UpdateAddition.words(imported.sentences(), imported.changes(depot));
            if (MessageDialog.openConfirm(shell, Messages.Meter_offer, words)) {
                editor.reveal(new MeterAddition(editor.session(), imported).add(), null);
            }
        } catch (ImportException e) {
            refuse(e, shell);
        }
    }

    /** The zone of the meter's clock, which is asked only where the file does not tell; empty when the question is put away. */
    private static Optional<ZoneId> zone(MeterSource source, int meter, Shell shell) {
        ZoneId here = ZoneId.systemDefault();
        if (!source.needsClock(meter)) {
            return Optional.of(here);
        }
        InputDialog dialog = new InputDialog(shell, Messages.Meter_title, Messages.Meter_zone, here.getId(),
                text -> zone(text).isPresent() ? null : Messages.Meter_noZone);
        return dialog.open() == Window.OK ? zone(dialog.getValue()) : Optional.empty();
    }

    private static Optional<ZoneId> zone(String text) {
        try {
            return Optional.of(ZoneId.of(text.strip()));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
