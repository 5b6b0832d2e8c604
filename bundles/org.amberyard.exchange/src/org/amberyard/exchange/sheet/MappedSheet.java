package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.regex.Pattern;
import org.amberyard.core.units.UnitSystem;
import org.eclipse.emf.ecore.EStructuralFeature;

/** The rows of a sheet that hold data, with their columns by what they hold. */
final class MappedSheet {
    private static final Pattern TOTAL = Pattern.compile("(?i)(sub|grand[ -]?)?totals?\\b.*|sums?\\b.*|averages?\\b.*");

    private static final Pattern DECIMAL = Pattern.compile("\\d{1,12}(\\.\\d{1,6})?");

    private final Sheet sheet;
    private final SheetMapping mapping;
    private final List<SheetColumn> columns;
    private final String currency;
    private final Map<String, NumberStyle> numbers = new HashMap<>();
    private final Map<String, SheetDates> dates = new HashMap<>();
    private final List<String> remarks = new ArrayList<>();
    private final List<String> problems = new ArrayList<>();
    private final Map<Integer, String> leftOut = new TreeMap<>();
    private final List<MappedRow> rows = new ArrayList<>();
    private final Map<Integer, MappedRow> byNumber = new HashMap<>();

    /** @param example what the example row of the template has in a column */
    MappedSheet(Sheet sheet, SheetMapping mapping, List<SheetColumn> columns, String currency, Function<SheetColumn, String> example) {
        this.sheet = sheet;
        this.mapping = mapping;
        this.columns = columns;
        this.currency = currency;
        SheetRow headers = headers();
        Optional<SheetRow> first = sheet.rows().stream().filter(r -> r.number() > mapping.headerRow()).findFirst().filter(r -> isExample(r, example));
        first.ifPresent(r -> leftOut.put(r.number(), "the example of the template"));
        first.ifPresent(r -> remarks.add("Row " + r.number() + " is the example of the template and is left out."));
        for (SheetRow row : sheet.rows()) {
            if (row.number() > mapping.headerRow() && repeats(row, headers)) {
                leftOut.put(row.number(), "the headers again");
            } else if (row.number() > mapping.headerRow() && first.filter(row::equals).isEmpty()) {
                total(row).ifPresentOrElse(this::leaveOut, () -> rows.add(new MappedRow(this, row)));
            }
        }
        rows.forEach(r -> byNumber.put(r.number(), r));
        tellUnused(headers);
        tellDates();
        tellNumbers();
    }

    private SheetRow headers() {
        return sheet.rows().stream().filter(r -> r.number() == mapping.headerRow()).findFirst()
                .orElseGet(() -> new SheetRow(mapping.headerRow(), List.of()));
    }

    private boolean isExample(SheetRow row, Function<SheetColumn, String> example) {
        return !mapping.columns().isEmpty() && columns.stream().filter(c -> mapping.place(c.id()).isPresent())
                .allMatch(c -> isTemplates(c) && alike(row.cell(mapping.place(c.id()).getAsInt()).text(), example.apply(c)));
    }

    /** True where the header is that of the template; a row of somebody's own table may well say the same as the example. */
    private boolean isTemplates(SheetColumn column) {
        return Arrays.stream(UnitSystem.values()).anyMatch(s -> header(column.id()).equals(column.header(s, currency)));
    }

    /** Spreadsheet programs write numbers without zeros at the end. */
    private static boolean alike(String text, String example) {
        return text.equals(example) || DECIMAL.matcher(text).matches() && DECIMAL.matcher(example).matches()
                && Double.parseDouble(text) == Double.parseDouble(example);
    }

    /** Printed tables repeat their headers on each page. */
    private static boolean repeats(SheetRow row, SheetRow headers) {
        return row.cells().equals(headers.cells());
    }

    private record Total(int row, String text) {
    }

    private static Optional<Total> total(SheetRow row) {
        return row.cells().stream().filter(c -> !c.isBlank()).findFirst().filter(c -> TOTAL.matcher(c.text()).matches())
                .map(c -> new Total(row.number(), c.text()));
    }

    private void leaveOut(Total total) {
        leftOut.put(total.row(), "a total");
        remarks.add("Row " + total.row() + " is left out, because it begins with “" + total.text() + "”.");
    }

    private void tellUnused(SheetRow headers) {
        List<String> unused = new ArrayList<>();
        for (int place = 0; place < headers.cells().size(); place++) {
            if (!mapping.columns().containsKey(place) && !headers.cell(place).isBlank()) {
                unused.add(headers.cell(place).text());
            }
        }
        if (!unused.isEmpty()) {
            remarks.add("Columns that are not used: " + String.join(", ", unused) + ".");
        }
    }

    private void tellDates() {
        columns.stream().filter(c -> c.content() == SheetColumn.Content.DATE && mapping.place(c.id()).isPresent()).forEach(c -> {
            dates(c).mixture().ifPresentOrElse(mixed -> problems.add("Dates of “" + header(c.id()) + "” are written in two ways: " + mixed
                    + ". Write all of them alike, best as 2025-09-04."), () -> dates(c).order().ifPresent(
                            order -> remarks.add("Dates of “" + header(c.id()) + "” are read " + order + ".")));
        });
    }

    private void tellNumbers() {
        columns.stream().filter(c -> c.content() == SheetColumn.Content.NUMBER && mapping.place(c.id()).isPresent())
                .filter(c -> numbers(c) != sheet.numbers()).forEach(c -> remarks.add("Numbers of “" + header(c.id()) + "” are read with a decimal "
                        + numbers(c).word() + ", unlike those of the other columns."));
    }

    /** Rows of data in order. */
    List<MappedRow> rows() {
        return rows;
    }

    /** Why rows are left out, by their numbers. */
    Map<Integer, String> leftOut() {
        return leftOut;
    }

    /** What was left out or assumed. */
    List<String> remarks() {
        return remarks;
    }

    /** What is wrong with columns as a whole. */
    List<String> problems() {
        return problems;
    }

    /** Id of the column of the sheet that fills a field as it is; empty where none does. */
    Optional<String> idOf(EStructuralFeature field) {
        return columns.stream().filter(c -> c.field().filter(field::equals).isPresent()).map(SheetColumn::id)
                .filter(id -> mapping.place(id).isPresent()).findFirst();
    }

    /** What stands in a column of a row; empty for a row that holds no data, and for a column that the sheet lacks. */
    String typed(int row, String id) {
        return Optional.ofNullable(byNumber.get(row)).map(r -> r.cell(id).text()).orElse("");
    }

    Sheet sheet() {
        return sheet;
    }

    SheetMapping mapping() {
        return mapping;
    }

    String currency() {
        return currency;
    }

    SheetColumn column(String id) {
        return SheetColumn.byId(columns, id).orElseThrow(() -> new IllegalArgumentException("no column " + id));
    }

    /** Header of the column that holds something; its own label where none does. */
    String header(String id) {
        int place = mapping.place(id).orElse(-1);
        return place < 0 || headers().cell(place).isBlank() ? column(id).label() : headers().cell(place).text();
    }

    /** How the numbers in the texts of a column are written: as they show, else as those of the whole sheet. */
    NumberStyle numbers(SheetColumn column) {
        return numbers.computeIfAbsent(column.id(), id -> NumberStyle.shownBy(sheet.column(mapping.place(id).orElseThrow(), mapping.headerRow())
                .filter(c -> c.kind() == SheetCell.Kind.TEXT).map(SheetCell::text).toList()).orElse(sheet.numbers()));
    }

    /** How the dates of a column are to be read. */
    SheetDates dates(SheetColumn column) {
        return dates.computeIfAbsent(column.id(), id -> new SheetDates(
                sheet.column(mapping.place(id).orElseThrow(), mapping.headerRow()).map(SheetCell::text)));
    }
}
