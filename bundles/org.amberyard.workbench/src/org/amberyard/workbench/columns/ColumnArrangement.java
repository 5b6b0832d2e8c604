package org.amberyard.workbench.columns;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Which columns of a table are shown, in which order.
 *
 * @param order names of all columns in the order of the user; columns that it does not know come last
 * @param hidden names of those that are not shown
 * @param frozen number of leading columns that stay when the others scroll; -1 for as many as the table has by itself
 */
public record ColumnArrangement(List<String> order, Set<String> hidden, int frozen) {

    /** As a table is by itself. */
    public static final ColumnArrangement NATURAL = new ColumnArrangement(List.of(), Set.of(), -1);
    private static final String HIDDEN = "-";
    private static final String SHOWN = "+";

    public ColumnArrangement {
        order = List.copyOf(order);
        hidden = Set.copyOf(hidden);
    }

    /** The same for a table that has these columns; one that has none left to show shows all. */
    ColumnArrangement fitted(List<String> columns) {
        Set<String> all = new LinkedHashSet<>(order);
        all.retainAll(columns);
        all.addAll(columns);
        Set<String> without = hidden.containsAll(columns) ? Set.of() : hidden;
        return new ColumnArrangement(List.copyOf(all), without, frozen);
    }

    /** Names of the columns on show. */
    public List<String> shown() {
        return order.stream().filter(name -> !hidden.contains(name)).toList();
    }

    /** With a column taken out of sight; the last one stays. */
    public ColumnArrangement hide(String name) {
        Set<String> next = new LinkedHashSet<>(hidden);
        next.add(name);
        return next.containsAll(order) ? this : new ColumnArrangement(order, next, frozen);
    }

    /** With a column in sight. */
    public ColumnArrangement show(String name) {
        Set<String> next = new LinkedHashSet<>(hidden);
        next.remove(name);
        return new ColumnArrangement(order, next, frozen);
    }

    /** With a column in the place of another. */
    public ColumnArrangement move(String name, String place) {
        List<String> next = new ArrayList<>(order);
        int to = next.indexOf(place);
        next.remove(name);
        next.add(to, name);
        return new ColumnArrangement(next, hidden, frozen);
    }

    /** With another number of leading columns that stay. */
    public ColumnArrangement freeze(int columns) {
        return new ColumnArrangement(order, hidden, columns);
    }

    /** As a text to be kept. */
    String text() {
        String columns = order.stream().map(name -> (hidden.contains(name) ? HIDDEN : SHOWN) + name).collect(Collectors.joining("\n"));
        return frozen + "\n" + columns;
    }

    /** Out of a text that was kept; what cannot be read is as the table is by itself. */
    static ColumnArrangement of(String text) {
        String[] lines = text.split("\n");
        if (!lines[0].matches("-?\\d{1,3}")) {
            return NATURAL;
        }
        List<String> columns = Arrays.stream(lines).skip(1).filter(line -> line.startsWith(HIDDEN) || line.startsWith(SHOWN)).toList();
        return new ColumnArrangement(columns.stream().map(line -> line.substring(1)).distinct().toList(),
                columns.stream().filter(line -> line.startsWith(HIDDEN)).map(line -> line.substring(1)).collect(Collectors.toSet()),
                Integer.parseInt(lines[0]));
    }
}
