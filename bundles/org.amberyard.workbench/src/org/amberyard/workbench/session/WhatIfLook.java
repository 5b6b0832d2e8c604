package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.model.study.Study;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.study.whatif.StudyFingerprint;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;

/** Reads what is kept of a what-if beside a study's file, and tells which state the study is in, off the event thread. */
final class WhatIfLook extends Job {

    /**
     * What it has seen.
     *
     * @param fingerprint of the study
     * @param kept the run beside the file; empty where none was asked for, or there is none that can be read
     */
    record Seen(String fingerprint, Optional<SavedRun> kept) {
    }

    private final Study study;
    private final Optional<Path> file;
    private final Consumer<Seen> seen;

    /**
     * @param study a copy that nobody edits
     * @param file the study's file, where a run is to be looked for
     * @param seen told on the thread of the job
     */
    WhatIfLook(Study study, Optional<Path> file, Consumer<Seen> seen) {
        super(Messages.WhatIf_job);
        this.study = study;
        this.file = file;
        this.seen = seen;
        setSystem(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        seen.accept(new Seen(StudyFingerprint.of(study), file.flatMap(WhatIfLook::read)));
        return Status.OK_STATUS;
    }

    private static Optional<SavedRun> read(Path file) {
        try {
            return WhatIfFile.read(WhatIfFile.beside(file));
        } catch (IOException e) {
            ILog.of(WhatIfLook.class).warn(e.getMessage(), e);
            return Optional.empty();
        }
    }
}
