package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.common.CommonFactory;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Writes what a sheet says into a study, and keeps a record of what changed and what is wrong. */
final class SheetOutcome {
    private static final String EVERY_FIELD = "*";

    private final Study study;
    private final MappedSheet sheet;
    private final List<SheetChange> changes = new ArrayList<>();
    private final Set<ImportProblem> problems = new LinkedHashSet<>();
    private final List<String> remarks = new ArrayList<>();
    private final Map<EObject, Integer> rowOf = new IdentityHashMap<>();
    private final Set<EObject> added = Collections.newSetFromMap(new IdentityHashMap<>());

    SheetOutcome(Study study, MappedSheet sheet) {
        this.study = study;
        this.sheet = sheet;
    }

    Study study() {
        return study;
    }

    List<SheetChange> changes() {
        return changes;
    }

    /** What is wrong, each once, however often a cell was looked at. */
    List<ImportProblem> problems() {
        return List.copyOf(problems);
    }

    List<String> remarks() {
        return remarks;
    }

    /** Rows by the elements that they changed or added. */
    Map<EObject, Integer> rowOf() {
        return rowOf;
    }

    void remark(String words) {
        remarks.add(words);
    }

    /** A step of reading that may find that a cell holds no value of its column. */
    interface Step {
        /** Does it. */
        void take() throws CellFault;
    }

    /** Takes a step; what is wrong with a cell is told as a problem of its row. */
    void attempt(MappedRow row, Step step) {
        try {
            step.take();
        } catch (CellFault fault) {
            problem(row.number(), fault);
        }
    }

    private void problem(int row, CellFault fault) {
        problems.add(new ImportProblem(sheet.sheet().place(), row, sheet.header(fault.id()), fault.getMessage()));
    }

    void problem(int row, String message) {
        problems.add(new ImportProblem(sheet.sheet().place(), row, "", message));
    }

    /** A new element of the study. */
    void added(int row, EObject element) {
        rowOf.putIfAbsent(element, row);
        added.add(element);
        changes.add(new SheetChange(row, ElementNames.withKind(element), "", "", ""));
        note(element, EVERY_FIELD);
    }

    /** Sets a field where it holds something else, and notes the sheet as its source. */
    void set(int row, EObject element, EStructuralFeature field, Object value) {
        Object before = element.eGet(field);
        rowOf.putIfAbsent(element, row);
        if (same(before, value)) {
            return;
        }
        element.eSet(field, value);
        if (!added.contains(element)) {
            FieldFormat format = FieldFormat.of(field, study);
            changes.add(new SheetChange(row, ElementNames.withKind(element), FieldInfo.of(field).label(), format.textWithUnit(before),
                    format.textWithUnit(value)));
            note(element, field.getName());
        }
    }

    /** Conversions of units lose last bits. */
    private static boolean same(Object before, Object value) {
        if (before instanceof Double one && value instanceof Double other) {
            return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
        }
        return Objects.equals(before, value);
    }

    private void note(EObject element, String field) {
        if (element instanceof Sourced sourced) {
            SourceNote note = sourced.getSources().stream().filter(n -> field.equals(n.getField())).findFirst()
                    .orElseGet(() -> newNote(sourced, field));
            note.setQuality(Quality.MEASURED);
            note.setCitation(sheet.sheet().place());
            note.setDate(null);
        }
    }

    private static SourceNote newNote(Sourced sourced, String field) {
        SourceNote note = CommonFactory.eINSTANCE.createSourceNote();
        note.setField(field);
        sourced.getSources().add(note);
        return note;
    }
}
