package org.amberyard.batch;

import java.io.IOException;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.stream.Stream;
import org.amberyard.model.study.Study;
import org.amberyard.report.papers.DocumentFolder;
import org.amberyard.report.papers.PaperInput;
import org.amberyard.report.papers.Submission;

/** Freezes what is submitted: study, inputs, documents, and the sums of all files. */
final class FreezeVerb extends PapersVerb {
    @Override
    public String name() {
        return "freeze";
    }

    @Override
    public String usage() {
        return "freeze STUDY --out DIR [options of documents]";
    }

    @Override
    public String summary() {
        return "freezes a submission into the new folder DIR: study, inputs, documents, and the SHA-256 of every file, in a manifest whose own sum is printed";
    }

    @Override
    List<String> write(PaperInput in, Study study, DocumentFolder.Wanted wanted, Path folder, Console console) throws IOException {
        LocalDate frozenOn = in.choices().dated().map(LocalDate::parse).orElseGet(LocalDate::now);
        Submission.Frozen frozen = Submission.freeze(in, study, wanted, frozenOn, folder, new ProgressLines(console.err(), "Freeze"));
        return Stream.concat(frozen.files().stream().map(Path::toString), Stream.of(frozen.words())).toList();
    }
}
