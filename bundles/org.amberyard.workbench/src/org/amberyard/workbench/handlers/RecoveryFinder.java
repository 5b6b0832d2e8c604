package org.amberyard.workbench.handlers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DateFormat;
import java.util.Date;
import java.util.Optional;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.workbench.session.UntitledStudy;
import org.eclipse.core.runtime.ILog;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Shell;

/** Asks whether unsaved changes of an earlier run shall be brought back. */
final class RecoveryFinder {

    private static final int DECLINED = 1;

    private RecoveryFinder() {
    }

    /** The file to read in place of a study's own, when there is one and the user wants it; declined ones are removed. */
    static Optional<Path> ask(Shell shell, Path study) throws StudyFileException {
        Optional<Path> kept = RecoveryFile.find(study);
        if (kept.isEmpty()) {
            return kept;
        }
        String question = UntitledStudy.isPlace(study)
                ? NLS.bind(Messages.Open_recoverUntitled, time(kept.get()))
                : NLS.bind(Messages.Open_recover, study.getFileName(), time(kept.get()));
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, Messages.Open_recoverTitle, question, 0,
                Messages.Open_recoverYes, Messages.Open_recoverNo);
        if (answer != DECLINED) {
            // Whoever closes the question has not given the changes up.
            return kept;
        }
        RecoveryFile.discard(study);
        return Optional.empty();
    }

    private static String time(Path file) {
        try {
            Date written = new Date(Files.getLastModifiedTime(file).toMillis());
            return DateFormat.getDateTimeInstance(DateFormat.MEDIUM, DateFormat.SHORT).format(written);
        } catch (IOException e) {
            ILog.of(RecoveryFinder.class).warn(e.getMessage(), e);
            return "?";
        }
    }
}
