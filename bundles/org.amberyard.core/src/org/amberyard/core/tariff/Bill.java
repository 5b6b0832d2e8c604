package org.amberyard.core.tariff;

import java.util.List;

/**
 * A month's bill, line by line.
 *
 * @param month month, 0 for January
 * @param contractYear year of the contract
 * @param lines lines in the order in which they are printed
 */
public record Bill(int month, int contractYear, List<BillLine> lines) {

    public Bill {
        lines = List.copyOf(lines);
    }

    /** Bill of a metered month, not rounded: what calculations use. */
    public static Bill of(Tariff tariff, int contractYear, MeterMonth metered, PeakHistory history) {
        return tariff.inForce(metered.month(), contractYear).bill(metered, history, LineRounding.NONE);
    }

    /** Bill of a metered month as printed: each line in whole cents, the total their sum. */
    public static Bill printed(Tariff tariff, int contractYear, MeterMonth metered, PeakHistory history) {
        return tariff.inForce(metered.month(), contractYear).bill(metered, history, LineRounding.CENT);
    }

    /** Money by what it follows. */
    public BillParts parts() {
        return lines.stream().map(BillLine::parts).reduce(BillParts.ZERO, BillParts::plus);
    }

    /**
     * The bill when prices have risen: charges rise each by its own index, then come percentages, the
     * minimum and
     * taxes. So a month that is lifted to the minimum pays the minimum until its charges have outgrown it.
     *
     * @param tariff the tariff of the bill
     */
    public Bill at(Tariff tariff, BillIndex index) {
        BillSheet sheet = new BillSheet(new MeterMonth(month, List.of()), PeakHistory.NONE, 1, 1, LineRounding.NONE);
        lines.stream().filter(BillLine::charge).forEach(l -> sheet.lines().add(l.at(index)));
        sheet.close(tariff, tariff.minimum().times(index.fixed()));
        return new Bill(month, contractYear, sheet.lines());
    }

    /** Money by what it follows when prices have risen; see {@link #at}. */
    public BillParts parts(Tariff tariff, BillIndex index) {
        return at(tariff, index).parts();
    }

    /** Money to be paid. */
    public double total() {
        return parts().total();
    }

    /** Money of a component. */
    public double amount(BillComponent component) {
        return lines.stream().filter(l -> l.component() == component).mapToDouble(BillLine::amount).sum();
    }
}
