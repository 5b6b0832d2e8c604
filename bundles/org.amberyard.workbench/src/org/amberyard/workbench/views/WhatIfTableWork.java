package org.amberyard.workbench.views;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.report.ChangedSince;
import org.amberyard.report.ResultTable;
import org.amberyard.report.WhatIfTables;
import org.amberyard.study.InputDifferences.Difference;
import org.amberyard.study.StudyUnits;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.session.WhatIfWork;
import org.amberyard.workbench.work.Owner;
import org.eclipse.core.runtime.IProgressMonitor;
import org.eclipse.core.runtime.IStatus;
import org.eclipse.core.runtime.Status;
import org.eclipse.core.runtime.jobs.Job;
import org.eclipse.swt.widgets.Control;

/** Makes the tables of a what-if in the background, once its run rests. Used on the event thread, on which it also answers. */
final class WhatIfTableWork extends Job {

    /** What tables are made of; results are told apart by identity. */
    private record Asked(WhatIfResults results, UnitSystem units, List<Difference> changes) {
        boolean isOf(Asked other) {
            return other != null && results == other.results() && units == other.units() && changes.equals(other.changes());
        }
    }

    private final Owner owner;
    private final Consumer<List<ResultTable>> made;
    private volatile Asked wanted;

    /** @param made hears the tables; none when there is no what-if */
    WhatIfTableWork(Control owner, Consumer<List<ResultTable>> made) {
        super(Messages.Results_making);
        this.owner = new Owner(owner);
        this.made = made;
        setSystem(true);
    }

    /** Makes the tables of a session's what-if where they are others than those made last; while it runs, those stay. */
    void follow(Optional<StudySession> session) {
        Optional<WhatIfWork> work = session.map(StudySession::whatIf);
        Asked next = work.flatMap(w -> w.results().map(r -> new Asked(r, StudyUnits.of(session.orElseThrow().study()),
                w.changedSince().orElse(List.of())))).orElse(null);
        if (next == null) {
            if (wanted != null) {
                wanted = null;
                made.accept(List.of());
            }
        } else if (!next.isOf(wanted) && work.orElseThrow().phase() != WhatIfWork.Phase.RUNNING) {
            wanted = next;
            schedule();
        }
    }

    @Override
    protected IStatus run(IProgressMonitor monitor) {
        Asked asked = wanted;
        if (asked == null) {
            return Status.CANCEL_STATUS;
        }
        List<ResultTable> tables = new ArrayList<>();
        if (!asked.changes().isEmpty()) {
            tables.add(ChangedSince.table(asked.changes()));
        }
        tables.addAll(WhatIfTables.of(asked.results(), asked.units()));
        owner.tell(() -> asked == wanted, () -> made.accept(tables));
        return Status.OK_STATUS;
    }
}
