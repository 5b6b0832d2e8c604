package org.amberyard.exchange;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;

/** The source notes of all elements as one sheet: table, element, field, quality, citation, date. */
final class SourceNotesSheet {
    static final String FILE = "sources.csv";
    private static final List<String> HEADER = List.of("Table", "Element", "Field", "Quality", "Citation", "Date");

    private SourceNotesSheet() {
    }

    static CsvSheet of(Study study) {
        List<List<String>> rows = new ArrayList<>();
        for (StudyTable table : StudyTables.ALL) {
            table.rows(study).stream().filter(Sourced.class::isInstance).map(Sourced.class::cast)
                    .forEach(e -> e.getSources().forEach(n -> rows.add(row(table, e, n))));
        }
        return new CsvSheet(FILE, HEADER, rows);
    }

    private static List<String> row(StudyTable table, Sourced element, SourceNote note) {
        return List.of(table.name(), table.key(element), orBlank(note.getField()), note.getQuality().getLiteral(),
                orBlank(note.getCitation()), orBlank(note.getDate()));
    }

    private static String orBlank(String text) {
        return text == null ? "" : text;
    }

    static List<ImportProblem> readInto(Path folder, Study study) {
        List<ImportProblem> problems = new ArrayList<>();
        Path path = folder.resolve(FILE);
        if (!Files.isRegularFile(path)) {
            return problems;
        }
        CsvSheet sheet = CsvSheet.read(path, problems);
        if (!sheet.header().equals(HEADER)) {
            problems.add(new ImportProblem(FILE, 1, "", "The columns must be " + String.join(", ", HEADER) + "."));
            return problems;
        }
        for (int i = 0; i < sheet.rows().size(); i++) {
            read(sheet.rows().get(i), i + 2, study, problems);
        }
        return problems;
    }

    private static void read(List<String> cells, int row, Study study, List<ImportProblem> problems) {
        List<Sourced> elements = StudyTables.ALL.stream().filter(t -> t.name().equals(cells.get(0)))
                .flatMap(t -> t.rows(study).stream().filter(e -> t.key(e).equals(cells.get(1))))
                .filter(Sourced.class::isInstance).map(Sourced.class::cast).toList();
        Quality quality = Quality.get(cells.get(3));
        if (elements.size() != 1) {
            problems.add(new ImportProblem(FILE, row, HEADER.get(1),
                    "“" + cells.get(1) + "” is not just one row of the table “" + cells.get(0) + "”."));
        } else if (!cells.get(2).equals(SourceNotes.EVERY_FIELD) && elements.get(0).eClass().getEStructuralFeature(cells.get(2)) == null) {
            problems.add(new ImportProblem(FILE, row, HEADER.get(2), "The element has no field “" + cells.get(2) + "”."));
        } else if (quality == null) {
            problems.add(new ImportProblem(FILE, row, HEADER.get(3),
                    "“" + cells.get(3) + "” must be one of assumed, quoted, published, measured."));
        } else {
            elements.get(0).getSources().add(note(cells, quality));
        }
    }

    private static SourceNote note(List<String> cells, Quality quality) {
        return SourceNotes.of(cells.get(2), quality, orNull(cells.get(4)), orNull(cells.get(5)));
    }

    private static String orNull(String text) {
        return text.isEmpty() ? null : text;
    }
}
