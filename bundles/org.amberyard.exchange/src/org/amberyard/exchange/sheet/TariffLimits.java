package org.amberyard.exchange.sheet;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What a tariff has once holds all year, at all hours and for any use: a fixed charge, the minimum bill, taxes. */
final class TariffLimits {
    private static final List<EAttribute> CHARGES_ONLY = List.of(Literals.TARIFF_CHARGE__FIRST_MONTH, Literals.TARIFF_CHARGE__LAST_MONTH,
            Literals.TARIFF_CHARGE__DAYS, Literals.TARIFF_CHARGE__FROM_MIN, Literals.TARIFF_CHARGE__TO_MIN, Literals.TARIFF_CHARGE__FROM_KWH,
            Literals.TARIFF_CHARGE__FROM_HOURS_OF_USE, Literals.TARIFF_CHARGE__RATCHET_SHARE, Literals.TARIFF_CHARGE__RATCHET_MONTHS,
            Literals.TARIFF_CHARGE__FIRST_CONTRACT_YEAR, Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR, Literals.TARIFF_CHARGE__PRICE_PER_KWH,
            Literals.TARIFF_CHARGE__PRICE_PER_KW, Literals.TARIFF_CHARGE__SHARE);
    private static final Map<EAttribute, String> TOGETHER = Map.of(Literals.TARIFF_CHARGE__FIRST_MONTH, TariffSheet.SEASON,
            Literals.TARIFF_CHARGE__LAST_MONTH, TariffSheet.SEASON, Literals.TARIFF_CHARGE__FROM_MIN, TariffSheet.HOURS,
            Literals.TARIFF_CHARGE__TO_MIN, TariffSheet.HOURS);

    private TariffLimits() {
    }

    /**
     * Checks a row of something that a tariff has once.
     *
     * @throws CellFault when it is limited as only charges are
     */
    static void check(MappedRow row, TariffPart part, Map<EStructuralFeature, Object> found) throws CellFault {
        for (EAttribute field : part.kind().isPresent() ? List.<EAttribute>of() : CHARGES_ONLY) {
            if (found.containsKey(field) && !Objects.equals(found.get(field), field.getDefaultValue())) {
                String id = row.has(field.getName()) ? field.getName() : TOGETHER.getOrDefault(field, field.getName());
                throw row.wrong(id, "“" + row.cell(id).text() + "” cannot limit " + part.words() + ", which a tariff has once, all year, at all hours and "
                        + "for any use. Clear the cell, and keep one row with what holds all year.");
            }
        }
    }
}
