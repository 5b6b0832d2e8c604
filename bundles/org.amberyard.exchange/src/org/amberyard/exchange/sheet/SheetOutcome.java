package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.CancellationException;
import java.util.function.IntFunction;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Writes what a sheet says into a study, and keeps a record of what changed and what is wrong. */
final class SheetOutcome {
    private final Study study;
    private final SheetKind kind;
    private final MappedSheet sheet;
    private final IntFunction<String> citation;
    private final ReadingProgress progress;
    private final SheetEdits edits;
    private final RoundedText figures;
    private final List<SheetChange> changes = new ArrayList<>();
    private final Map<Integer, String> leftOut = new TreeMap<>();
    private boolean addsTypes;
    private final Set<ImportProblem> problems = new LinkedHashSet<>();
    private final List<String> remarks = new ArrayList<>();
    private final Map<EObject, Integer> rowOf = new IdentityHashMap<>();
    private final Set<EObject> added = Collections.newSetFromMap(new IdentityHashMap<>());

    /**
     * An outcome without anything in it.
     *
     * @param study a copy of the study that the sheet is for
     * @param citation where the values of a row are from
     * @param progress asked at each row whether to go on
     */
    SheetOutcome(Study study, SheetKind kind, MappedSheet sheet, IntFunction<String> citation, ReadingProgress progress) {
        this.study = study;
        this.kind = kind;
        this.sheet = sheet;
        this.citation = citation;
        this.progress = progress;
        this.edits = new SheetEdits(study);
        this.figures = new RoundedText(study);
    }

    Study study() {
        return study;
    }

    List<SheetChange> changes() {
        return changes;
    }

    /** Number of the row of headers, for what follows from the sheet as a whole. */
    int headerRow() {
        return sheet.mapping().headerRow();
    }

    /** What is wrong, each once, however often a cell was looked at. */
    List<ImportProblem> problems() {
        return List.copyOf(problems);
    }

    /** What was done to the study, to be done to the one that it is a copy of. */
    SheetEdits edits() {
        return edits;
    }

    List<String> remarks() {
        return remarks;
    }

    /** Rows by the elements that they changed or added. */
    Map<EObject, Integer> rowOf() {
        return rowOf;
    }

    /** Says whether vehicle types that the study lacks are to come with the sheet. */
    void addsTypes(boolean adds) {
        addsTypes = adds;
    }

    boolean addsTypes() {
        return addsTypes;
    }

    /** A new element of the study of which the sheet tells that it is needed, but not its figures. */
    void assumed(int row, Sourced element, String citation) {
        added(row, (EObject) element);
        SourceNotes.put(element, SourceNotes.EVERY_FIELD, Quality.ASSUMED, citation);
    }

    /** A row that is left out, and why in some words. */
    void leftOut(int row, String why) {
        leftOut.put(row, why);
    }

    /** Why rows are left out, by their numbers. */
    Map<Integer, String> leftOut() {
        return leftOut;
    }

    void remark(String words) {
        remarks.add(words);
    }

    /** A step of reading that may find that a cell holds no value of its column. */
    interface Step {
        /** Does it. */
        void take() throws CellFault;
    }

    /**
     * Takes a step; what is wrong with a cell is told as a problem of its row.
     *
     * @throws CancellationException when the outcome is no longer wanted
     */
    void attempt(MappedRow row, Step step) {
        progress.step(sheet.sheet().place(), row.number());
        try {
            step.take();
        } catch (CellFault fault) {
            problem(row.number(), fault);
        }
    }

    /** Begins to read a row. */
    RowReading reading(MappedRow row) {
        progress.step(sheet.sheet().place(), row.number());
        return new RowReading(row, this);
    }

    /** What is wrong with a cell of a row. */
    void problem(int row, CellFault fault) {
        problems.add(new ImportProblem(sheet.sheet().place(), row, sheet.header(fault.id()), fault.getMessage()));
    }

    void problem(int row, String message) {
        problems.add(new ImportProblem(sheet.sheet().place(), row, "", message));
    }

    /** A new element of the study. */
    void added(int row, EObject element) {
        rowOf.putIfAbsent(element, row);
        boolean isWhole = !added.contains(element.eContainer());
        if (isWhole) {
            edits.added(element);
        }
        added.add(element);
        changes.add(new SheetChange(sheet.sheet().name(), row, ElementNames.withKind(element), true, "", "", "", "", isWhole));
        note(row, element, SourceNotes.EVERY_FIELD);
    }

    /** Sets a field to what the cell of its column tells; see {@link #set(int, String, EObject, EStructuralFeature, Object)}. */
    void set(int row, EObject element, EStructuralFeature field, Object value) {
        set(row, sheet.idOf(field).or(() -> kind.telling(field)).orElse(""), element, field, value);
    }

    /**
     * Sets a field where it holds something else, and notes the sheet as its source.
     *
     * @param id id of the column that tells the value; empty where it is worked out
     */
    void set(int row, String id, EObject element, EStructuralFeature field, Object value) {
        if (value instanceof Double number && !Double.isFinite(number)) {
            problem(row, FieldInfo.of(field).label() + " of " + ElementNames.withKind(element) + " comes to a number beyond all that can be held; check the "
                    + "figures from which it follows.");
            return;
        }
        Object before = element.eGet(field) instanceof List<?> several ? List.copyOf(several) : element.eGet(field);
        rowOf.putIfAbsent(element, row);
        boolean isNew = added.contains(element);
        boolean same = same(before, value);
        String typed = sheet.typed(row, id);
        if (!same) {
            element.eSet(field, value);
        }
        boolean told = element.eIsSet(field) || !typed.isEmpty() && sheet.idOf(field).isPresent();
        if (!same || isNew && told) {
            changes.add(new SheetChange(sheet.sheet().name(), row, ElementNames.withKind(element), isNew, FieldInfo.of(field).label(), typed,
                    isNew ? "" : figures.shown(field, before), figures.shown(field, value), !isNew));
        }
        if (!same) {
            took(row, element, isNew, field, value);
        }
    }

    private void took(int row, EObject element, boolean isNew, EStructuralFeature field, Object value) {
        if (!isNew) {
            edits.put(element, field, value);
        }
        if (!isNew || kind.quality(field.getName()) != kind.quality(SourceNotes.EVERY_FIELD)) {
            note(row, element, field.getName());
        }
    }

    /** True for the same value; conversions of units lose last bits. */
    static boolean same(Object before, Object value) {
        if (before instanceof Double one && value instanceof Double other) {
            return Math.abs(one - other) <= 1e-9 * Math.max(Math.abs(one), Math.abs(other));
        }
        return Objects.equals(before, value);
    }

    /**
     * Takes an element out of the study.
     *
     * @param fields the fields whose values are told as lost, where they are not those of a new element; the first in any case
     */
    void removed(int row, EObject element, List<? extends EStructuralFeature> fields) {
        fields.stream().filter(f -> f == fields.get(0) || element.eIsSet(f)).forEach(f -> changes.add(new SheetChange(sheet.sheet().name(), row,
                ElementNames.withKind(element), false, FieldInfo.of(f).label(), "", figures.shown(f, element.eGet(f)), "", f == fields.get(0))));
        edits.removed(element.eContainer(), element.eContainmentFeature(), element);
        EcoreUtil.remove(element);
    }

    private void note(int row, EObject element, String field) {
        if (element instanceof Sourced sourced) {
            SourceNotes.put(sourced, field, kind.quality(field), citation.apply(row));
            if (!added.contains(element)) {
                edits.noted(sourced, field, kind.quality(field), citation.apply(row));
            }
        }
    }
}
