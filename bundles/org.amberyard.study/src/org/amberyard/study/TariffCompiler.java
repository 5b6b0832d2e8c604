package org.amberyard.study;

import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.amberyard.core.tariff.BillComponent;
import org.amberyard.core.tariff.FixedCharge;
import org.amberyard.core.tariff.MinimumBill;
import org.amberyard.core.tariff.Riders;
import org.amberyard.core.tariff.ShareCharge;
import org.amberyard.model.depot.FlatTariff;
import org.amberyard.model.depot.ScheduledTariff;
import org.amberyard.model.depot.Tariff;
import org.amberyard.model.depot.TariffCharge;
import org.amberyard.model.depot.TariffChargeKind;

/** Compiles tariffs, flat ones and those by hours, into what prints bills. */
final class TariffCompiler {
    private static final String CUSTOMER = "Customer charge";
    private static final String TAXES = "Taxes";
    private static final Set<BillComponent> SHARED = EnumSet.of(BillComponent.ENERGY, BillComponent.DEMAND);

    private TariffCompiler() {
    }

    /**
     * A tariff that validation has found nothing wrong with.
     *
     * @throws IllegalArgumentException when charges contradict each other
     */
    static org.amberyard.core.tariff.Tariff compile(Tariff tariff) {
        if (tariff instanceof FlatTariff flat) {
            return org.amberyard.core.tariff.Tariff.flat(flat.getName(), flat.getMonthlyCharge(), flat.getEnergyPricePerKwh(),
                    flat.getRiderPerKwh(), flat.getDemandPricePerKw(), flat.getTaxShare());
        }
        return byHours((ScheduledTariff) tariff);
    }

    private static org.amberyard.core.tariff.Tariff byHours(ScheduledTariff tariff) {
        Riders riders = new Riders(charges(tariff, TariffChargeKind.RIDER_PER_KWH, ChargeRows::energy), List.of(), List.of(),
                shares(tariff));
        return new org.amberyard.core.tariff.Tariff(tariff.getName(),
                List.of(FixedCharge.monthly(CUSTOMER, tariff.getCustomerCharge())), minimum(tariff),
                charges(tariff, TariffChargeKind.ENERGY, ChargeRows::energy),
                charges(tariff, TariffChargeKind.DEMAND, ChargeRows::demand), riders, taxes(tariff), tariff.getLossFactor());
    }

    private static MinimumBill minimum(ScheduledTariff tariff) {
        return tariff.getMinimumBill() > 0 ? MinimumBill.ofCharges(tariff.getMinimumBill()) : MinimumBill.NONE;
    }

    private static List<ShareCharge> taxes(ScheduledTariff tariff) {
        return tariff.getTaxShare() > 0 ? List.of(ShareCharge.ofCharges(TAXES, tariff.getTaxShare())) : List.of();
    }

    private static <T> List<T> charges(ScheduledTariff tariff, TariffChargeKind kind,
            BiFunction<String, List<TariffCharge>, T> charge) {
        return rows(tariff, kind).map(TariffCharge::getCharge).distinct()
                .map(name -> charge.apply(name, rows(tariff, kind).filter(r -> r.getCharge().equals(name)).toList())).toList();
    }

    private static List<ShareCharge> shares(ScheduledTariff tariff) {
        return rows(tariff, TariffChargeKind.RIDER_SHARE).map(r -> new ShareCharge(r.getCharge(), r.getShare(), SHARED)).toList();
    }

    private static Stream<TariffCharge> rows(ScheduledTariff tariff, TariffChargeKind kind) {
        return tariff.getCharges().stream().filter(r -> r.getKind() == kind);
    }
}
