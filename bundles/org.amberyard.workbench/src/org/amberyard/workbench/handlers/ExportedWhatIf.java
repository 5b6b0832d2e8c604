package org.amberyard.workbench.handlers;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.model.study.Study;
import org.amberyard.report.ChangedSince;
import org.amberyard.report.ResultFolder;
import org.amberyard.report.ResultTable;
import org.amberyard.workbench.session.StudySession;
import org.amberyard.workbench.session.WhatIfWork;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * What a what-if of the study has found, to be written below the folder of its results.
 *
 * @param results what it has found
 * @param ran the study that it was run on, which nobody edits
 * @param now a copy of the study as it is, which nobody edits
 */
public record ExportedWhatIf(WhatIfResults results, Study ran, Study now) {
    /** Name of its folder, in every language. */
    private static final String FOLDER = "what-if";

    /** That of a study; empty where nothing is found that could be told. */
    public static Optional<ExportedWhatIf> of(StudySession session) {
        WhatIfWork work = session.whatIf();
        return work.results().filter(found -> found.single().isPresent())
                .flatMap(found -> work.ran().map(ran -> new ExportedWhatIf(found, ran, EcoreUtil.copy(session.study()))));
    }

    /** Writes it below a folder, as the command for it does, and says so. */
    public String write(UnitSystem units, Path folder) throws IOException {
        List<ResultTable> changed = ChangedSince.tables(ran, now);
        ResultFolder.write(results, changed, units, folder.resolve(FOLDER));
        return changed.isEmpty() ? Messages.Export_whatIf : Messages.Export_whatIfEarlier;
    }
}
