package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.amberyard.core.funding.BusAward;
import org.amberyard.core.funding.PortAward;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.ShareAward;
import org.amberyard.model.funding.FundingPackage;
import org.amberyard.report.ProgrammeYears;
import org.amberyard.report.document.CellFormat;
import org.eclipse.emf.ecore.EAttribute;

/**
 * What a programme pays, for what, when and up to which limit, as clauses of notices. Limits that the study leaves open are left
 * out.
 */
final class ProgrammeTerms {
    private final PaperInput in;
    private final Programme programme;
    private final List<String> clauses = new ArrayList<>();

    private ProgrammeTerms(PaperInput in, Programme programme) {
        this.in = in;
        this.programme = programme;
    }

    static List<String> of(PaperInput in, Programme programme) {
        ProgrammeTerms terms = new ProgrammeTerms(in, programme);
        terms.clauses.add(ProgrammeYears.of(programme, in.study().baseYear()));
        Map<String, BusAward> buses = new TreeMap<>(programme.offer().buses());
        buses.forEach(terms::addBus);
        terms.addPorts(programme.offer().ports());
        terms.addShare("site works", programme.offer().works());
        terms.addShare("training and tools", programme.offer().training());
        terms.addLimits();
        return terms.clauses;
    }

    /** True where a most number of buses is stated. */
    static boolean limitsBuses(Programme programme) {
        return isStated(programme.budget().maxBuses(), FundingPackage.Literals.PROGRAMME__MAX_BUSES);
    }

    private static boolean isStated(double limit, EAttribute field) {
        return Double.isFinite(limit) && limit != ((Number) field.getDefaultValue()).doubleValue();
    }

    private void addBus(String body, BusAward award) {
        List<String> parts = new ArrayList<>();
        addAmount(parts, award.amount());
        addPart(parts, award.priceShare(), "of the price");
        addPart(parts, award.differenceShare(), "of the price above the like-for-like bus");
        add("electric bus of body type " + body, parts, "", isStated(award.cap(), FundingPackage.Literals.BUS_AWARD__CAP)
                ? award.cap() : Double.POSITIVE_INFINITY);
    }

    private void addPorts(PortAward award) {
        List<String> parts = new ArrayList<>();
        addAmount(parts, award.amountPerPort());
        addPart(parts, award.share(), "of the cost" + switch (award.covers()) {
            case ALL -> "";
            case HARDWARE -> " of hardware";
            case INSTALLATION -> " of installation";
        });
        add("charging ports", parts, " each", isStated(award.capPerPort(), FundingPackage.Literals.PROGRAMME__CAP_PER_PORT)
                ? award.capPerPort() : Double.POSITIVE_INFINITY);
    }

    private void addShare(String what, ShareAward award) {
        List<String> parts = new ArrayList<>();
        addPart(parts, award.share(), "of the cost");
        add(what, parts, " each", award.cap());
    }

    private void addAmount(List<String> parts, double amount) {
        if (amount > 0) {
            parts.add(money(amount) + " each");
        }
    }

    private static void addPart(List<String> parts, double share, String of) {
        if (share > 0) {
            parts.add(percent(share) + " " + of);
        }
    }

    /** A share as notices state it, with a decimal only where it has one, kept on one line with its sign. */
    static String percent(double share) {
        return BigDecimal.valueOf(share).movePointRight(2).setScale(1, RoundingMode.HALF_UP).stripTrailingZeros().toPlainString()
                + "\u00a0%";
    }

    private void add(String what, List<String> parts, String each, double cap) {
        if (!parts.isEmpty()) {
            clauses.add(what + ": " + String.join(" and ", parts) + (Double.isFinite(cap) ? ", at most " + money(cap) + each : ""));
        }
    }

    private void addLimits() {
        if (!programme.offer().buses().isEmpty() && limitsBuses(programme)) {
            clauses.add("at most " + programme.budget().maxBuses() + " buses");
        }
        addLimit(programme.budget().total(), " in all");
        addLimit(programme.budget().perYear(), " for the purchases of a year");
        if (programme.offer().afterOthers()) {
            clauses.add("shares are of what programmes before it leave of the cost");
        }
        if (programme.payout().lagYears() > 0) {
            clauses.add("paid years after the purchase: " + programme.payout().lagYears());
        }
    }

    private void addLimit(double most, String of) {
        if (Double.isFinite(most)) {
            clauses.add("at most " + money(most) + of);
        }
    }

    private String money(double amount) {
        return in.currency() + " " + CellFormat.MONEY.print(CellFormat.MONEY.rounded(amount));
    }
}
