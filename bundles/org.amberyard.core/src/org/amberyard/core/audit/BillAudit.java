package org.amberyard.core.audit;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Collectors;
import org.amberyard.core.tariff.Bill;
import org.amberyard.core.tariff.BilledDemand;
import org.amberyard.core.tariff.BillingPeriod;
import org.amberyard.core.tariff.DatedLoad;
import org.amberyard.core.tariff.MeterMonth;

/**
 * A printed bill held against what its tariff asks for the metered load of the same days.
 *
 * @param bill the printed bill and its tariff
 * @param missing days of the period that were not metered; where there are any, nothing is computed
 * @param unknownBefore earlier periods at which a ratchet looks back and of which some day is not known
 * @param meteredKwh energy that the meter counted, losses to the point of delivery included, kWh; 0 without the whole period
 * @param meteredKw highest demand that it counted, likewise, kW
 * @param computed the bill by the tariff, in whole cents
 */
public record BillAudit(BillRecord bill, List<LocalDate> missing, List<BillingPeriod> unknownBefore, double meteredKwh,
        double meteredKw, Optional<Bill> computed) {
    /** How far apart figures may be that agree, as a share of the printed one. */
    public static final double TOLERANCE = 0.01;
    private static final int LISTED = 6;

    public BillAudit {
        missing = List.copyOf(missing);
        unknownBefore = List.copyOf(unknownBefore);
    }

    static BillAudit of(BillRecord bill, DatedLoad load) {
        BillingPeriod period = bill.printed().period();
        List<LocalDate> missing = load.missing(period);
        if (!missing.isEmpty()) {
            return new BillAudit(bill, missing, List.of(), 0, 0, Optional.empty());
        }
        MeterMonth metered = load.metered(period, period.month(), bill.holidays());
        double loss = bill.tariff().lossFactor();
        return new BillAudit(bill, missing, bill.over(load).unknownBefore(period), loss * metered.kwh(), loss * metered.peakKw(),
                Optional.of(bill.over(load).printed(period)));
    }

    /** Money by the tariff less money as printed; empty where days are missing. */
    public OptionalDouble difference() {
        return computed.map(c -> OptionalDouble.of(c.total() - bill.printed().due())).orElse(OptionalDouble.empty());
    }

    /** The difference as a share of the printed bill; empty where that is nothing. */
    public OptionalDouble differenceShare() {
        double due = bill.printed().due();
        return difference().isPresent() && due != 0 ? OptionalDouble.of(difference().getAsDouble() / Math.abs(due)) : OptionalDouble.empty();
    }

    /** Lines side by side; none where days are missing. */
    public List<AuditLine> lines() {
        return computed.map(c -> LineMatching.of(bill.printed().lines(), c.lines())).orElse(List.of());
    }

    /** What comes of it. */
    public AuditVerdict verdict() {
        if (computed.isEmpty()) {
            return AuditVerdict.NOT_COVERED;
        }
        if (agree(computed.get().total(), bill.printed().due())) {
            return AuditVerdict.AGREES;
        }
        return energyDiffers() || demandDiffers() ? AuditVerdict.DATA : AuditVerdict.TARIFF;
    }

    /** True when the meter counted another energy than was billed. */
    public boolean energyDiffers() {
        return computed.isPresent() && bill.printed().kwh().isPresent() && !agree(meteredKwh, bill.printed().kwh().getAsDouble());
    }

    /** True when the printed demand is neither the highest that the meter counted nor one that the tariff bills. */
    public boolean demandDiffers() {
        return computed.isPresent() && bill.printed().kw().isPresent() && !agree(meteredKw, bill.printed().kw().getAsDouble())
                && computed.get().lines().stream().flatMap(l -> l.demand().stream()).map(BilledDemand::kw)
                        .noneMatch(kw -> agree(kw, bill.printed().kw().getAsDouble()));
    }

    private static boolean agree(double figure, double printed) {
        return Math.abs(figure - printed) <= TOLERANCE * Math.abs(printed);
    }

    /** The missing days in words, the first of them where there are many. */
    public String missingWords() {
        String days = missing.stream().limit(LISTED).map(LocalDate::toString).collect(Collectors.joining(", "));
        return missing.size() <= LISTED ? days : days + " and " + (missing.size() - LISTED) + " more, the last " + missing.get(missing.size() - 1);
    }

}
