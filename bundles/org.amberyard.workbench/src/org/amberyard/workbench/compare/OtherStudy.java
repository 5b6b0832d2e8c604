package org.amberyard.workbench.compare;

import java.nio.file.Path;
import java.util.concurrent.CancellationException;
import java.util.function.BiConsumer;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.report.papers.Assumptions;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;
import org.amberyard.study.StudyFindings;
import org.amberyard.workbench.work.JobProgress;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/** Reads and evaluates another study in the background; its file is left alone. */
final class OtherStudy extends Job {

    private final Path file;
    private final UnitSystem units;
    private final BiConsumer<Evaluated, String> whenDone;

    /** @param whenDone is told the study, or null and why there is none; not on the event thread */
    OtherStudy(Path file, UnitSystem units, BiConsumer<Evaluated, String> whenDone) {
        super(NLS.bind(Messages.Compare_reading, file.getFileName()));
        this.file = file;
        this.units = units;
        this.whenDone = whenDone;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            Study study = StudyFile.load(file);
            if (!StudyFindings.canEvaluate(StudyFindings.of(study))) {
                whenDone.accept(null, NLS.bind(Messages.Compare_cannot, file.getFileName()));
                return Status.OK_STATUS;
            }
            Evaluated other = Evaluated.of(file.getFileName().toString(), study,
                    new StudyEvaluator().evaluate(StudyCompiler.compile(study), done -> JobProgress.goOn(monitor)), units,
                    Assumptions.of(study));
            if (!monitor.isCanceled()) {
                whenDone.accept(other, "");
            }
        } catch (CancellationException e) {
            return Status.CANCEL_STATUS;
        } catch (StudyFileException | IllegalArgumentException e) {
            whenDone.accept(null, e.getMessage());
        }
        return monitor.isCanceled() ? Status.CANCEL_STATUS : Status.OK_STATUS;
    }
}
