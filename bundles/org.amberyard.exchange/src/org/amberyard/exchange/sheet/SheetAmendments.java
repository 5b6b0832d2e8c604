package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * What somebody has mended of a sheet before it is imported: cells that say something else, and rows that are left out. The file itself stays
 * as it is; what was mended is told with the import and noted with the source of what the row told.
 *
 * @param cells other texts of cells, by the number of their row and the place of their column from 0; blank for an emptied cell
 * @param leftOut numbers of the rows that are left out
 * @param addsTypes true where vehicle types that the study lacks come with the sheet, with figures that are assumed
 */
public record SheetAmendments(Map<Integer, Map<Integer, String>> cells, Set<Integer> leftOut, boolean addsTypes) {
    /** The sheet as the file has it. */
    public static final SheetAmendments NONE = new SheetAmendments(Map.of(), Set.of(), false);

    public SheetAmendments {
        Map<Integer, Map<Integer, String>> sorted = new TreeMap<>();
        cells.forEach((row, texts) -> sorted.put(row, new TreeMap<>(texts)));
        sorted.values().removeIf(Map::isEmpty);
        cells = sorted;
        leftOut = new TreeSet<>(leftOut);
    }

    /** The same with another text in a cell; none where it is what the file has. */
    public SheetAmendments with(Sheet sheet, int row, int place, String text) {
        Map<Integer, Map<Integer, String>> other = new TreeMap<>();
        cells.forEach((number, texts) -> other.put(number, new TreeMap<>(texts)));
        Map<Integer, String> of = other.computeIfAbsent(row, r -> new TreeMap<>());
        if (row(sheet, row).cell(place).text().equals(text.strip())) {
            of.remove(place);
        } else {
            of.put(place, text.strip());
        }
        return new SheetAmendments(other, leftOut, addsTypes);
    }

    /** The same with a row left out, or taken in again. */
    public SheetAmendments leaving(int row, boolean out) {
        Set<Integer> rows = new TreeSet<>(leftOut);
        if (out) {
            rows.add(row);
        } else {
            rows.remove(row);
        }
        return new SheetAmendments(cells, rows, addsTypes);
    }

    /** The same with a row as the file has it. */
    public SheetAmendments restoring(int row) {
        Map<Integer, Map<Integer, String>> other = new TreeMap<>(cells);
        other.remove(row);
        return new SheetAmendments(other, leftOut, addsTypes).leaving(row, false);
    }

    /** What a cell says now; empty where it says what the file has. */
    public Optional<String> text(int row, int place) {
        return Optional.ofNullable(cells.getOrDefault(row, Map.of()).get(place));
    }

    /** Number of cells that say something else. */
    public int count() {
        return cells.values().stream().mapToInt(Map::size).sum();
    }

    /** The same with or without the vehicle types that the study lacks. */
    public SheetAmendments addingTypes(boolean adds) {
        return new SheetAmendments(cells, leftOut, adds);
    }

    /** True where the sheet is as the file has it. */
    public boolean isNone() {
        return cells.isEmpty() && leftOut.isEmpty();
    }

    /** The sheet as it is imported. */
    Sheet on(Sheet sheet) {
        if (isNone()) {
            return sheet;
        }
        List<SheetRow> rows = sheet.rows().stream().filter(r -> !leftOut.contains(r.number())).map(this::mended).filter(r -> !r.isBlank()).toList();
        return new Sheet(sheet.file(), sheet.name(), rows, sheet.numbers(), sheet.remarks(), sheet.problems());
    }

    /** Numbers of the rows of the file that are not imported: those that are left out, and those of which every cell is emptied. */
    Set<Integer> dropped(Sheet sheet) {
        Set<Integer> dropped = sheet.rows().stream().map(SheetRow::number).collect(Collectors.toCollection(TreeSet::new));
        on(sheet).rows().forEach(r -> dropped.remove(r.number()));
        return dropped;
    }

    private SheetRow mended(SheetRow row) {
        Map<Integer, String> texts = cells.getOrDefault(row.number(), Map.of());
        int width = Math.max(row.cells().size(), texts.keySet().stream().mapToInt(p -> p + 1).max().orElse(0));
        return texts.isEmpty() ? row : new SheetRow(row.number(), IntStream.range(0, width).mapToObj(place -> texts.containsKey(place)
                ? SheetCell.ofText(texts.get(place)) : row.cell(place)).toList());
    }

    /** What was mended in a row, in words; empty for a row that is as the file has it. */
    Optional<String> words(Sheet sheet, int row, IntFunction<String> headers) {
        Map<Integer, String> texts = cells.getOrDefault(row, Map.of());
        return texts.isEmpty() ? Optional.empty() : Optional.of(texts.entrySet().stream().map(e -> header(headers, e.getKey()) + " “" + e.getValue()
                + "” in place of “" + row(sheet, row).cell(e.getKey()).text() + "”").collect(Collectors.joining(", ")));
    }

    private static String header(IntFunction<String> headers, int place) {
        String header = headers.apply(place);
        return header.isBlank() ? "column " + (place + 1) : header;
    }

    /** All that was mended, a sentence for each row. */
    List<String> remarks(Sheet sheet, IntFunction<String> headers) {
        List<String> remarks = new ArrayList<>();
        cells.keySet().stream().filter(row -> !leftOut.contains(row)).forEach(row -> words(sheet, row, headers)
                .ifPresent(w -> remarks.add("Row " + row + " was amended by hand: " + w + ". The file stays as it is.")));
        leftOut.forEach(row -> remarks.add("Row " + row + " is left out by hand."));
        return remarks;
    }

    private static SheetRow row(Sheet sheet, int number) {
        return sheet.rows().stream().filter(r -> r.number() == number).findFirst().orElseGet(() -> new SheetRow(number, List.of()));
    }
}
