package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.depot.DepotFactory;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.study.RoundedText;
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

    private static final List<EAttribute> ALL = Stream.concat(SAME.stream(), OTHERS.stream()).toList();

    private final SheetOutcome outcome;
    private final RoundedText figures;

    TariffUpdate(SheetOutcome outcome) {
        this.outcome = outcome;
        this.figures = new RoundedText(outcome.study());
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
            ALL.forEach(f -> outcome.set(row.row(), charge, f, value(row, f)));
            EStructuralFeature note = CommonPackage.Literals.SOURCED__NOTE;
            Optional.ofNullable(row.values().get(note)).ifPresent(n -> outcome.set(row.row(), charge, note, n));
        }
        left.forEach(charge -> outcome.removed(rows.get(0).row(), charge, ALL));
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

    /** What a tariff has once; several rows of it add up, but the least bill is one. */
    private void once(ScheduledTariff tariff, List<TariffRow> rows) {
        Map<TariffPart, List<TariffRow>> parts = new LinkedHashMap<>();
        rows.stream().filter(r -> r.part().kind().isEmpty()).forEach(r -> parts.computeIfAbsent(r.part(), p -> new ArrayList<>()).add(r));
        parts.forEach((part, of) -> once(tariff, part, of));
        tellKept(tariff, parts.keySet());
    }

    /** Charges that a sheet leaves out go; what a tariff has once stays, since sheets of charges alone are common. */
    private void tellKept(ScheduledTariff tariff, Set<TariffPart> told) {
        List<String> kept = Arrays.stream(TariffPart.values()).filter(p -> p.kind().isEmpty() && !told.contains(p))
                .filter(p -> (double) tariff.eGet(p.price()) != 0)
                .map(p -> FieldInfo.of(p.price()).label() + " " + figures.shown(p.price(), tariff.eGet(p.price()))).toList();
        if (!kept.isEmpty()) {
            outcome.remark("The sheet says nothing of these of tariff “" + tariff.getName() + "”, so they stay as they are: " + String.join(", ", kept)
                    + ". Give one a row with 0 where it is gone.");
        }
    }

    private void once(ScheduledTariff tariff, TariffPart part, List<TariffRow> of) {
        if (of.size() > 1 && part == TariffPart.MINIMUM) {
            outcome.problem(of.get(1).row(), "Rows " + numbers(of) + " each give a minimum bill of tariff “" + tariff.getName()
                    + "”, which has one; keep one of them.");
            return;
        }
        outcome.set(of.get(0).row(), of.size() == 1 ? TariffSheet.PRICE : "", tariff, part.price(),
                of.stream().mapToDouble(r -> (double) r.values().get(part.price())).sum());
        if (of.size() > 1) {
            outcome.remark("Rows " + numbers(of) + " are added up for tariff “" + tariff.getName() + "”.");
        }
        List<TariffRow> noted = of.stream().filter(r -> r.values().containsKey(CommonPackage.Literals.SOURCED__NOTE)).toList();
        if (!noted.isEmpty()) {
            outcome.remark("Notes of rows of fixed charges, minimum bills and taxes are not taken over, since they are of no charge of their own: row "
                    + numbers(noted) + ".");
        }
    }

    private static String numbers(List<TariffRow> rows) {
        return String.join(", ", rows.stream().map(r -> Integer.toString(r.row())).toList());
    }
}
