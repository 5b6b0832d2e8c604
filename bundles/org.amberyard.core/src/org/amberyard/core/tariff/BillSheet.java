package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.core.tariff.BlockPrices.Slice;

/** A bill while it is written. */
final class BillSheet {
    private static final BillParts ENERGY = new BillParts(1, 0, 0);
    private static final BillParts DEMAND = new BillParts(0, 1, 0);
    private static final BillParts FIXED = new BillParts(0, 0, 1);

    private final MeterMonth metered;
    private final PeakHistory history;
    private final double lossFactor;
    private final double months;
    private final LineRounding rounding;
    private final List<BillLine> lines = new ArrayList<>();

    /** @param months how many months are charged, of what is asked by the month */
    BillSheet(MeterMonth metered, PeakHistory history, double lossFactor, double months, LineRounding rounding) {
        this.metered = metered;
        this.history = history;
        this.lossFactor = lossFactor;
        this.months = months;
        this.rounding = rounding;
    }

    List<BillLine> lines() {
        return lines;
    }

    void fixed(BillComponent component, FixedCharge charge) {
        double quantity = charge.unit() == BillUnit.DAY ? metered.dayCount() : months;
        add(component, charge.name(), quantity, charge.unit(), charge.price(), FIXED, Optional.empty());
    }

    void energy(BillComponent component, ChargeTerms charge, double billedKw) {
        double kwh = lossFactor * charge.hours().kwh(metered);
        for (Slice slice : charge.prices().over(months).slices(kwh, billedKw)) {
            add(component, charge.name() + BlockLabel.of(slice, BillUnit.KWH), slice.quantity(), BillUnit.KWH, slice.block().price(),
                    ENERGY, Optional.empty());
        }
    }

    void demand(BillComponent component, DemandTerms charge) {
        BilledDemand billed = charge.billed(metered, history, lossFactor);
        for (Slice slice : charge.charge().prices().slices(billed.kw(), 0)) {
            add(component, charge.charge().name() + BlockLabel.of(slice, BillUnit.KW), months * slice.quantity(),
                    months == 1 ? BillUnit.KW : BillUnit.KW_MONTH, slice.block().price(), DEMAND, Optional.of(billed));
        }
    }

    private void add(BillComponent component, String label, double quantity, BillUnit unit, double price, BillParts follows,
            Optional<BilledDemand> demand) {
        BillParts parts = rounding.apply(follows.times(quantity * price));
        lines.add(new BillLine(component, label, quantity, unit, price, parts, demand));
    }

    private void share(BillComponent component, ShareCharge charge) {
        BillParts base = sum(charge.of());
        lines.add(new BillLine(component, charge.name(), base.total(), BillUnit.MONEY, charge.share(),
                rounding.apply(base.times(charge.share())), Optional.empty()));
    }

    /** Percentages of what stands on the sheet, the minimum and taxes. */
    void close(Tariff tariff, MinimumBill minimum) {
        tariff.riders().shares().forEach(c -> share(BillComponent.RIDER, c));
        minimum(minimum);
        tariff.taxes().forEach(c -> share(BillComponent.TAX, c));
    }

    private void minimum(MinimumBill minimum) {
        double lacking = minimum.amount() - sum(minimum.counts()).total();
        if (lacking > 0) {
            add(BillComponent.MINIMUM, BillComponent.MINIMUM.label(), 1, BillUnit.MONTH, lacking, FIXED, Optional.empty());
        }
    }

    private BillParts sum(Set<BillComponent> components) {
        BillParts sum = BillParts.ZERO;
        for (BillLine line : lines) {
            sum = components.contains(line.component()) ? sum.plus(line.parts()) : sum;
        }
        return sum;
    }
}
