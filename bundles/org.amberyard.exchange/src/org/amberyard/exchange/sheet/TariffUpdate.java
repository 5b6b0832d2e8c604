package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Makes what a sheet says of a tariff its charges: those of the same name, kind, season, days and hours are kept, the others go. */
final class TariffUpdate {
    private static final List<EAttribute> SAME = List.of(Literals.TARIFF_CHARGE__CHARGE, Literals.TARIFF_CHARGE__KIND,
            Literals.TARIFF_CHARGE__FIRST_MONTH, Literals.TARIFF_CHARGE__LAST_MONTH, Literals.TARIFF_CHARGE__DAYS, Literals.TARIFF_CHARGE__FROM_MIN,
            Literals.TARIFF_CHARGE__TO_MIN, Literals.TARIFF_CHARGE__FROM_KWH, Literals.TARIFF_CHARGE__FROM_HOURS_OF_USE,
            Literals.TARIFF_CHARGE__FIRST_CONTRACT_YEAR, Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR);
    private static final List<EAttribute> OTHERS = List.of(Literals.TARIFF_CHARGE__PRICE_PER_KWH, Literals.TARIFF_CHARGE__PRICE_PER_KW,
            Literals.TARIFF_CHARGE__SHARE, Literals.TARIFF_CHARGE__RATCHET_SHARE, Literals.TARIFF_CHARGE__RATCHET_MONTHS);

    private final SheetOutcome outcome;

    TariffUpdate(SheetOutcome outcome) {
        this.outcome = outcome;
    }

    void make(List<TariffRow> rows) {
        Map<ScheduledTariff, List<TariffRow>> byTariff = new LinkedHashMap<>();
        rows.forEach(r -> byTariff.computeIfAbsent(r.tariff(), t -> new ArrayList<>()).add(r));
        byTariff.forEach(this::tariff);
    }

    private void tariff(ScheduledTariff tariff, List<TariffRow> rows) {
        outcome.set(rows.get(0).row(), tariff, Literals.TARIFF__NAME, tariff.getName());
        once(tariff, rows);
        List<TariffCharge> left = new ArrayList<>(tariff.getCharges());
        for (TariffRow row : rows.stream().filter(r -> r.part().kind().isPresent()).toList()) {
            Optional<TariffCharge> same = left.stream().filter(c -> SAME.stream().allMatch(f -> c.eGet(f).equals(value(row, f)))).findFirst();
            same.ifPresent(left::remove);
            TariffCharge charge = same.orElseGet(() -> added(row));
            OTHERS.forEach(f -> outcome.set(row.row(), charge, f, value(row, f)));
            EStructuralFeature note = CommonPackage.Literals.SOURCED__NOTE;
            Optional.ofNullable(row.values().get(note)).ifPresent(n -> outcome.set(row.row(), charge, note, n));
        }
        left.forEach(charge -> outcome.removed(rows.get(0).row(), charge, Literals.TARIFF_CHARGE__CHARGE));
    }

    /** A row says all of its charge: what it leaves out is as for any charge. */
    private static Object value(TariffRow row, EAttribute field) {
        return row.values().getOrDefault(field, field.getDefaultValue());
    }

    private TariffCharge added(TariffRow row) {
        TariffCharge charge = DepotFactory.eINSTANCE.createTariffCharge();
        SAME.forEach(f -> charge.eSet(f, value(row, f)));
        row.tariff().getCharges().add(charge);
        outcome.added(row.row(), charge);
        return charge;
    }

    /** What a tariff has once; several rows of it add up. */
    private void once(ScheduledTariff tariff, List<TariffRow> rows) {
        Map<TariffPart, List<TariffRow>> parts = new LinkedHashMap<>();
        rows.stream().filter(r -> r.part().kind().isEmpty()).forEach(r -> parts.computeIfAbsent(r.part(), p -> new ArrayList<>()).add(r));
        parts.forEach((part, of) -> {
            double sum = of.stream().mapToDouble(r -> (double) r.values().get(part.price())).sum();
            outcome.set(of.get(0).row(), tariff, part.price(), sum);
            if (of.size() > 1) {
                outcome.remark("Rows " + String.join(", ", of.stream().map(r -> Integer.toString(r.row())).toList()) + " are added up for tariff “"
                        + tariff.getName() + "”.");
            }
        });
    }
}
