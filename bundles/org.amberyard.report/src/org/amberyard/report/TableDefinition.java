package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import java.util.function.ToIntFunction;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;

/**
 * A table as it is made from any result: what its rows are, and for each column its name, unit, meaning and value. The
 * tables, the schema and the documents all follow from the definitions, so they cannot drift apart.
 *
 * @param <R> what a row is made from
 */
final class TableDefinition<R> {
    private final String name;
    private final String title;
    private final Function<StudyResult, List<R>> rows;
    private final List<Column<R>> columns = new ArrayList<>();
    private Predicate<StudyResult> placeholders = result -> false;
    private int headColumns;
    private List<Behind> shared = List.of();

    /** Words in the units of the user; what they are made from names them in metric units. */
    private record Words(Function<UnitSystem, String> in) {
        @Override
        public String toString() {
            return in.apply(UnitSystem.METRIC);
        }
    }

    /** A column with its unit and value. */
    private record Column<R>(String name, String label, ColumnUnit unit, ResultColumn.Type type, String meaning,
            Function<R, Object> value, Optional<Function<R, Derivation>> why) {

        /** By its derivation, else by the column's meaning and the elements on whose inputs the row rests. */
        Derivation derivation(R row, List<Derivation> behind) {
            return why.map(w -> w.apply(row)).orElseGet(() -> byMeaning(value.apply(row), behind.toArray(Derivation[]::new)));
        }

        private Derivation byMeaning(Object cell, Derivation[] behind) {
            if (cell instanceof Number number) {
                boolean ofCore = !unit.token().isEmpty();
                return Derivation.of(label, ofCore ? number.doubleValue() : unit.show(number.doubleValue(), UnitSystem.METRIC),
                        ofCore ? unit.token() : unit.symbol(UnitSystem.METRIC, ""), meaning, behind);
            }
            return Derivation.of(cell == null ? label + ": no figure" : label + ": " + cell, Double.NaN, "", meaning, behind);
        }
    }

    TableDefinition(String name, String title, Function<StudyResult, List<R>> rows) {
        this.name = name;
        this.title = title;
        this.rows = rows;
    }

    /** Tells when the figures rest on placeholders, which every export then says. */
    TableDefinition<R> notForSubmissionWhen(Predicate<StudyResult> restsOnPlaceholders) {
        placeholders = restsOnPlaceholders;
        return this;
    }

    TableDefinition<R> text(String column, String label, String meaning, Function<R, String> value) {
        return add(column, label, ColumnUnit.NONE, ResultColumn.Type.TEXT, meaning, value::apply);
    }

    /** Words with figures in them, which depend on the units of the user. */
    TableDefinition<R> words(String column, String label, String meaning, Function<R, Function<UnitSystem, String>> value) {
        return add(column, label, ColumnUnit.NONE, ResultColumn.Type.TEXT, meaning, r -> new Words(value.apply(r)));
    }

    TableDefinition<R> year(String column, String label, String meaning, ToIntFunction<R> value) {
        return add(column, label, ColumnUnit.CALENDAR, ResultColumn.Type.INTEGER, meaning, value::applyAsInt);
    }

    TableDefinition<R> optionalYear(String column, String label, String meaning, Function<R, OptionalInt> value) {
        return add(column, label, ColumnUnit.CALENDAR, ResultColumn.Type.INTEGER, meaning, r -> orNull(value.apply(r)));
    }

    TableDefinition<R> count(String column, String label, String meaning, ToIntFunction<R> value) {
        return add(column, label, ColumnUnit.COUNT, ResultColumn.Type.INTEGER, meaning, value::applyAsInt);
    }

    TableDefinition<R> number(String column, String label, ColumnUnit unit, String meaning, ToDoubleFunction<R> value) {
        return add(column, label, unit, ResultColumn.Type.NUMBER, meaning, value::applyAsDouble);
    }

    TableDefinition<R> number(String column, String label, Unit unit, String meaning, ToDoubleFunction<R> value) {
        return number(column, label, ColumnUnit.of(unit), meaning, value);
    }

    TableDefinition<R> optional(String column, String label, ColumnUnit unit, String meaning,
            Function<R, OptionalDouble> value) {
        return add(column, label, unit, ResultColumn.Type.NUMBER, meaning, r -> orNull(value.apply(r)));
    }

    TableDefinition<R> optional(String column, String label, Unit unit, String meaning,
            Function<R, OptionalDouble> value) {
        return optional(column, label, ColumnUnit.of(unit), meaning, value);
    }

    TableDefinition<R> money(String column, String label, String meaning, ToDoubleFunction<R> value) {
        return add(column, label, ColumnUnit.of(Unit.MONEY), ResultColumn.Type.MONEY, meaning, value::applyAsDouble);
    }

    TableDefinition<R> optionalMoney(String column, String label, String meaning, Function<R, OptionalDouble> value) {
        return add(column, label, ColumnUnit.of(Unit.MONEY), ResultColumn.Type.MONEY, meaning,
                r -> orNull(value.apply(r)));
    }

    private static Object orNull(OptionalInt value) {
        return value.isPresent() ? (Object) value.getAsInt() : null;
    }

    private static Object orNull(OptionalDouble value) {
        return value.isPresent() ? (Object) value.getAsDouble() : null;
    }

    private TableDefinition<R> add(String column, String label, ColumnUnit unit, ResultColumn.Type type, String meaning,
            Function<R, Object> value) {
        columns.add(new Column<>(column, label, unit, type, meaning, value, Optional.empty()));
        return this;
    }

    /** The columns added so far say what a row is about; they stay in sight when the others scroll. */
    TableDefinition<R> heads() {
        headColumns = columns.size();
        return this;
    }

    /** Parts of the study on whose inputs all rows rest, beside the elements that a row names. */
    TableDefinition<R> restingOn(List<Behind> parts) {
        shared = List.copyOf(parts);
        return this;
    }

    /** How the figures of the column that was added last come about; without it a figure is told by the column's meaning. */
    TableDefinition<R> why(Function<R, Derivation> derivation) {
        int last = columns.size() - 1;
        Column<R> c = columns.get(last);
        columns.set(last, new Column<>(c.name(), c.label(), c.unit(), c.type(), c.meaning(), c.value(), Optional.of(derivation)));
        return this;
    }

    String name() {
        return name;
    }

    String title() {
        return title;
    }

    List<ResultColumn> columns(UnitSystem system, String currency) {
        return columns.stream().map(c -> new ResultColumn(c.name(), c.label(), c.unit().symbol(system, currency), c.type(),
                c.meaning())).toList();
    }

    /** The table without rows. */
    ResultTable headings(StudyResult result, UnitSystem system) {
        return table(result, system, List.of());
    }

    ResultTable table(StudyResult result, UnitSystem system) {
        List<List<Object>> cells = new ArrayList<>();
        for (R row : rows.apply(result)) {
            List<Object> line = new ArrayList<>();
            columns.forEach(c -> line.add(shown(c.value().apply(row), c.unit(), system)));
            cells.add(line);
        }
        return table(result, system, cells);
    }

    private ResultTable table(StudyResult result, UnitSystem system, List<List<Object>> cells) {
        return new ResultTable(name, title, columns(system, result.input().currency()), cells,
                placeholders.test(result) ? PlaceholderUse.WORDS : "", headColumns);
    }

    /** How a cell of the table comes about. */
    Derivation why(StudyResult result, int row, int column) {
        R of = rows.apply(result).get(row);
        List<Derivation> behind = new ArrayList<>();
        columns.forEach(c -> Behind.ofColumn(c.name(), c.value().apply(of)).ifPresent(behind::add));
        shared.forEach(b -> behind.add(b.all()));
        return columns.get(column).derivation(of, behind);
    }

    private static Object shown(Object value, ColumnUnit unit, UnitSystem system) {
        if (value instanceof Words words) {
            return words.in().apply(system);
        }
        return value instanceof Double number ? finite(unit.show(number, system)) : value;
    }

    private static Object finite(double value) {
        return Double.isFinite(value) ? (Object) value : null;
    }
}
