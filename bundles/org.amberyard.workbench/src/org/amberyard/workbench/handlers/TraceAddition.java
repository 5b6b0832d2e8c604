package org.amberyard.workbench.handlers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.trace.DriveStatistics;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.exchange.TraceImport;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.report.CleaningSentences;
import org.amberyard.report.DriveSentence;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.edit.command.AddCommand;
import org.eclipse.osgi.util.NLS;

/** Puts a drive trace that has been read into a study: first words on what cleaning did, then one step that can be undone. */
public final class TraceAddition {

    private final StudySession session;
    private final TraceImport imported;

    /** An addition to the study of a session. */
    public TraceAddition(StudySession session, TraceImport imported) {
        this.session = session;
        this.imported = imported;
    }

    /** What cleaning did and what the drive is like, in the units of the study. */
    public String words() {
        UnitSystem system = StudyUnits.of(session.study());
        List<String> sentences = new ArrayList<>(CleaningSentences.of(imported.cleaned().report(), system));
        sentences.add("");
        sentences.add(DriveSentence.of(DriveStatistics.of(imported.cleaned().trace()), system));
        return String.join("\n", sentences);
    }

    /** Adds the trace under a name of its own. */
    public DriveTrace add() {
        DriveTrace trace = imported.trace();
        trace.setName(TraceImport.freeName(session.study(), trace.getName()));
        AddCommand add = new AddCommand(session.domain(), session.study(), StudyPackage.Literals.STUDY__TRACES, trace);
        add.setLabel(NLS.bind(Messages.Trace_added, trace.getName()));
        session.execute(add);
        return trace;
    }
}
