package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.exchange.WhatIfFile;
import org.amberyard.study.whatif.SavedRun;
import org.amberyard.study.whatif.WhatIfRun;

/** The what-if that documents tell of: the one kept beside the study when it is of the study as it is, or one that is run when asked for. */
final class DocumentWhatIf {
    private DocumentWhatIf() {
    }

    static Optional<WhatIfResults> of(Arguments arguments, EvaluatedStudy evaluated, Path file, Console console) throws WrongUse, IOException {
        boolean asked = arguments.has(DocumentOptions.WHAT_IF);
        boolean uncertain = evaluated.study().getWhatIf() != null && !evaluated.study().getWhatIf().getInputs().isEmpty();
        if (asked && !uncertain) {
            throw new WrongUse(DocumentOptions.WHAT_IF + " is given, but STUDY is " + file
                    + ", which names no uncertain input; enter some under “What if”.");
        }
        Optional<SavedRun> beside = WhatIfFile.read(WhatIfFile.beside(file));
        Optional<SavedRun> kept = beside.filter(r -> r.isOf(evaluated.study()));
        if (!asked && kept.isEmpty() && beside.isPresent()) {
            console.err().println(KeptWhatIf.outdated(beside.get(), evaluated.study()) + " It is not in the documents.");
        }
        if (!uncertain || !asked && kept.isEmpty()) {
            return Optional.empty();
        }
        WhatIfRun run = new WhatIfRun(evaluated.study(), evaluated.result(), Runtime.getRuntime().availableProcessors(), kept);
        if (asked) {
            run.run(new ProgressLines(console.err(), "What if"), soFar -> {});
        }
        return Optional.of(run.results());
    }
}
