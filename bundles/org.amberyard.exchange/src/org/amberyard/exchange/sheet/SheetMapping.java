package org.amberyard.exchange.sheet;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.amberyard.core.units.UnitSystem;

/**
 * Which column of a sheet is which.
 *
 * @param headerRow number of the row of headers
 * @param columns for columns of the sheet, counted from 0, what they hold; those that are not used are left out
 */
public record SheetMapping(int headerRow, Map<Integer, Use> columns) {

    /**
     * What a column of the sheet holds.
     *
     * @param id id of the {@link SheetColumn}
     * @param system unit system of its numbers
     */
    public record Use(String id, UnitSystem system) {
    }

    public SheetMapping {
        columns = Map.copyOf(columns);
    }

    /** Place of the column that holds something, if there is one. */
    OptionalInt place(String id) {
        return columns.entrySet().stream().filter(e -> e.getValue().id().equals(id)).mapToInt(Map.Entry::getKey).min();
    }

    /** The same with another use of a column; none where it is not to be used. A thing is held by one column only. */
    public SheetMapping with(int column, Optional<Use> use) {
        Map<Integer, Use> changed = new LinkedHashMap<>(columns);
        use.ifPresent(u -> changed.values().removeIf(other -> other.id().equals(u.id())));
        changed.remove(column);
        use.ifPresent(u -> changed.put(column, u));
        return new SheetMapping(headerRow, changed);
    }

    /** Required columns that nothing in the sheet holds. */
    public List<SheetColumn> missing(List<SheetColumn> columnsOfKind) {
        return columnsOfKind.stream().filter(SheetColumn::required).filter(c -> place(c.id()).isEmpty()).toList();
    }
}
