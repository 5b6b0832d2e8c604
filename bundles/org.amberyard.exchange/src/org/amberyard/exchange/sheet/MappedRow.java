package org.amberyard.exchange.sheet;

import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.study.ClockText;

/** A row of data: what stands in it by what its columns hold. Values that are none throw a {@link CellFault}. */
final class MappedRow {
    private static final double DAY_MIN = 1440;
    private static final Set<String> MISSING = Set.of("n/a", "na", "-", "\u2013", "\u2014", "none", "null", "?", "unknown", "tbd");

    private final MappedSheet in;
    private final SheetRow row;

    MappedRow(MappedSheet in, SheetRow row) {
        this.in = in;
        this.row = row;
    }

    /** Number of the row in the file. */
    int number() {
        return row.number();
    }

    /** All that stands in the row. */
    List<SheetCell> cells() {
        return row.cells();
    }

    /** Name of the sheet; empty for a text file. */
    String sheetName() {
        return in.sheet().name();
    }

    /** True when the sheet has a column that holds something. */
    boolean knows(String id) {
        return in.mapping().place(id).isPresent();
    }

    /** True when something stands in a column. */
    boolean has(String id) {
        return !cell(id).isBlank();
    }

    /** What stands in a column; blank where the sheet has no such column, or a word for nothing. */
    SheetCell cell(String id) {
        int place = in.mapping().place(id).orElse(-1);
        SheetCell cell = place < 0 ? SheetCell.BLANK : row.cell(place);
        return MISSING.contains(cell.text().toLowerCase(Locale.ROOT)) ? SheetCell.BLANK : cell;
    }

    /** The text in a column; empty where there is none. */
    Optional<String> text(String id) throws CellFault {
        SheetCell cell = cell(id);
        if (cell.kind() == SheetCell.Kind.ERROR) {
            throw fault(id, "a value; the formula has failed or was never computed. Mend it, or clear the cell");
        }
        return cell.isBlank() ? Optional.empty() : Optional.of(cell.text());
    }

    /** The number in a column in the unit in which the model stores it; empty where there is none. */
    OptionalDouble number(String id) throws CellFault {
        Optional<String> text = text(id);
        if (text.isEmpty()) {
            return OptionalDouble.empty();
        }
        SheetColumn column = in.column(id);
        SheetNumber number = figure(id, text.get());
        if (number.isMoney() && !column.unit().isMoney() && column.unit() != Unit.ONE && column.unit() != Unit.NONE) {
            throw fault(id, number(column) + ", but it is money");
        }
        return OptionalDouble.of(column.unit().store(number.value(), system(id, column.unit(), number)));
    }

    /** The number in a column with what stands around it; its unit is for the caller to read. */
    Optional<SheetNumber> figure(String id) throws CellFault {
        Optional<String> text = text(id);
        return text.isEmpty() ? Optional.empty() : Optional.of(figure(id, text.get()));
    }

    private SheetNumber figure(String id, String text) throws CellFault {
        SheetColumn column = in.column(id);
        NumberStyle style = cell(id).kind() == SheetCell.Kind.TEXT ? in.numbers(column) : NumberStyle.POINT;
        return SheetNumber.of(text, style).orElseThrow(() -> fault(id, number(column) + otherStyle(text, style)));
    }

    /** Currency of the study. */
    String currency() {
        return in.currency();
    }

    /** The number in a column that must have one in every row, in the unit in which the model stores it. */
    double required(String id) throws CellFault {
        return number(id).orElseThrow(() -> wrong(id, "A number is missing; enter one, 0 for none, or delete the row."));
    }

    /** The unit behind the number counts, else that of the header. */
    private UnitSystem system(String id, Unit unit, SheetNumber number) throws CellFault {
        UnitSystem own = in.mapping().columns().get(in.mapping().place(id).orElseThrow()).system();
        if (number.unit().isEmpty()) {
            return own;
        }
        List<UnitSystem> systems = new UnitWords(unit, in.currency()).systems(number.unit());
        if (systems.isEmpty()) {
            throw fault(id, number(in.column(id)));
        }
        return systems.contains(own) ? own : systems.get(0);
    }

    /** A remedy where decimals stand behind the sign that parts thousands in the other cells. */
    private static String otherStyle(String text, NumberStyle style) {
        NumberStyle other = style == NumberStyle.POINT ? NumberStyle.COMMA : NumberStyle.POINT;
        return SheetNumber.of(text, other).map(n -> "; decimals stand behind a " + style.word() + " here: write "
                + style.text(n.value()) + (n.unit().isEmpty() ? "" : " " + n.unit())).orElse("");
    }

    private String number(SheetColumn column) {
        if (column.unit() == Unit.CALENDAR) {
            return "a year such as 2026";
        }
        String us = column.unit().symbol(UnitSystem.US, in.currency());
        String metric = column.unit().symbol(UnitSystem.METRIC, in.currency());
        return "a number" + (us.isEmpty() ? "" : us.equals(metric) ? " in " + us : " in " + us + " or " + metric);
    }

    /** The date in a column; empty where there is none. */
    Optional<LocalDate> date(String id) throws CellFault {
        Optional<String> text = text(id);
        if (text.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(in.dates(in.column(id)).of(text.get())
                .orElseThrow(() -> fault(id, "a date such as 2025-09-04 or 9/4/2025")));
    }

    /** The time of day in a column that must have one, minutes after midnight. */
    int minutes(String id) throws CellFault {
        String text = text(id).orElseThrow(() -> wrong(id, "A time is missing; enter one such as 6:35 or 2:05 pm."));
        if (cell(id).kind() == SheetCell.Kind.NUMBER) {
            double days = Double.parseDouble(text);
            if (days >= 0 && days < 1) {
                return (int) Math.round(days * DAY_MIN);
            }
        }
        return ClockText.minutes(text.replaceFirst("^\\d{4}-\\d{2}-\\d{2} ", "").replaceFirst("(?<=\\d:\\d{2}):00", ""))
                .orElseThrow(() -> fault(id, "a time such as 6:35 or 2:05 pm"));
    }

    /** What is wrong with a cell. */
    CellFault fault(String id, String allowed) {
        return new CellFault(id, "“" + cell(id).text() + "” must be " + allowed + ".");
    }

    /** What is wrong with a cell, in other words. */
    CellFault wrong(String id, String message) {
        return new CellFault(id, message);
    }
}
