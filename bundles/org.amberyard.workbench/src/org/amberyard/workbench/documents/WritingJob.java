package org.amberyard.workbench.documents;

import java.io.IOException;
import java.nio.file.FileSystemException;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.CancellationException;
import java.util.function.DoubleConsumer;
import org.amberyard.core.progress.Progress;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.DocumentKind;
import org.amberyard.report.papers.NarrativeFigures;
import org.amberyard.report.papers.NarrativeFilling;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.workbench.work.JobProgress;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.osgi.util.NLS;

/**
 * Writes documents in the background. What stands in the place of the names of narratives is read first, so that nothing can fail
 * once files are in their place.
 */
final class WritingJob extends Job {
    /** Parts of the work, of which the first is to read narratives. */
    private static final int PARTS = 10;

    /** What writes files into a folder; answers what to say of it. */
    interface Writing {
        String files(PaperInput in, DocumentFolder.Wanted wanted, Path folder, Progress progress) throws IOException;
    }

    /** Who hears on the event thread of what becomes of it. */
    interface Listener {
        /**
         * Files are written.
         *
         * @param words what to say of them
         * @param given for each narrative in them what stands in the place of each name
         */
        void written(String words, List<Map<String, String>> given);

        /** Nothing is written, for it was stopped. */
        void stopped();

        /** Nothing is written, for a reason. */
        void failed(String why);
    }

    private final PaperInput in;
    private final DocumentFolder.Wanted wanted;
    private final Path folder;
    private final Writing writing;
    private final Owner owner;
    private final Listener listener;
    private final DoubleConsumer told;

    /**
     * @param owner what the result is for
     * @param told hears on the event thread how far it is
     */
    WritingJob(PaperInput in, DocumentFolder.Wanted wanted, Path folder, Writing writing, Owner owner, Listener listener,
            DoubleConsumer told) {
        super(Messages.Documents_title);
        this.in = in;
        this.wanted = wanted;
        this.folder = folder;
        this.writing = writing;
        this.owner = owner;
        this.listener = listener;
        this.told = told;
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        try {
            write(new JobProgress(owner, () -> !monitor.isCanceled(), told));
        } catch (CancellationException e) {
            owner.tell(listener::stopped);
            return Status.CANCEL_STATUS;
        } catch (FileSystemException e) {
            fail(e.getReason() == null ? e.getMessage() : NLS.bind(Messages.Documents_folder, folder, e.getReason()));
        } catch (IOException e) {
            fail(e.getMessage());
        } catch (RuntimeException e) {
            ILog.of(WritingJob.class).error(e.getMessage(), e);
            fail(e.toString());
        }
        return Status.OK_STATUS;
    }

    private void write(Progress progress) throws IOException {
        List<Map<String, String>> given = wanted.kinds().contains(DocumentKind.GRANT) ? givenOut(progress.part(0, PARTS)) : List.of();
        String words = writing.files(in, wanted, folder, share -> progress.at((1 + (PARTS - 1) * share) / PARTS));
        owner.tell(() -> listener.written(words, given));
    }

    private List<Map<String, String>> givenOut(Progress progress) {
        NarrativeFigures figures = new NarrativeFigures(in);
        figures.readAll(progress);
        return in.facts().narratives().stream().map(n -> new NarrativeFilling(n.parts(), figures).givenOut()).toList();
    }

    private void fail(String why) {
        owner.tell(() -> listener.failed(why));
    }
}
