package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.model.study.Study;
import org.amberyard.report.ChangedSince;
import org.amberyard.study.StudyUnits;
import org.amberyard.study.whatif.EarlierRun;
import org.amberyard.study.whatif.SavedRun;

/** What is kept of a what-if beside a study, told without running it; of an earlier version of the study with what has changed since. */
final class KeptWhatIf {
    private final Path file;
    private final Study study;
    private final SavedRun run;

    private KeptWhatIf(Path file, Study study, SavedRun run) {
        this.file = file;
        this.study = study;
        this.run = run;
    }

    static KeptWhatIf beside(Path file) throws WrongUse, IOException {
        Study study = StudyArgument.load(file);
        Optional<SavedRun> run = WhatIfFile.read(WhatIfFile.beside(file));
        return new KeptWhatIf(file, study, run.orElseThrow(() -> new WrongUse("No what-if is kept beside " + file
                + "; it would be " + WhatIfFile.beside(file).getFileName() + ". The window keeps one when it is run.")));
    }

    /** Writes it; the run of an earlier version of the study with a table of what has changed since. */
    void write(Path folder, Console console) throws WrongUse, IOException {
        Study then = run.isOf(study) ? study : EarlierRun.study(run).orElseThrow(() -> new WrongUse("The what-if beside " + file
                + " is of another version of the study or of the method, and cannot be told any more; run it again."));
        WhatIfResults results = EarlierRun.results(run, then);
        if (results.single().isEmpty()) {
            throw new WrongUse("The what-if beside " + file + " was stopped before anything was found; run it again.");
        }
        if (then != study) {
            console.err().println(outdated(run, study));
        }
        WhatIfVerb.write(results, ChangedSince.tables(then, study), StudyUnits.of(study), folder, console);
    }

    /** Says that a run is of an earlier version of a study, and what has changed since where that can be told. */
    static String outdated(SavedRun run, Study now) {
        return "The what-if kept beside the study is of an earlier version of the study." + EarlierRun.study(run)
                .map(then -> " Changed since: " + ChangedSince.words(EarlierRun.changes(then, now)) + ".").orElse("");
    }
}
