package org.amberyard.core.tariff;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The bill of a billing period that need be no calendar month.
 *
 * <p>A period that a tariff prices alike throughout is billed as one month. Where prices or hours change within it, each part is
 * billed by its own terms: energy by what was drawn in it, demand by the highest demand in it, what is charged by the month by
 * its share of the days; blocks of energy too are cut by that share. What a tariff asks by the month it asks once for a period of
 * 25 to 35 days. Common practice, no source: tariff sheets differ in how they prorate, and many do not say.
 *
 * @param tariff the tariff
 * @param contract when service on the tariff began; a price that changes with a year of the contract parts the period too
 * @param holidays holidays of the tariff
 * @param load what the meter counted, the months before the period included where a ratchet looks back at them
 */
public record PeriodBill(Tariff tariff, ContractStart contract, List<HolidayRule> holidays, DatedLoad load) {
    private static final int MONTHS = 12;
    private static final int LOOKED_BACK = 11;

    public PeriodBill {
        holidays = List.copyOf(holidays);
    }

    /** The bill as printed: each line in whole cents, the total their sum. */
    public Bill printed(BillingPeriod period) {
        List<BillingPeriod> parts = parts(period);
        BillSheet all = null;
        for (BillingPeriod part : parts) {
            BillSheet sheet = charges(period, part);
            if (parts.size() > 1) {
                sheet.lines().replaceAll(l -> l.named(l.label() + ", " + part.words()));
            }
            if (all == null) {
                all = sheet;
            } else {
                all.lines().addAll(sheet.lines());
            }
        }
        all.close(tariff, tariff.minimum().times(period.months()));
        return new Bill(period.month(), contract.contractYear(period.first()), all.lines());
    }

    /** Periods before, of a month each, in which a ratchet looks back and some day is not known; none where no charge looks back. */
    public List<BillingPeriod> unknownBefore(BillingPeriod period) {
        int months = tariff.onDemand().flatMap(d -> d.ratchet().stream()).filter(r -> r.share() > 0).mapToInt(Ratchet::priorMonths).max().orElse(0);
        return IntStream.rangeClosed(1, months).mapToObj(period::before).filter(b -> !load.missing(b).isEmpty()).toList();
    }

    private BillSheet charges(BillingPeriod period, BillingPeriod part) {
        boolean whole = part.equals(period);
        int month = whole ? period.month() : monthOf(part.first());
        MeterMonth metered = load.metered(part, month, holidays);
        double share = whole ? 1 : (double) part.days() / period.days();
        return tariff.inForce(month, contract.contractYear(part.first()))
                .charges(metered, history(period, part), period.months() * share, LineRounding.CENT);
    }

    /** Months before a part, told by the known days of as many periods before and of the period's own parts before it; no day counts twice. */
    private PeakHistory history(BillingPeriod period, BillingPeriod part) {
        if (!tariff.remembers()) {
            return PeakHistory.NONE;
        }
        List<MeterMonth> before = new ArrayList<>();
        for (int back = LOOKED_BACK; back >= 1; back--) {
            before.add(load.metered(period.before(back), Math.floorMod(period.monthOfRow() - back, MONTHS), holidays));
        }
        for (BillingPeriod piece : period.upTo(part)) {
            MeterMonth metered = load.metered(piece, monthOf(piece.first()), holidays);
            MeterMonth last = before.get(before.size() - 1);
            if (last.month() == metered.month()) {
                before.set(before.size() - 1, last.with(metered));
            } else {
                before.add(metered);
            }
        }
        return new PeakHistory(before);
    }

    /** The stretches of a period that the tariff prices alike. */
    private List<BillingPeriod> parts(BillingPeriod period) {
        List<BillingPeriod> parts = new ArrayList<>();
        for (BillingPeriod month : period.byMonth()) {
            int last = parts.size() - 1;
            if (last >= 0 && terms(parts.get(last).last()).asks(terms(month.first()))) {
                parts.set(last, parts.get(last).until(month));
            } else {
                parts.add(month);
            }
        }
        return parts;
    }

    private static int monthOf(LocalDate day) {
        return day.getMonthValue() - 1;
    }

    private TariffMonth terms(LocalDate day) {
        return tariff.inForce(monthOf(day), contract.contractYear(day));
    }
}
