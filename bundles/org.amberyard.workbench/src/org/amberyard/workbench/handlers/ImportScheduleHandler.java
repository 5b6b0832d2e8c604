package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.gtfs.GtfsFeed;
import org.amberyard.exchange.gtfs.GtfsImport;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.jface.window.Window;
import org.eclipse.swt.widgets.Shell;

/** Looks into a transit schedule, asks for days and blocks, reads them, and puts them into the study when that is agreed to. */
public final class ImportScheduleHandler extends ImportHandler<GtfsFeed> {

    @Override
    Words words() {
        return new Words(Messages.Gtfs_title, Messages.Gtfs_fileKind, "*.zip;*.txt", Messages.Gtfs_failed);
    }

    @Override
    FileReading<GtfsFeed> reading(Path file, StudyEditor editor) {
        return new ScheduleLook(file);
    }

    @Override
    void offer(GtfsFeed feed, Shell shell, StudyEditor editor) {
        ScheduleDialog dialog = new ScheduleDialog(shell, feed);
        if (dialog.open() == Window.OK) {
            new ScheduleReading(feed, dialog.choice()).readThen(editor, words().failed(), imported -> offer(imported, shell, editor));
        }
    }

    private void offer(GtfsImport imported, Shell shell, StudyEditor editor) {
        UpdateAddition addition = new UpdateAddition(editor.session(), imported.update(editor.session().study()));
        String words = addition.words(imported.sentences(editor.session().study()));
        if (MessageDialog.openConfirm(shell, Messages.Gtfs_offer, words + "\n\n" + Messages.Gtfs_next)) {
            addition.add(Messages.Gtfs_imported);
            editor.session().study().getRoutes().stream().filter(r -> imported.blocks().contains(r.getName())).findFirst()
                    .ifPresent(r -> editor.reveal(r, null));
        }
    }
}
