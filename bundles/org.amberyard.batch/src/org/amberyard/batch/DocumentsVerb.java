package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import org.amberyard.core.progress.Progress;
import org.amberyard.model.study.Study;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.report.papers.ReadFigures;
import org.amberyard.report.papers.StaleNarrative;

/** Writes documents for a grant agency, a board, a utility, the shop and a consultant. */
final class DocumentsVerb extends PapersVerb {
    @Override
    public String name() {
        return "documents";
    }

    @Override
    public String usage() {
        return "documents STUDY --out DIR [--plan PLAN] [--kind WORDS] [--format WORDS] [--tables T1,T3,…] [--programme NAME] "
                + "[--dated DATE] [--paper WORD] [--whole-vins] [--what-if]";
    }

    @Override
    public String summary() {
        return "writes the grant tables, board memo, load letter, shop calendar, appendix and cash-flow workbook of a plan into "
                + "DIR";
    }

    @Override
    List<String> write(PaperInput in, Study study, DocumentFolder.Wanted wanted, Path folder, Console console) throws IOException {
        tellChanges(in, console);
        return DocumentFolder.write(in, wanted, folder, new ProgressLines(console.err(), "Documents")).stream().map(Path::toString).toList();
    }

    /** Texts that were given out with other figures of this plan: whoever has them must be told. */
    private static void tellChanges(PaperInput in, Console console) {
        String plan = in.result().plans().get(in.planIndex()).name();
        StaleTexts.found(() -> StaleNarrative.all(new ReadFigures(in.result(), in.facts()), plan::equals, Progress.NONE), console)
                .forEach(s -> s.changes().forEach(c -> console.err().println(
                        "Changed since “" + s.facts().heading() + "” was given out" + s.when() + ": " + c.words())));
    }
}
