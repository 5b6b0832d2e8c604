package org.amberyard.core.tariff;

import java.util.ArrayList;
import java.util.List;

/**
 * Bills of twelve months.
 *
 * @param bills bills, one month after the other
 */
public record BillYear(List<Bill> bills) {
    private static final int MONTHS = 12;

    public BillYear {
        bills = List.copyOf(bills);
    }

    /**
     * A steady year: the year before is taken to have been like it, so that ratchets see the demands that the load itself
     * makes. In the first year after a change this bills the demands as they will be once the change is a year old; where the
     * load has fallen, {@link #after} with the months before the change bills what the ratchet still remembers.
     *
     * @param months twelve months, one after the other
     */
    public static BillYear steady(Tariff tariff, int contractYear, List<MeterMonth> months) {
        return after(tariff, contractYear, months, new PeakHistory(months));
    }

    /** A steady year as printed: each line in whole cents. */
    public static BillYear printedSteady(Tariff tariff, int contractYear, List<MeterMonth> months) {
        return after(tariff, contractYear, months, new PeakHistory(months), LineRounding.CENT);
    }

    /**
     * A year after known months.
     *
     * @param months twelve months, one after the other
     * @param history months before the first of them; {@link PeakHistory#NONE} for a new service
     * @throws IllegalArgumentException when there are not twelve months, or months do not follow one another
     */
    public static BillYear after(Tariff tariff, int contractYear, List<MeterMonth> months, PeakHistory history) {
        return after(tariff, contractYear, months, history, LineRounding.NONE);
    }

    private static BillYear after(Tariff tariff, int contractYear, List<MeterMonth> months, PeakHistory history,
            LineRounding rounding) {
        if (months.size() != MONTHS) {
            throw new IllegalArgumentException("a year of bills needs 12 months, not " + months.size());
        }
        List<Bill> bills = new ArrayList<>();
        PeakHistory before = history;
        for (MeterMonth month : months) {
            bills.add(tariff.inForce(month.month(), contractYear).bill(month, before, rounding));
            before = before.then(month);
        }
        return new BillYear(bills);
    }

    /** Money by what it follows. */
    public BillParts parts() {
        return bills.stream().map(Bill::parts).reduce(BillParts.ZERO, BillParts::plus);
    }

    /** Money by what it follows when the prices of a tariff have risen, see {@link Bill#parts(Tariff, BillIndex)}. */
    public BillParts parts(Tariff tariff, BillIndex index) {
        return bills.stream().map(b -> b.parts(tariff, index)).reduce(BillParts.ZERO, BillParts::plus);
    }

    /** Money to be paid. */
    public double total() {
        return parts().total();
    }
}
