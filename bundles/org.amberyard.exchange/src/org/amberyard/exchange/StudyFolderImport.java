package org.amberyard.exchange;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.io.StudyDefaults;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FormerNames;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyFactory;
import org.amberyard.model.study.StudyPackage;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.FieldFormatException;
import org.amberyard.study.StudyUnits;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * Reads a study from a folder of CSV files, one for each kind of element, headed by the labels and units of the model's
 * fields. Cells may be in either unit system, as the header says. All or nothing: one problem refuses the import, and
 * every problem is listed.
 */
public final class StudyFolderImport {
    private static final String SETTINGS = "settings";

    private final Path folder;
    private final String currency;
    private final List<ImportProblem> problems = new ArrayList<>();
    private final List<PendingReference> pending = new ArrayList<>();
    private final Study study = StudyFactory.eINSTANCE.createStudy();

    private StudyFolderImport(Path folder) {
        this.folder = folder;
        this.currency = currency(folder);
    }

    /** A reference that is resolved when all elements are there. */
    private record PendingReference(EObject element, EReference reference, String target, Cell cell) {
    }

    /** Where a value stands. */
    private record Cell(String file, int row, String column) {
        ImportProblem problem(String message) {
            return new ImportProblem(file, row, column, message);
        }
    }

    /** What a column holds: a field in a unit system. */
    private record Column(String header, EStructuralFeature field, FieldFormat format) {
    }

    /**
     * The study in a folder.
     *
     * @throws ImportException when anything in the files is not understood
     */
    public static Study read(Path folder) throws ImportException {
        StudyFolderImport reading = new StudyFolderImport(folder);
        reading.refuseOthers();
        StudyTables.ALL.forEach(reading::readTable);
        reading.pending.forEach(reading::resolve);
        reading.problems.addAll(SourceNotesSheet.readInto(folder, reading.study));
        if (!reading.problems.isEmpty()) {
            throw new ImportException(reading.problems);
        }
        return reading.study;
    }

    /** A file that would be passed over in silence is no part of a study. */
    private void refuseOthers() throws ImportException {
        try (Stream<Path> files = Files.list(folder)) {
            files.filter(Files::isRegularFile).map(f -> f.getFileName().toString()).filter(name -> name.toLowerCase(Locale.ROOT).endsWith(StudyTable.ENDING))
                    .filter(name -> !isTable(name)).sorted()
                    .forEach(name -> problems.add(new ImportProblem(name, 0, "", "This is no table of a study, whose tables are named buses.csv, routes.csv "
                            + "and so on, with the headers that an export has. Take it out of the folder; a list that the district keeps is imported "
                            + "into a study as a table.")));
        } catch (IOException | UncheckedIOException e) {
            throw new ImportException(List.of(new ImportProblem(folder.toString(), 0, "", "The folder cannot be read: " + e.getMessage())));
        }
    }

    private static boolean isTable(String name) {
        return name.equals(SourceNotesSheet.FILE) || StudyTables.ALL.stream().anyMatch(t -> name.equals(t.file()));
    }

    private void readTable(StudyTable table) {
        Path path = folder.resolve(table.file());
        if (Files.isRegularFile(path)) {
            CsvSheet sheet = CsvSheet.read(path, problems);
            List<Optional<Column>> columns = columns(table, sheet);
            for (int i = 0; i < sheet.rows().size(); i++) {
                readRow(table, sheet, columns, i);
            }
        }
    }

    private List<Optional<Column>> columns(StudyTable table, CsvSheet sheet) {
        List<Optional<Column>> columns = new ArrayList<>();
        for (String header : sheet.header()) {
            boolean owner = !table.hasOneOwner() && header.equals(table.ownerHeader());
            Optional<Column> column = owner ? Optional.empty() : column(table, header);
            if (!owner && column.isEmpty()) {
                problems.add(new ImportProblem(sheet.file(), 1, header,
                        "No field of this table has this label and unit; see the data dictionary for the columns."));
            }
            columns.add(column);
        }
        return columns;
    }

    private Optional<Column> column(StudyTable table, String header) {
        for (EStructuralFeature field : table.fields()) {
            for (UnitSystem system : UnitSystem.values()) {
                FieldFormat format = FieldFormat.of(field, system, currency, Locale.ROOT);
                if (format.header().equals(header) || FormerNames.label(field).filter(header::equals).isPresent()) {
                    return Optional.of(new Column(header, field, format));
                }
            }
        }
        return Optional.empty();
    }

    /** The currency in which the settings say that money is, whatever stands before it there; what a new study has where they say none. */
    private static String currency(Path folder) {
        Path settings = folder.resolve(SETTINGS + StudyTable.ENDING);
        String header = FieldInfo.of(StudyPackage.Literals.SETTINGS__CURRENCY).label();
        if (Files.isRegularFile(settings)) {
            CsvSheet sheet = CsvSheet.read(settings, new ArrayList<>());
            int place = sheet.header().indexOf(header);
            if (place >= 0 && !sheet.rows().isEmpty() && !sheet.rows().get(0).get(place).isBlank()) {
                return sheet.rows().get(0).get(place).strip();
            }
        }
        return StudyUnits.currency(StudyDefaults.create());
    }

    private void readRow(StudyTable table, CsvSheet sheet, List<Optional<Column>> columns, int index) {
        List<String> cells = sheet.rows().get(index);
        Optional<EObject> element = element(table, sheet, cells, index + 2);
        if (element.isEmpty()) {
            return;
        }
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).isPresent() && !cells.get(i).isEmpty()) {
                Column column = columns.get(i).get();
                set(element.get(), column, cells.get(i), new Cell(sheet.file(), index + 2, column.header()));
            }
        }
    }

    private Optional<EObject> element(StudyTable table, CsvSheet sheet, List<String> cells, int row) {
        if (table.path().isEmpty()) {
            return Optional.of(study);
        }
        if (table.hasOneOwner()) {
            return rowOfOneOwner(table, sheet.file(), row);
        }
        int ownerColumn = sheet.header().indexOf(table.ownerHeader());
        String name = ownerColumn < 0 ? "" : cells.get(ownerColumn);
        Optional<EObject> owner = table.owner(study, name);
        if (owner.isEmpty()) {
            problems.add(new ImportProblem(sheet.file(), row, table.ownerHeader(),
                    "“" + name + "” is not the name of just one " + table.ownerHeader().toLowerCase(Locale.ROOT) + "."));
        }
        return owner.map(table::addRow);
    }

    private Optional<EObject> rowOfOneOwner(StudyTable table, String file, int row) {
        Optional<EObject> owner = table.owners(study).stream().findFirst();
        if (owner.isEmpty()) {
            problems.add(new ImportProblem(file, row, "",
                    "The folder has no " + table.ownerHeader().toLowerCase(Locale.ROOT) + " that could hold the row."));
        }
        return owner.map(table::addRow);
    }

    private void set(EObject element, Column column, String text, Cell cell) {
        if (column.field() instanceof EReference reference) {
            List<String> names = reference.isMany() ? FieldFormat.names(text) : List.of(text);
            names.forEach(name -> pending.add(new PendingReference(element, reference, name, cell)));
            return;
        }
        try {
            element.eSet(column.field(), column.format().parse(text));
        } catch (FieldFormatException e) {
            problems.add(cell.problem(e.getMessage()));
        }
    }

    private void resolve(PendingReference open) {
        List<EObject> named = new ArrayList<>();
        EcoreUtil.getAllContents(study, true).forEachRemaining(o -> {
            if (o instanceof EObject candidate && open.reference().getEReferenceType().isInstance(candidate)
                    && ElementNames.of(candidate).equals(open.target())) {
                named.add(candidate);
            }
        });
        if (named.size() == 1) {
            point(open, named.get(0));
        } else {
            problems.add(open.cell().problem("“" + open.target() + "” names "
                    + (named.isEmpty() ? "nothing" : named.size() + " elements") + " of the kind that belongs here."));
        }
    }

    @SuppressWarnings("unchecked")
    private static void point(PendingReference open, EObject target) {
        if (open.reference().isMany()) {
            ((List<EObject>) open.element().eGet(open.reference())).add(target);
        } else {
            open.element().eSet(open.reference(), target);
        }
    }
}
