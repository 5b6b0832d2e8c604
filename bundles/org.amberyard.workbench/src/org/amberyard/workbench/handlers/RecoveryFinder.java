package org.amberyard.workbench.handlers;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.DateFormat;
import java.util.Date;
import java.util.Optional;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyFile;
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
        int answer = MessageDialog.open(MessageDialog.QUESTION, shell, Messages.Open_recoverTitle, question(study, kept.get()), 0,
                Messages.Open_recoverYes, Messages.Open_recoverNo);
        if (answer != DECLINED) {
            // Whoever closes the question has not given the changes up.
            return kept;
        }
        RecoveryFile.discard(study);
        return Optional.empty();
    }

    /** Says which study it is about, where it is and how old each version is. */
    private static String question(Path study, Path kept) {
        return UntitledStudy.isPlace(study) ? NLS.bind(Messages.Open_recoverUntitled, name(kept, study), time(kept))
                : NLS.bind(Messages.Open_recover, new Object[] {name(kept, study), study.getFileName(), study.getParent(), time(kept),
                    Files.exists(study) ? time(study) : Messages.Open_recoverFileGone});
    }

    /** The study's own name; that of its file where what was kept cannot be read, which is said when it is brought back. */
    private static String name(Path kept, Path study) {
        try {
            return StudyFile.load(kept).getName();
        } catch (StudyFileException e) {
            return String.valueOf(study.getFileName());
        }
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
