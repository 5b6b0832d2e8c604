package org.amberyard.batch;

import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.CsvTables;
import org.amberyard.report.ResultColumn.Type;
import org.amberyard.report.ResultColumn;
import org.amberyard.report.ResultTable;
import org.amberyard.report.ResultTables;
import org.amberyard.report.StagedFiles;

/**
 * Rows of many studies: a file for each, named by the study and its version, and one table of them all. Distances and the like stand
 * in US units and money in the money of each study, so that the columns are the same for all.
 */
final class StudyRows {
    private static final String TABLE = "studies.csv";
    private static final String FAILURES = "failures.csv";
    private static final String BY_STUDY = "by-study";
    private static final int VERSION_DIGITS = 16;

    private final Path folder;

    StudyRows(Path folder) {
        this.folder = folder;
    }

    Path table() {
        return folder.resolve(TABLE);
    }

    Path failures() {
        return folder.resolve(FAILURES);
    }

    /** Where the rows of a version of a study are, or will be. */
    Path of(String study, String fingerprint) {
        return folder.resolve(BY_STUDY).resolve(study + "." + fingerprint.substring(0, VERSION_DIGITS) + ".csv");
    }

    /** Writes the rows of a study; those of other versions of it are removed. */
    void write(String study, Path file, StudyResult result) throws IOException {
        Files.createDirectories(file.getParent());
        String name = Path.of(study).getFileName().toString();
        try (DirectoryStream<Path> before = Files.newDirectoryStream(file.getParent(), f -> f.getFileName().toString()
                .matches(Pattern.quote(name) + "\\.[0-9a-f]{" + VERSION_DIGITS + "}\\.csv"))) {
            for (Path old : before) {
                Files.delete(old);
            }
        }
        stage(file, CsvTables.document(rows(study, result)));
    }

    private static void stage(Path file, String text) throws IOException {
        try (StagedFiles files = new StagedFiles(file.getParent())) {
            Files.writeString(files.add(file.getFileName().toString()), text, StandardCharsets.UTF_8);
            files.moveIntoPlace();
        }
    }

    private static ResultTable rows(String study, StudyResult result) {
        ResultTable headline = ResultTables.headline(result, UnitSystem.US);
        String currency = result.input().currency();
        List<ResultColumn> columns = new ArrayList<>(List.of(new ResultColumn("study", "Study", "", Type.TEXT, "Its file."),
                new ResultColumn("name", "Name", "", Type.TEXT, "Its name."),
                new ResultColumn("money", "Money", "", Type.TEXT, "What its money is.")));
        headline.columns().forEach(c -> columns.add(new ResultColumn(c.name(), c.label(), c.unit().replace(currency, "money"), c.type(), c.meaning())));
        columns.add(new ResultColumn(ResultTable.STANDING, "Standing", "", Type.TEXT, "What keeps its figures from being submitted."));
        List<List<Object>> rows = new ArrayList<>();
        for (List<Object> of : headline.rows()) {
            List<Object> row = new ArrayList<>(List.of(study, result.input().name(), currency));
            row.addAll(of);
            row.add(headline.watermark());
            rows.add(row);
        }
        return new ResultTable("studies", "Plans of many studies", columns, rows);
    }

    /** Joins the rows of studies, one file after the other, under the header that all have. */
    void writeTable(List<Path> studies) throws IOException {
        Files.createDirectories(folder);
        try (StagedFiles files = new StagedFiles(folder)) {
            try (OutputStream out = Files.newOutputStream(files.add(TABLE))) {
                for (int i = 0; i < studies.size(); i++) {
                    String rows = Files.readString(studies.get(i));
                    out.write((i == 0 ? rows : rows.substring(rows.indexOf('\n') + 1)).getBytes(StandardCharsets.UTF_8));
                }
            }
            files.moveIntoPlace();
        }
    }

    /** Writes which studies could not be evaluated, and why; no row where all could. */
    void writeFailures(List<List<Object>> rows) throws IOException {
        stage(failures(), CsvTables.document(new ResultTable("failures", "Studies that could not be evaluated", List.of(
                new ResultColumn("study", "Study", "", Type.TEXT, "Its file."), new ResultColumn("reason", "Reason", "", Type.TEXT, "Why.")), rows)));
    }
}
