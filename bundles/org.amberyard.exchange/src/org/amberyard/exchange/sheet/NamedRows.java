package org.amberyard.exchange.sheet;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.eclipse.emf.ecore.EObject;

/**
 * Rows of a sheet of which each names an element of a list of the study, or a new one, and tells fields of it. An empty cell leaves its
 * field as it is.
 */
final class NamedRows<T extends EObject> {
    private final RowKeys keys;
    private final List<SheetColumn> columns;
    private final List<T> elements;
    private final Function<String, T> maker;
    private final SheetOutcome outcome;
    private final FieldValue values;
    private final ElementIndex<T> known;
    private final Map<ElementKey, T> named = new HashMap<>();

    /**
     * Rows of a sheet.
     *
     * @param keys names of the rows
     * @param columns columns that fill fields as they are
     * @param elements the list of the study
     * @param maker makes a new element of a name
     */
    NamedRows(RowKeys keys, List<SheetColumn> columns, List<T> elements, Function<String, T> maker, SheetOutcome outcome) {
        this.keys = keys;
        this.columns = List.copyOf(columns);
        this.elements = elements;
        this.maker = maker;
        this.outcome = outcome;
        this.values = new FieldValue(outcome.study());
        this.known = new ElementIndex<>(elements);
    }

    /** True for the name of an element that the study had before. */
    boolean knows(String name) {
        return known.find(name).isPresent();
    }

    /** The element of a row with its fields set; empty where the row has no name of its own, with all else that is wrong with it told. */
    Optional<T> read(MappedRow row) {
        RowReading cells = outcome.reading(row);
        String name = cells.of(() -> keys.of(row), "");
        if (!cells.isSound()) {
            columns.forEach(c -> cells.of(() -> values.of(row, c), null));
            return Optional.empty();
        }
        T element = named.computeIfAbsent(ElementKey.of(name), k -> known.find(name).orElseGet(() -> added(row, name)));
        columns.forEach(c -> outcome.attempt(row,
                () -> values.of(row, c).ifPresent(v -> outcome.set(row.number(), element, c.field().orElseThrow(), v))));
        return Optional.of(element);
    }

    private T added(MappedRow row, String name) {
        T element = maker.apply(name);
        elements.add(element);
        outcome.added(row.number(), element);
        return element;
    }
}
