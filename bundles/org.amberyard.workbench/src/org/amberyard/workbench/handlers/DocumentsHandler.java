package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.study.Narrative;
import org.amberyard.workbench.documents.DocumentsDialog;
import org.amberyard.workbench.narrative.GiveOut;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.swt.widgets.Shell;

/** Asks for documents of the results on show and writes them. */
public final class DocumentsHandler extends ResultHandler {

    @Override
    void take(Shell shell, StudySession session, StudyResult result) {
        Optional<Path> near = session.file().map(Path::getParent);
        DocumentsDialog dialog = new DocumentsDialog(shell, result, session.study(), session.whatIf().upToDate(), session.choices(), near);
        if (session.whatIf().isOutdated()) {
            dialog.leaveOutWhatIf();
        }
        dialog.onGivenOut((source, figures) -> {
            List<Narrative> narratives = session.study().getNarratives();
            GiveOut.keep(session, IntStream.range(0, figures.size()).mapToObj(i -> new GiveOut.Given(narratives.get(i), figures.get(i)))
                    .toList(), source, LocalDate.now());
        });
        dialog.open();
    }
}
