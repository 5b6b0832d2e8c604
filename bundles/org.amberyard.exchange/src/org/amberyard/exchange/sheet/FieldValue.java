package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import java.util.stream.StreamSupport;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.study.Study;
import org.amberyard.study.FieldFormat;
import org.amberyard.study.FieldFormatException;
import org.amberyard.study.RoundedText;
import org.amberyard.study.StudyUnits;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** The value of a field of the model in a row of a sheet; the elements that rows may name are those of when one is first named. */
final class FieldValue {
    private static final Pattern SHORTENED = Pattern.compile("\\d\\.\\d+[eE]\\+\\d+");

    private final Study study;
    private final Map<EClass, ElementIndex<EObject>> known = new HashMap<>();

    FieldValue(Study study) {
        this.study = study;
    }

    /** The value in a column that fills a field; empty where nothing stands there. */
    Optional<Object> of(MappedRow row, SheetColumn column) throws CellFault {
        if (row.text(column.id()).isEmpty()) {
            return Optional.empty();
        }
        EStructuralFeature field = column.field().orElseThrow();
        return switch (column.content()) {
            case NUMBER -> number(row, column, field);
            case DATE -> row.date(column.id()).map(LocalDate::toString);
            case NAME -> Optional.of(named(row, column, (EClass) field.getEType()));
            case CLOCK -> Optional.of(row.minutes(column.id()));
            case TEXT, CHOICE, FLAG -> Optional.of(parsed(row, column, field));
        };
    }

    private Optional<Object> number(MappedRow row, SheetColumn column, EStructuralFeature field) throws CellFault {
        OptionalDouble number = row.number(column.id());
        if (number.isEmpty()) {
            return Optional.empty();
        }
        FieldInfo info = FieldInfo.of(field);
        if (!info.allows(number.getAsDouble())) {
            throw row.fault(column.id(), range(field, info));
        }
        boolean whole = FieldWords.isWhole(field);
        if (whole && number.getAsDouble() != Math.rint(number.getAsDouble())) {
            throw row.fault(column.id(), "a whole number");
        }
        return whole ? Optional.of((int) number.getAsDouble()) : Optional.of(number.getAsDouble());
    }

    private String range(EStructuralFeature field, FieldInfo info) {
        RoundedText figures = new RoundedText(study);
        boolean whole = FieldWords.isWhole(field);
        StringBuilder words = new StringBuilder("a number");
        info.above().ifPresent(above -> words.append(" above ").append(figures.limit(field, above)));
        info.min().ifPresent(min -> words.append(" of at least ").append(figures.limit(field, whole ? (Number) (int) min : (Number) min)));
        info.max().ifPresent(max -> words.append(info.min().isPresent() || info.above().isPresent() ? " and at most " : " of at most ")
                .append(figures.limit(field, whole ? (Number) (int) max : (Number) max)));
        return words.toString();
    }

    private Object parsed(MappedRow row, SheetColumn column, EStructuralFeature field) throws CellFault {
        if (SHORTENED.matcher(row.cell(column.id()).text()).matches()) {
            throw row.wrong(column.id(), "“" + row.cell(column.id()).text() + "” is what spreadsheets make of a long number, and its "
                    + "digits are lost; format the column as text, and enter it anew.");
        }
        try {
            return FieldFormat.of(field, StudyUnits.of(study), StudyUnits.currency(study), Locale.ROOT)
                    .parse(column.word(row.text(column.id()).orElseThrow()));
        } catch (FieldFormatException e) {
            throw row.wrong(column.id(), e.getMessage());
        }
    }

    private EObject named(MappedRow row, SheetColumn column, EClass kind) throws CellFault {
        ElementIndex<EObject> all = known.computeIfAbsent(kind, k -> new ElementIndex<>(all(k)));
        String name = row.text(column.id()).orElseThrow();
        return all.find(name).orElseThrow(() -> row.wrong(column.id(), all.unknown(name, column.label().toLowerCase(Locale.ROOT))));
    }

    private List<EObject> all(EClass kind) {
        return StreamSupport.stream(((Iterable<EObject>) () -> EcoreUtil.getAllContents(study, true)).spliterator(), false)
                .filter(kind::isInstance).toList();
    }
}
