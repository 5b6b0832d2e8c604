package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.amberyard.model.io.FileSum;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.eclipse.core.runtime.ICoreRunnable;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Display;

/** Keeps unsaved changes in a file beside the study, so that they outlive the program. */
final class RecoveryKeeper {

    private final StudySession session;
    private final Display display;
    private final int delayMs;
    private final Path untitledPlace;
    private final Runnable keep = this::keep;
    private boolean scheduled;
    /** True when the recovery file on the disk is this session's: written by it, or brought back into it. */
    private boolean owned;
    private volatile Job writing;

    /**
     * @param delayMs longest time that an edit lives in memory only, in milliseconds
     * @param untitledPlace where changes are kept as long as the study has no file, or shares it with another program
     * @param recovered true when the session has begun with what was kept there
     */
    RecoveryKeeper(StudySession session, Display display, int delayMs, Path untitledPlace, boolean recovered) {
        this.session = session;
        this.display = display;
        this.delayMs = delayMs;
        this.untitledPlace = untitledPlace;
        this.owned = recovered;
    }

    void studyChanged() {
        if (!scheduled) {
            scheduled = true;
            display.timerExec(delayMs, keep);
        }
    }

    private void keep() {
        scheduled = false;
        if (!session.isDirty()) {
            discard();
            return;
        }
        owned = true;
        Study copy = StudyFile.copy(session.study());
        Path file = file();
        FileSum changed = session.version();
        writing = Job.createSystem(Messages.RecoveryJob_name, (ICoreRunnable) monitor -> write(copy, file, changed));
        writing.schedule();
    }

    private static void write(Study copy, Path file, FileSum changed) {
        try {
            Files.createDirectories(file.toAbsolutePath().getParent());
            RecoveryFile.write(copy, file, changed);
        } catch (StudyFileException | IOException e) {
            // A folder that takes no files must not keep anyone from working.
            ILog.of(RecoveryKeeper.class).warn(e.getMessage(), e);
        }
    }

    /** Removes the file: the changes have been saved, or given up. */
    void discard() {
        display.timerExec(-1, keep);
        scheduled = false;
        try {
            if (writing != null) {
                writing.join();
            }
            if (owned) {
                RecoveryFile.discard(file());
                owned = false;
            }
        } catch (StudyFileException e) {
            ILog.of(RecoveryKeeper.class).warn(e.getMessage(), e);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    /** Beside the study's file; where another program edits that too, the place there is that program's. */
    private Path file() {
        return session.file().filter(f -> !session.isShared()).orElse(untitledPlace);
    }
}
