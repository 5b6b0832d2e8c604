package org.amberyard.report.papers;

import java.nio.file.Path;
import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.report.document.DataTable;
import org.amberyard.study.StudyCompiler;
import org.amberyard.study.StudyEvaluator;

/** The example with its electric plan, evaluated once for the tests of a class. */
public final class ExamplePapers {
    private static final Path BUNDLE = Path.of(System.getProperty("basedir", ".")).toAbsolutePath();
    /** The example's file. */
    public static final Path FILE = BUNDLE.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize();
    static final int ELECTRIC = 1;

    private final StudyEvaluator evaluator = new StudyEvaluator();

    /** The study, new each time. */
    public Study study() {
        try {
            return StudyFile.load(FILE);
        } catch (StudyFileException e) {
            throw new IllegalStateException(e);
        }
    }

    /** Results of a study; what is alike is not computed again. */
    public StudyResult evaluated(Study study) {
        return evaluator.evaluate(StudyCompiler.compile(study));
    }

    PaperInput in(Study study, PaperChoices choices) {
        return new PaperInput(evaluated(study), ELECTRIC, StudyFacts.of(study), choices);
    }

    static PaperChoices tables(GrantTable... tables) {
        return new PaperChoices(List.of(tables), PaperChoices.STANDARD.programme(), false, PaperChoices.STANDARD.dated());
    }

    /** Place of the column of a table that has a heading. */
    static int column(DataTable table, String heading) {
        return IntStream.range(0, table.columns().size()).filter(i -> table.columns().get(i).label().equals(heading)).findFirst()
                .orElseThrow(() -> new AssertionError(table.title() + " has no column " + heading));
    }
}
