package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.study.RoundedText;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Reads the rows of a tariff sheet. */
final class TariffRows {
    private static final List<EAttribute> PRICES = List.of(Literals.TARIFF_CHARGE__PRICE_PER_KWH, Literals.TARIFF_CHARGE__PRICE_PER_KW,
            Literals.TARIFF_CHARGE__SHARE);
    private static final List<EStructuralFeature> PLAIN = List.of(Literals.TARIFF_CHARGE__FROM_KWH, Literals.TARIFF_CHARGE__FROM_HOURS_OF_USE,
            Literals.TARIFF_CHARGE__RATCHET_SHARE, Literals.TARIFF_CHARGE__RATCHET_MONTHS, Literals.TARIFF_CHARGE__FIRST_CONTRACT_YEAR,
            Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR, CommonPackage.Literals.SOURCED__NOTE);

    private final SheetOutcome outcome;
    private final TariffNames names;
    private final FieldValue values;
    private final Map<EStructuralFeature, SheetColumn> columns = new LinkedHashMap<>();
    private final List<TariffRow> rows = new ArrayList<>();

    TariffRows(SheetOutcome outcome, List<SheetColumn> columns) {
        this.outcome = outcome;
        this.names = new TariffNames(outcome);
        this.values = new FieldValue(outcome.study());
        columns.forEach(c -> c.field().ifPresent(f -> this.columns.put(f, c)));
    }

    List<TariffRow> rows() {
        return rows;
    }

    void read(MappedRow row) {
        RowReading cells = outcome.reading(row);
        Map<EStructuralFeature, Object> found = new LinkedHashMap<>();
        String charge = cells.of(() -> row.text(TariffSheet.CHARGE).orElseThrow(() -> row.wrong(TariffSheet.CHARGE,
                "The row has no name of a charge; enter one, or delete the row.")), "");
        TariffPart part = cells.of(() -> priced(row, charge, found), TariffPart.ENERGY);
        cells.of(() -> season(row, found), null);
        cells.of(() -> days(row, found), null);
        cells.of(() -> hours(row, found), null);
        PLAIN.forEach(f -> cells.of(() -> values.of(row, columns.get(f)), Optional.empty()).ifPresent(v -> found.put(f, v)));
        cells.of(() -> limits(row, part, found), null);
        Optional<ScheduledTariff> tariff = cells.of(() -> names.of(row, cells.isSound()), Optional.empty());
        if (cells.isSound() && tariff.isPresent()) {
            part.kind().ifPresent(kind -> charged(charge, kind, found));
            rows.add(new TariffRow(row.number(), tariff.get(), part, found));
        }
    }

    private static Void limits(MappedRow row, TariffPart part, Map<EStructuralFeature, Object> found) throws CellFault {
        TariffLimits.check(row, part, found);
        return null;
    }

    private static void charged(String charge, TariffChargeKind kind, Map<EStructuralFeature, Object> found) {
        found.put(Literals.TARIFF_CHARGE__CHARGE, charge);
        found.put(Literals.TARIFF_CHARGE__KIND, kind);
    }

    /** What the row is; its prices are added to what was found. */
    private TariffPart priced(MappedRow row, String charge, Map<EStructuralFeature, Object> found) throws CellFault {
        Optional<TariffPart> told = part(row);
        for (EAttribute field : PRICES) {
            if (row.has(field.getName())) {
                found.put(field, inColumn(row, field));
            }
        }
        if (row.has(TariffSheet.PRICE)) {
            return inPrice(row, charge, told, found);
        }
        if (found.isEmpty() || told.isPresent() && told.get().kind().isEmpty()) {
            throw row.wrong(row.knows(TariffSheet.PRICE) ? TariffSheet.PRICE : TariffSheet.CHARGE, "“" + charge
                    + "” has no price; enter one, 0 for none, or delete the row.");
        }
        EAttribute first = PRICES.stream().filter(found::containsKey).findFirst().orElseThrow();
        return told.orElseGet(() -> TariffPart.of(first == Literals.TARIFF_CHARGE__PRICE_PER_KWH ? TariffPrice.Per.KWH
                : first == Literals.TARIFF_CHARGE__PRICE_PER_KW ? TariffPrice.Per.KW : TariffPrice.Per.SHARE, charge));
    }

    private static Optional<TariffPart> part(MappedRow row) throws CellFault {
        Optional<String> word = row.text(TariffSheet.KIND);
        return word.isEmpty() ? Optional.empty()
                : Optional.of(TariffPart.of(word.get()).orElseThrow(() -> row.fault(TariffSheet.KIND, TariffPart.WORDS)));
    }

    private TariffPart inPrice(MappedRow row, String charge, Optional<TariffPart> told, Map<EStructuralFeature, Object> found) throws CellFault {
        TariffPrice price = TariffPrice.of(row, TariffSheet.PRICE, TariffSheet.UNIT);
        boolean untold = price.per() == TariffPrice.Per.UNTOLD;
        if (untold && told.isEmpty()) {
            throw row.wrong(TariffSheet.PRICE, "“" + row.cell(TariffSheet.PRICE).text() + "” tells not what it is a price of; write it as 0.148 "
                    + row.currency() + "/kWh, or add a column “Kind” or “Unit”.");
        }
        TariffPart part = told.orElseGet(() -> TariffPart.of(price.per(), charge));
        if (!untold && price.per() != part.per()) {
            throw row.wrong(TariffSheet.PRICE, "“" + row.cell(TariffSheet.PRICE).text() + "” is a price " + price.per().words() + ", but a row of kind “"
                    + row.cell(TariffSheet.KIND).text() + "” has one " + part.per().words() + "; mend one of the two.");
        }
        double value = untold && part.per() == TariffPrice.Per.SHARE ? price.value() / 100 : price.value();
        found.put(part.price(), allowed(row, TariffSheet.PRICE, part.price(), value));
        return part;
    }

    private double inColumn(MappedRow row, EAttribute field) throws CellFault {
        if (field == Literals.TARIFF_CHARGE__SHARE) {
            return (double) values.of(row, columns.get(field)).orElseThrow();
        }
        TariffPrice price = TariffPrice.of(row, field.getName(), "");
        TariffPrice.Per own = field == Literals.TARIFF_CHARGE__PRICE_PER_KWH ? TariffPrice.Per.KWH : TariffPrice.Per.KW;
        if (price.per() != own && price.per() != TariffPrice.Per.UNTOLD) {
            throw row.fault(field.getName(), "a price " + own.words());
        }
        return allowed(row, field.getName(), field, price.value());
    }

    private double allowed(MappedRow row, String id, EAttribute field, double value) throws CellFault {
        FieldInfo info = FieldInfo.of(field);
        RoundedText figures = new RoundedText(outcome.study());
        if (!info.allows(value)) {
            throw row.fault(id, "from " + figures.shown(field, info.min().orElseThrow()) + " to " + figures.shown(field, info.max().orElseThrow()));
        }
        return value;
    }

    private static Void season(MappedRow row, Map<EStructuralFeature, Object> found) throws CellFault {
        Optional<String> text = row.text(TariffSheet.SEASON);
        if (text.isPresent()) {
            TariffTimes.Span<Month> months = TariffTimes.season(text.get())
                    .orElseThrow(() -> row.fault(TariffSheet.SEASON, "months such as Jun-Sep, or all year; a name alone does not tell which they are"));
            found.put(Literals.TARIFF_CHARGE__FIRST_MONTH, months.first());
            found.put(Literals.TARIFF_CHARGE__LAST_MONTH, months.last());
        }
        for (EAttribute field : List.of(Literals.TARIFF_CHARGE__FIRST_MONTH, Literals.TARIFF_CHARGE__LAST_MONTH)) {
            Optional<String> month = row.text(field.getName());
            if (month.isPresent()) {
                found.put(field, TariffTimes.month(month.get()).orElseThrow(() -> row.fault(field.getName(), "a month such as June")));
            }
        }
        return null;
    }

    private Void days(MappedRow row, Map<EStructuralFeature, Object> found) throws CellFault {
        SheetColumn column = columns.get(Literals.TARIFF_CHARGE__DAYS);
        Optional<Object> days = row.text(column.id()).flatMap(TariffTimes::days).map(Object.class::cast);
        (days.isPresent() ? days : values.of(row, column)).ifPresent(d -> found.put(Literals.TARIFF_CHARGE__DAYS, d));
        return null;
    }

    private static Void hours(MappedRow row, Map<EStructuralFeature, Object> found) throws CellFault {
        Optional<String> text = row.text(TariffSheet.HOURS);
        if (text.isPresent()) {
            TariffTimes.Span<Integer> hours = TariffTimes.hours(text.get())
                    .orElseThrow(() -> row.fault(TariffSheet.HOURS, "hours such as 14:00-20:00 or 2 pm to 8 pm, or all day; give each stretch of "
                            + "hours a row"));
            found.put(Literals.TARIFF_CHARGE__FROM_MIN, hours.first());
            found.put(Literals.TARIFF_CHARGE__TO_MIN, hours.last());
        }
        if (row.has(TariffSheet.FROM) != row.has(TariffSheet.TO)) {
            String empty = row.has(TariffSheet.FROM) ? TariffSheet.TO : TariffSheet.FROM;
            throw row.wrong(empty, "Hours need a start and an end; enter both, or clear both for the whole day.");
        }
        if (row.has(TariffSheet.FROM)) {
            found.put(Literals.TARIFF_CHARGE__FROM_MIN, clock(row, TariffSheet.FROM));
            found.put(Literals.TARIFF_CHARGE__TO_MIN, clock(row, TariffSheet.TO));
        }
        return null;
    }

    /** The end of the day is its start. */
    private static int clock(MappedRow row, String id) throws CellFault {
        return row.cell(id).text().matches("24(:00(:00)?)?") ? 0 : row.minutes(id);
    }
}
