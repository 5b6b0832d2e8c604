package org.amberyard.model.validation;

import java.util.List;
import java.util.Map;
import org.amberyard.model.common.Month;
import org.amberyard.model.depot.DepotPackage.Literals;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;
import org.amberyard.model.depot.TariffDays;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.Phrase;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** A row of a tariff holds what belongs to its kind of charge. */
final class TariffChargeRule implements Rule {
    private static final List<EAttribute> PRICES = List.of(Literals.TARIFF_CHARGE__PRICE_PER_KWH,
            Literals.TARIFF_CHARGE__PRICE_PER_KW, Literals.TARIFF_CHARGE__SHARE);
    private static final List<EAttribute> BLOCKS = List.of(Literals.TARIFF_CHARGE__FROM_KWH,
            Literals.TARIFF_CHARGE__FROM_HOURS_OF_USE);
    private static final Map<TariffChargeKind, EAttribute> PRICE_OF = Map.of(
            TariffChargeKind.ENERGY, Literals.TARIFF_CHARGE__PRICE_PER_KWH,
            TariffChargeKind.RIDER_PER_KWH, Literals.TARIFF_CHARGE__PRICE_PER_KWH,
            TariffChargeKind.DEMAND, Literals.TARIFF_CHARGE__PRICE_PER_KW,
            TariffChargeKind.RIDER_SHARE, Literals.TARIFF_CHARGE__SHARE);

    @Override
    public void check(Study study, Findings findings) {
        Tariffs.byHours(study).forEach(tariff -> tariff.getCharges().forEach(row -> {
            checkPrice(row, findings);
            checkKind(row, findings);
            checkYears(row, findings);
        }));
    }

    private static void checkPrice(TariffCharge row, Findings findings) {
        PRICES.stream().filter(p -> p != PRICE_OF.get(row.getKind()) && (double) row.eGet(p) != 0)
                .forEach(p -> findings.error(row, p, findings.fact(row, p) + " but the kind is "
                        + row.getKind().getLiteral() + ", whose price is its "
                        + Phrase.inside(FieldInfo.of(PRICE_OF.get(row.getKind())).label()) + "; clear it or choose another kind."));
        if (row.getKind() == TariffChargeKind.ENERGY && row.getPricePerKwh() < 0) {
            findings.error(row, Literals.TARIFF_CHARGE__PRICE_PER_KWH,
                    findings.fact(row, Literals.TARIFF_CHARGE__PRICE_PER_KWH) + "; only riders may be negative.");
        }
    }

    private static void checkKind(TariffCharge row, Findings findings) {
        if (row.getRatchetShare() > 0 && row.getKind() != TariffChargeKind.DEMAND) {
            findings.error(row, Literals.TARIFF_CHARGE__RATCHET_SHARE,
                    findings.fact(row, Literals.TARIFF_CHARGE__RATCHET_SHARE) + " but only demand charges have a ratchet; clear it.");
        }
        if (row.getKind() == TariffChargeKind.DEMAND || row.getKind() == TariffChargeKind.RIDER_SHARE) {
            BLOCKS.stream().filter(f -> (double) row.eGet(f) > 0).forEach(f -> findings.error(row, f, findings.fact(row, f)
                    + " but only charges per energy have blocks; clear it."));
        }
        if (row.getKind() == TariffChargeKind.RIDER_SHARE && !isAlways(row)) {
            findings.error(row, Literals.TARIFF_CHARGE__KIND,
                    "a rider that is a share of charges applies at all times; clear its months, days, hours and years.");
        }
    }

    private static boolean isAlways(TariffCharge row) {
        return row.getFirstMonth() == Month.JANUARY && row.getLastMonth() == Month.DECEMBER
                && row.getDays() == TariffDays.ALL && row.getFromMin() == row.getToMin() && row.getFirstContractYear() == 1
                && Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR.getDefaultValue().equals(row.getLastContractYear());
    }

    private static void checkYears(TariffCharge row, Findings findings) {
        if (row.getLastContractYear() < row.getFirstContractYear()) {
            findings.error(row, Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR,
                    findings.fact(row, Literals.TARIFF_CHARGE__LAST_CONTRACT_YEAR) + ", before the first, "
                            + row.getFirstContractYear() + "; enter a later one.");
        }
    }
}
