package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.plans.PlansFactory;
import org.amberyard.model.plans.PlansPackage.Literals;
import org.amberyard.model.plans.Replacement;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Makes what a schedule says of a bus its steps in the plan: steps of the same year are kept, others get the years that are left. What the
 * schedule has no column of stays as it is while the same type is bought.
 */
final class PlanStepUpdate {
    private static final List<EStructuralFeature> OF_THE_PURCHASE = List.of(Literals.REPLACEMENT__PROGRAMMES, Literals.REPLACEMENT__USED_AGE_YEARS,
            Literals.REPLACEMENT__USED_ODOMETER_KM, Literals.REPLACEMENT__USED_PRICE, Literals.REPLACEMENT__USED_HEALTH);

    private static final List<EStructuralFeature> ALL = Stream.concat(
            Stream.of(Literals.REPLACEMENT__YEAR, Literals.REPLACEMENT__NEW_TYPE, Literals.REPLACEMENT__CASCADE_TO, CommonPackage.Literals.SOURCED__NOTE),
            OF_THE_PURCHASE.stream()).toList();

    private final SheetOutcome outcome;

    PlanStepUpdate(SheetOutcome outcome) {
        this.outcome = outcome;
    }

    void make(List<PlanRow> rows) {
        Map<List<Object>, List<PlanRow>> byBus = new LinkedHashMap<>();
        rows.forEach(r -> byBus.computeIfAbsent(List.of(r.plan(), r.bus()), k -> new ArrayList<>()).add(r));
        byBus.values().forEach(this::bus);
    }

    private void bus(List<PlanRow> rows) {
        List<Replacement> left = new ArrayList<>(rows.get(0).plan().getReplacements().stream().filter(s -> s.getBus() == rows.get(0).bus())
                .sorted(Comparator.comparingInt(Replacement::getYear)).toList());
        List<PlanRow> wanted = rows.stream().filter(r -> r.action() != PlanAction.KEEP).sorted(Comparator.comparingInt(PlanRow::year)).toList();
        Map<PlanRow, Replacement> kept = new HashMap<>();
        for (PlanRow row : wanted) {
            Optional<Replacement> same = left.stream().filter(s -> s.getYear() == row.year()).findFirst();
            same.ifPresent(s -> kept.put(row, s));
            same.ifPresent(left::remove);
        }
        for (PlanRow row : wanted) {
            Replacement step = kept.containsKey(row) ? kept.get(row) : left.isEmpty() ? added(row) : left.remove(0);
            fill(row, step);
        }
        left.forEach(step -> outcome.removed(rows.get(0).row(), step, ALL));
    }

    private Replacement added(PlanRow row) {
        Replacement step = PlansFactory.eINSTANCE.createReplacement();
        step.setBus(row.bus());
        step.setYear(row.year());
        row.plan().getReplacements().add(step);
        outcome.added(row.row(), step);
        return step;
    }

    /** Another type is another purchase, of which nothing is known yet; a bus that goes without one moves nowhere either. */
    private void fill(PlanRow row, Replacement step) {
        Map<EStructuralFeature, Object> values = new LinkedHashMap<>();
        if (step.getNewType() != row.type().orElse(null)) {
            OF_THE_PURCHASE.forEach(field -> values.put(field, field.isMany() ? List.of() : field.getDefaultValue()));
        }
        if (row.type().isEmpty()) {
            values.put(Literals.REPLACEMENT__CASCADE_TO, null);
        }
        row.programmes().ifPresent(p -> values.put(Literals.REPLACEMENT__PROGRAMMES, p));
        values.putAll(row.others());
        outcome.set(row.row(), step, Literals.REPLACEMENT__YEAR, row.year());
        outcome.set(row.row(), step, Literals.REPLACEMENT__NEW_TYPE, row.type().orElse(null));
        values.forEach((field, value) -> outcome.set(row.row(), step, field, value));
    }
}
