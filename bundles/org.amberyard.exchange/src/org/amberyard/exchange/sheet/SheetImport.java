package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.stream.Collectors;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.study.Study;
import org.amberyard.study.StudyUnits;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * A sheet that is to be put into a study. What it would do is tried on a copy of the study; only when nothing at all is wrong can it
 * be done to the study itself.
 *
 * @param kind what the sheet holds
 * @param sheet the sheet
 * @param mapping which column holds what
 * @param amended what somebody has mended of the sheet; the sheet itself is as the file has it
 */
public record SheetImport(SheetKind kind, Sheet sheet, SheetMapping mapping, SheetAmendments amended) {
    /** Rows among which the headers are looked for. */
    public static final int SEARCHED_ROWS = 40;
    private static final int MOST_PROBLEMS = 1000;

    /**
     * What an import would do.
     *
     * @param problems what keeps it from being done, by row; empty when it can be
     * @param changes what it adds and changes, by row
     * @param remarks how the sheet was read, and what was left out or assumed
     * @param edits the changes as they were done to a copy of the study, sheet by sheet
     * @param rows what has become of the rows
     */
    public record Preview(List<ImportProblem> problems, List<SheetChange> changes, List<String> remarks, List<SheetEdits> edits, RowTally rows) {
        public Preview {
            edits = List.copyOf(edits);
            problems = List.copyOf(problems);
            changes = List.copyOf(changes);
            remarks = List.copyOf(remarks);
        }

        /**
         * Does it, as it was found out, to the study that it was tried on or one that is alike.
         *
         * @throws ImportException when anything is wrong; the study is then as it was
         * @throws IllegalStateException when the study is built in another way by now
         */
        public void into(Study study) throws ImportException {
            if (!problems.isEmpty()) {
                throw new ImportException(problems);
            }
            doTo(study);
        }

        /** Does what could be read to a copy of the study, for what other sheets add to it. */
        void doTo(Study study) {
            edits.forEach(e -> e.doTo(study));
        }
    }

    /** A sheet as the file has it. */
    public SheetImport(SheetKind kind, Sheet sheet, SheetMapping mapping) {
        this(kind, sheet, mapping, SheetAmendments.NONE);
    }

    /** The kind of a sheet, and which column holds what, as far as it tells by itself. */
    public static Optional<SheetImport> recognised(Sheet sheet, Study study) {
        return recognised(sheet, study, ReadingProgress.NONE);
    }

    /**
     * The kind of a sheet, and which column holds what, as far as it tells by itself.
     *
     * @param progress asked before each kind is tried whether to go on
     * @throws CancellationException when it is not to go on
     */
    public static Optional<SheetImport> recognised(Sheet sheet, Study study, ReadingProgress progress) {
        return SheetKind.ALL.stream().peek(kind -> progress.step(sheet.place(), 0)).map(kind -> guess(kind, sheet, study)).filter(g -> g.score() > 0)
                .max(Comparator.comparingInt(Guess::score)).map(Guess::made);
    }

    /** A sheet of a given kind, with its columns as far as they tell by themselves. */
    public static SheetImport of(SheetKind kind, Sheet sheet, Study study) {
        return guess(kind, sheet, study).made();
    }

    /** A sheet of a given kind whose headers stand in a given row. */
    public static SheetImport withHeaders(SheetKind kind, Sheet sheet, int headerRow, Study study) {
        SheetRow row = sheet.rows().stream().filter(r -> r.number() == headerRow).findFirst().orElseThrow();
        return new SheetImport(kind, sheet, finder(kind, sheet, study).in(row).mapping());
    }

    private static ColumnFinder finder(SheetKind kind, Sheet sheet, Study study) {
        return new ColumnFinder(sheet, kind.columns(study), StudyUnits.of(study), StudyUnits.currency(study));
    }

    private record Guess(SheetImport made, int score) {
    }

    /** A kind of which a required column is missing is a poor guess. */
    private static Guess guess(SheetKind kind, Sheet sheet, Study study) {
        ColumnFinder.Found found = finder(kind, sheet, study).find();
        int missing = found.mapping().missing(kind.columns(study)).size();
        return new Guess(new SheetImport(kind, sheet, found.mapping()), found.tells(missing) ? found.score() / (1 + 9 * missing) : 0);
    }

    /** The same with other uses of columns. */
    public SheetImport with(SheetMapping other) {
        return new SheetImport(kind, sheet, other, amended);
    }

    /** The same with other cells mended. */
    public SheetImport amended(SheetAmendments other) {
        return new SheetImport(kind, sheet, mapping, other);
    }

    /** Header of the column that holds something; empty where none does. */
    public Optional<String> header(String id) {
        return sheet.rows().stream().filter(r -> r.number() == mapping.headerRow()).findFirst()
                .filter(r -> mapping.place(id).isPresent()).map(r -> r.cell(mapping.place(id).getAsInt()).text());
    }

    /** Header over a column of the sheet; the label of what it holds where the cell is blank. */
    String headerAt(int place, Study study) {
        String text = sheet.rows().stream().filter(r -> r.number() == mapping.headerRow()).findFirst().map(r -> r.cell(place).text()).orElse("");
        if (!mapping.columns().containsKey(place)) {
            return text;
        }
        String id = mapping.columns().get(place).id();
        return text.isEmpty() ? SheetColumn.byId(kind.columns(study), id).map(SheetColumn::label).orElse(id) : text;
    }

    /** What it would do to a study, which stays as it is. */
    public Preview preview(Study study) {
        return preview(study, ReadingProgress.NONE);
    }

    /**
     * What it would do to a study, which stays as it is.
     *
     * @param progress told of the rows, and asked whether to go on
     * @throws CancellationException when it is not to go on
     */
    public Preview preview(Study study, ReadingProgress progress) {
        SheetOutcome outcome = run(EcoreUtil.copy(study), progress);
        List<ImportProblem> problems = new ArrayList<>(sheet.problems());
        problems.addAll(outcome.problems());
        List<String> remarks = new ArrayList<>(sheet.remarks());
        remarks.addAll(amended.remarks(sheet, place -> headerAt(place, study)));
        remarks.addAll(outcome.remarks());
        new RowFindings(this, outcome).tell(study, problems, remarks);
        problems.sort(Comparator.comparingInt(ImportProblem::row));
        return new Preview(limited(problems), outcome.changes(), remarks, List.of(outcome.edits()), tally(problems, outcome));
    }

    private RowTally tally(List<ImportProblem> problems, SheetOutcome outcome) {
        Set<Integer> rejected = problems.stream().map(ImportProblem::row).filter(r -> r > mapping.headerRow()).collect(Collectors.toSet());
        Map<Integer, String> leftOut = new TreeMap<>(outcome.leftOut());
        amended.dropped(sheet).forEach(row -> leftOut.put(row, "by hand"));
        leftOut.keySet().removeAll(rejected);
        int read = (int) sheet.rows().stream().filter(r -> r.number() > mapping.headerRow()).count();
        return new RowTally(read, rejected.size(), leftOut.entrySet().stream().map(e -> new RowTally.LeftOut(e.getKey(), e.getValue())).toList());
    }

    /** Where the values of a row are from, for notes on their source. */
    private String citation(int row, Study study) {
        return sheet.place() + amended.words(sheet, row, place -> headerAt(place, study)).map(w -> ", row " + row + " amended by hand: " + w).orElse("");
    }

    private List<ImportProblem> limited(List<ImportProblem> problems) {
        if (problems.size() <= MOST_PROBLEMS) {
            return problems;
        }
        List<ImportProblem> first = new ArrayList<>(problems.subList(0, MOST_PROBLEMS));
        first.add(new ImportProblem(sheet.place(), 0, "", "There are " + (problems.size() - MOST_PROBLEMS) + " more problems."));
        return first;
    }

    private SheetOutcome run(Study study, ReadingProgress progress) {
        List<SheetColumn> columns = kind.columns(study);
        MappedSheet mapped = new MappedSheet(amended.on(sheet), mapping, columns, StudyUnits.currency(study), kind::example);
        SheetOutcome outcome = new SheetOutcome(study, kind, mapped, row -> citation(row, study), progress);
        outcome.addsTypes(amended.addsTypes());
        mapped.leftOut().forEach(outcome::leftOut);
        List<SheetColumn> missing = mapping.missing(columns);
        missing.forEach(c -> outcome.problem(mapping.headerRow(), c.missing()));
        mapped.problems().forEach(p -> outcome.problem(mapping.headerRow(), p));
        mapped.remarks().forEach(outcome::remark);
        if (missing.isEmpty() && mapped.rows().isEmpty()) {
            outcome.problem(mapping.headerRow(), "No rows of data stand below the headers; add some, or choose another sheet or row of headers.");
        }
        if (missing.isEmpty()) {
            kind.read(mapped, outcome);
        }
        return outcome;
    }

    /**
     * Does it to a study.
     *
     * @return what was added and changed
     * @throws ImportException when anything is wrong; the study is then as it was
     */
    public List<SheetChange> into(Study study) throws ImportException {
        Preview preview = preview(study);
        preview.into(study);
        return preview.changes();
    }
}
