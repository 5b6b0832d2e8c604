package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.units.Unit;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.Section;

/** What a board is asked to decide: a recommendation, and a resolution to vote on with every part of the money. */
final class BoardDecision {
    private static final String FORM = "Counsel and the clerk adapt the wording (" + SourceWords.ASSUMED + ").";

    private static final double KG_PER_TONNE = 1000;

    private final PaperInput in;
    private final ProjectMoney money;

    /** What a programme pays of the project. */
    private record Part(String programme, BigDecimal amount) {
    }

    private BoardDecision(PaperInput in) {
        this.in = in;
        this.money = ProjectMoney.of(in);
    }

    static Section of(PaperInput in) {
        BoardDecision decision = new BoardDecision(in);
        List<String> words = Stream.of(Stream.of(decision.recommendation()), AppliedProgramme.paysNothing(in).stream(), decision.awards()
                .stream(), Stream.of(FORM)).flatMap(s -> s).toList();
        return Section.of("What to decide", new Block.Paragraph(String.join(" ", words)), new Block.Paragraph(decision.resolution(), true));
    }

    private String recommendation() {
        return "Recommendation: to vote on “" + in.plan().name() + "”; table 1 has the alternatives. " + cheapest();
    }

    /** What becomes of own money where an award is not made. */
    private Optional<String> awards() {
        AwardCertainty certainty = AwardCertainty.of(in);
        return certainty.caveat().map(c -> c + certainty.ownIfNotMade().map(o -> " " + o).orElse(""));
    }

    /** Which plan costs least, since the one that is proposed need not be it. */
    private String cheapest() {
        PlanResult least = in.result().plans().stream().min(Comparator.comparingDouble(p -> p.measures().presentCost())).orElseThrow();
        double more = in.plan().measures().presentCost() - least.measures().presentCost();
        return more <= 0 ? "It has the least present cost of these." : "“" + least.name() + "” has the least present cost, "
                + amount(CellFormat.MONEY.rounded(more)) + " less than “" + in.plan().name() + "”, which takes "
                + lessThan(in.shown(Unit.LITRE, least.measures().fuelL() - in.plan().measures().fuelL()), in.symbol(Unit.LITRE))
                + " fuel and causes " + lessThan((least.measures().co2eKg() - in.plan().measures().co2eKg()) / KG_PER_TONNE, "t")
                + " CO2e; the board weighs whether that is worth the difference.";
    }

    private static String lessThan(double saved, String unit) {
        return CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(Math.abs(saved))) + " " + unit + (saved < 0 ? " more" : " less");
    }

    private String resolution() {
        StringBuilder text = new StringBuilder("RESOLVED, that the Board adopts “").append(in.plan().name())
                .append("” as its plan of bus replacement, to be reviewed each year");
        if (money.total().signum() > 0) {
            appliedTo().ifPresent(p -> text.append("; authorizes an application to ").append(amount(new Part(p, money.paidBy(p)))));
            if (!others().isEmpty()) {
                text.append("; accepts ").append(words(others()));
            }
            text.append("; commits ").append(amount(money.own())).append(" of own money to the project of ").append(amount(money.total()))
                    .append(" (money of the years of purchase), subject to appropriation in each fiscal year");
        }
        List<String> directed = directed();
        return text.append(directed.isEmpty() ? "" : "; directs that " + String.join(" and that ", directed))
                .append("; and names ________________ to report by __________.").toString();
    }

    /** What must come first. */
    private List<String> directed() {
        List<String> first = new ArrayList<>();
        if (in.plan().service().get(in.study().years() - 1).ports() > 0) {
            first.add("the utility is asked for service before buses are ordered");
        }
        if (money.isFunded()) {
            first.add("nothing that an award pays for is ordered before that award is made");
        }
        return first;
    }

    /** The programme that is still to be applied to; one that is committed already is only to be accepted. */
    private Optional<String> appliedTo() {
        return money.payingProgramme().filter(p -> !in.facts().funding().ofProgramme(p).committed());
    }

    /** All that pay beside the programme that is applied to. */
    private List<Part> others() {
        return money.programmes().stream().map(Programme::name).filter(n -> !appliedTo().filter(n::equals).isPresent())
                .map(n -> new Part(n, money.paidBy(n))).filter(p -> p.amount().signum() > 0).toList();
    }

    private String words(List<Part> parts) {
        return parts.stream().map(this::amount).collect(Collectors.joining(" and "));
    }

    private String amount(Part part) {
        return "“" + part.programme() + "” for " + amount(part.amount());
    }

    private String amount(BigDecimal amount) {
        return in.currency() + " " + CellFormat.MONEY.print(amount);
    }
}
