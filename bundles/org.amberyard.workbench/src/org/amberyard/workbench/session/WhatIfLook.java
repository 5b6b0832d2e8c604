package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputDifferences.Difference;
import org.amberyard.study.whatif.EarlierRun;
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
     * @param then the study of that run, where it is another than the one looked at and can be told of
     * @param changes what differs between the study that was run, or is kept, and the one looked at
     */
    record Seen(String fingerprint, Optional<SavedRun> kept, Optional<Study> then, List<Difference> changes) {
    }

    private final Study study;
    private final Optional<Path> file;
    private final Optional<Study> ran;
    private final Consumer<Seen> seen;

    /**
     * @param study a copy that nobody edits
     * @param file the study's file, where a run is to be looked for
     * @param ran the study whose results are on show, which nobody edits
     * @param seen told on the thread of the job
     */
    WhatIfLook(Study study, Optional<Path> file, Optional<Study> ran, Consumer<Seen> seen) {
        super(Messages.WhatIf_job);
        this.study = study;
        this.file = file;
        this.ran = ran;
        this.seen = seen;
        setSystem(true);
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Optional<SavedRun> kept = file.flatMap(WhatIfLook::read);
        String fingerprint = StudyFingerprint.of(study);
        Optional<Study> then = kept.filter(run -> !run.fingerprint().equals(fingerprint)).flatMap(EarlierRun::study);
        List<Difference> changes = ran.or(() -> then).map(earlier -> EarlierRun.changes(earlier, study)).orElse(List.of());
        seen.accept(new Seen(fingerprint, kept, then, changes));
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
