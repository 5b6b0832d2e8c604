package org.amberyard.exchange.sheet;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.FieldInfo;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * A column that a kind of sheet may have.
 *
 * @param id name in mappings, the same in all versions
 * @param label what it is called
 * @param content what its cells hold
 * @param unit unit of its numbers
 * @param required true when no row makes sense without it
 * @param meaning what it means
 * @param also other names that it goes by
 * @param field field of the model that it fills, where it fills one as it is
 * @param looksLike tells a cell of the column by its text alone; never where nothing gives it away
 * @param sayings what its words also go by, in small letters
 * @param vague names that other things go by too
 */
public record SheetColumn(String id, String label, Content content, Unit unit, boolean required, String meaning, List<String> also,
        Optional<EStructuralFeature> field, Predicate<String> looksLike, Map<String, String> sayings,
        Vague vague) {

    /** What the cells of a column hold. */
    public enum Content {
        /** Text as it is. */
        TEXT,
        /** A number, maybe with its unit. */
        NUMBER,
        /** A date. */
        DATE,
        /** A time of day. */
        CLOCK,
        /** Yes or no. */
        FLAG,
        /** One of some words. */
        CHOICE,
        /** Name of another element of the study. */
        NAME
    }

    /**
     * Names that stand for a column only by themselves, and only over cells that look like its own.
     *
     * @param names the names; none for most columns
     * @param cell tells a cell of the column by its text
     */
    public record Vague(List<String> names, Predicate<String> cell) {
        private static final Vague NONE = new Vague(List.of(), text -> false);

        public Vague {
            names = List.copyOf(names);
        }
    }

    public SheetColumn {
        also = List.copyOf(also);
        sayings = Map.copyOf(sayings);
    }

    /** A column that fills a field of the model. */
    static SheetColumn of(EStructuralFeature field, String... also) {
        FieldInfo info = FieldInfo.of(field);
        Unit unit = Unit.ofToken(info.unitToken()).orElse(Unit.NONE);
        return new SheetColumn(field.getName(), info.label(), content(field, unit), unit, false, FieldInfo.documentation(field), List.of(also),
                Optional.of(field), text -> false, Map.of(), Vague.NONE);
    }

    private static Content content(EStructuralFeature field, Unit unit) {
        if (!(field instanceof EAttribute)) {
            return Content.NAME;
        }
        Class<?> java = field.getEType().getInstanceClass();
        if (field.getEType() instanceof EEnum) {
            return Content.CHOICE;
        }
        if (java == boolean.class) {
            return Content.FLAG;
        }
        if (unit == Unit.CLOCK) {
            return Content.CLOCK;
        }
        return java == String.class ? Content.TEXT : Content.NUMBER;
    }

    /** A column from which something is worked out. */
    static SheetColumn derived(String id, String label, Content content, Unit unit, String meaning, String... also) {
        return new SheetColumn(id, label, content, unit, false, meaning, List.of(also), Optional.empty(), text -> false, Map.of(), Vague.NONE);
    }

    SheetColumn must() {
        return new SheetColumn(id, label, content, unit, true, meaning, also, field, looksLike, sayings, vague);
    }

    /** The same with a sentence more about what it means. */
    SheetColumn andSays(String sentence) {
        return new SheetColumn(id, label, content, unit, required, meaning + " " + sentence, also, field, looksLike, sayings, vague);
    }

    SheetColumn toldBy(Predicate<String> cell) {
        return new SheetColumn(id, label, content, unit, required, meaning, also, field, cell, sayings, vague);
    }

    /** The same, one of whose words also goes by others, in small letters. */
    SheetColumn saying(String word, String... others) {
        Map<String, String> more = new HashMap<>(sayings);
        Arrays.stream(others).forEach(other -> more.put(other, word));
        return new SheetColumn(id, label, content, unit, required, meaning, also, field, looksLike, more, vague);
    }

    /** The same, which also goes by names that other things go by too: by these only over cells that look like its own. */
    SheetColumn vaguely(Predicate<String> cell, String... names) {
        return new SheetColumn(id, label, content, unit, required, meaning, also, field, looksLike, sayings, new Vague(List.of(names), cell));
    }

    /** The word that a cell means. */
    String word(String cell) {
        return sayings.getOrDefault(cell.strip().toLowerCase(Locale.ROOT), cell);
    }

    /** True where a cell means one of the words of a choice. */
    boolean says(String cell) {
        return choices().stream().anyMatch(word(cell.strip())::equalsIgnoreCase);
    }

    /** Label with unit, as a header. */
    public String header(UnitSystem system, String currency) {
        String symbol = unit == Unit.CLOCK ? "" : unit.symbol(system, currency);
        return symbol.isEmpty() ? label : label + " (" + symbol + ")";
    }

    /** What to say where a sheet lacks it. */
    String missing() {
        return "A column “" + label + "” is missing: " + meaning + " Name a column so, or choose the one that holds it.";
    }

    /** Its names in words. */
    Stream<HeaderWords> names() {
        return Stream.concat(Stream.of(label), also.stream()).map(HeaderWords::of);
    }

    /** The words among which a cell of a choice must be; empty for other columns. */
    public List<String> choices() {
        return content == Content.CHOICE && field.isPresent()
                ? ((EEnum) field.get().getEType()).getELiterals().stream().map(l -> l.getLiteral()).toList() : List.of();
    }

    /** The column of an id among some. */
    static Optional<SheetColumn> byId(List<SheetColumn> columns, String id) {
        return columns.stream().filter(c -> c.id().equals(id)).findFirst();
    }
}
