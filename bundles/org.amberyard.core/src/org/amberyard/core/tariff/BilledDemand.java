package org.amberyard.core.tariff;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A billed demand and what set it.
 *
 * @param kw billed demand, kW, losses to the point of delivery included
 * @param rule what set it
 * @param share share of the peak's demand that is billed, before losses
 * @param peak the moment that set it; empty for a minimum, or where there is no demand
 */
public record BilledDemand(double kw, DemandRule rule, double share, Optional<PeakMoment> peak) {

    static BilledDemand measured(Optional<PeakMoment> peak, double lossFactor) {
        return new BilledDemand(lossFactor * peak.map(PeakMoment::kw).orElse(0.0), DemandRule.MEASURED, 1, peak);
    }

    static BilledDemand ratchet(double share, Optional<PeakMoment> peak, double lossFactor) {
        return new BilledDemand(share * lossFactor * peak.map(PeakMoment::kw).orElse(0.0), DemandRule.RATCHET, share, peak);
    }

    static BilledDemand minimum(double kw) {
        return new BilledDemand(kw, DemandRule.MINIMUM, 1, Optional.empty());
    }

    /** The greatest, the first of equals. */
    static BilledDemand greatest(List<BilledDemand> demands) {
        BilledDemand greatest = demands.get(0);
        for (BilledDemand demand : demands) {
            greatest = demand.kw() > greatest.kw() ? demand : greatest;
        }
        return greatest;
    }

    /** Words such as "187.2 kW at 17:15 on school day, January" or "60 % of 312.0 kW at 06:30 on school day, August". */
    public String explanation() {
        if (rule == DemandRule.MINIMUM) {
            return String.format(Locale.ROOT, "at least %.1f kW are billed", kw);
        }
        String moment = peak.map(p -> String.format(Locale.ROOT, "%.1f kW %s", p.kw(), p.label())).orElse("no demand");
        return rule == DemandRule.RATCHET ? String.format(Locale.ROOT, "%.0f %% of %s", 100 * share, moment) : moment;
    }
}
