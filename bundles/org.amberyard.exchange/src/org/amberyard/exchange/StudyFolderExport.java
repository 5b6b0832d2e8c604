package org.amberyard.exchange;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.StudyUnits;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Writes a study as a folder of CSV files that {@link StudyFolderImport} reads back. */
public final class StudyFolderExport {
    private final Study study;
    private final UnitSystem system;

    private StudyFolderExport(Study study) {
        this.study = study;
        this.system = StudyUnits.of(study);
    }

    /** Writes one file for each kind of element that the study has, in the study's units. */
    public static void write(Study study, Path folder) throws IOException {
        Files.createDirectories(folder);
        StudyFolderExport export = new StudyFolderExport(study);
        for (StudyTable table : StudyTables.ALL) {
            if (!table.rows(study).isEmpty()) {
                export.sheet(table).write(folder);
            }
        }
        SourceNotesSheet.of(study).write(folder);
    }

    private CsvSheet sheet(StudyTable table) {
        List<EStructuralFeature> fields = table.fields();
        List<String> header = new ArrayList<>(fields.stream().map(f -> format(f).header()).toList());
        if (!table.hasOneOwner()) {
            header.add(0, table.ownerHeader());
        }
        return new CsvSheet(table.file(), header, table.rows(study).stream().map(r -> row(table, fields, r)).toList());
    }

    private List<String> row(StudyTable table, List<EStructuralFeature> fields, EObject element) {
        List<String> cells = new ArrayList<>();
        if (!table.hasOneOwner()) {
            cells.add(ElementNames.of(element.eContainer()));
        }
        fields.forEach(f -> cells.add(format(f).exactText(element.eGet(f))));
        return cells;
    }

    private FieldFormat format(EStructuralFeature field) {
        return FieldFormat.of(field, system, StudyUnits.currency(study), Locale.ROOT);
    }
}
