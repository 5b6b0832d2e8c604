package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.amberyard.core.funding.LineMatch;
import org.amberyard.core.funding.Match;
import org.amberyard.core.funding.MoneyKind;
import org.amberyard.core.funding.PortAward;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Purchase;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.papers.ProjectMoney.Line;

/**
 * The match of a programme that pays, over all purchases for which it pays, of printed amounts.
 *
 * @param in what documents are made from
 * @param programme the programme
 * @param lines purchases for which it pays
 */
record ProgrammeMatch(PaperInput in, Programme programme, List<Line> lines) {

    /** Matches of the programmes that pay: of that which is applied to, and of each other that asks for one. */
    static List<ProgrammeMatch> all(PaperInput in, ProjectMoney money) {
        return money.programmes().stream().map(p -> new ProgrammeMatch(in, p, money.lines().stream().filter(l -> paid(l, p).signum() > 0)
                .toList())).filter(m -> !m.lines.isEmpty()
                        && (m.isAsked() || money.payingProgramme().filter(m.programme.name()::equals)
                                .isPresent()))
                .toList();
    }

    private static BigDecimal paid(Line line, Programme by) {
        return line.shares().stream().filter(s -> s.programme().filter(by::equals).isPresent()).map(ProjectMoney.Share::amount)
                .reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    boolean isAsked() {
        return programme.match().share() > 0;
    }

    /** What the match is a share of. */
    BigDecimal base() {
        return sum(lines.stream().map(this::base).toList());
    }

    private BigDecimal base(Line line) {
        return switch (programme.match().base()) {
            case AWARD -> paid(line, programme);
            case WHOLE -> line.cost();
            case COVERED -> isWhole(line) ? line.cost() : CellFormat.MONEY.rounded(exact(line).base());
        };
    }

    /** What counts as match. */
    BigDecimal provided() {
        return sum(lines.stream().map(this::provided).toList());
    }

    private BigDecimal provided(Line line) {
        if (!isWhole(line)) {
            return CellFormat.MONEY.rounded(exact(line).counted());
        }
        if (isOwn()) {
            return line.own();
        }
        BigDecimal federal = sum(line.shares().stream().filter(s -> s.programme().filter(p -> p.kind() == MoneyKind.FEDERAL)
                .isPresent()).map(ProjectMoney.Share::amount).toList());
        return line.cost().subtract(federal).subtract(programme.kind() == MoneyKind.FEDERAL ? BigDecimal.ZERO : paid(line, programme));
    }

    /** True where the whole purchase counts; else the part of ports that the programme covers. */
    private boolean isWhole(Line line) {
        return line.funded().purchase().kind() != Purchase.Kind.PORTS || programme.match().base() == Match.Base.WHOLE
                || programme.offer().ports().covers() == PortAward.Cover.ALL;
    }

    private LineMatch exact(Line line) {
        return LineMatch.of(in.study().funding().programmes(), line.funded(), in.study().funding().programmes().indexOf(programme));
    }

    private static BigDecimal sum(List<BigDecimal> amounts) {
        return amounts.stream().reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Match that is asked for, in money; empty where none is. */
    OptionalDouble asked() {
        return isAsked() ? OptionalDouble.of(programme.match().share() * base().doubleValue()) : OptionalDouble.empty();
    }

    /** Part of the base that is provided; empty where there is no base. */
    OptionalDouble providedShare() {
        return base().signum() > 0 ? OptionalDouble.of(provided().doubleValue() / base().doubleValue()) : OptionalDouble.empty();
    }

    private boolean isOwn() {
        return programme.match().from() == Match.From.OWN;
    }

    /** Sources that count, each with how far it is secured. */
    Map<String, FundingFacts.Secured> sources() {
        Map<String, FundingFacts.Secured> sources = new LinkedHashMap<>();
        if (lines.stream().anyMatch(l -> l.own().signum() > 0)) {
            sources.put("own money", in.facts().funding().ofOwn(in.plan().name()));
        }
        if (!isOwn()) {
            lines.stream().flatMap(l -> l.shares().stream()).filter(s -> s.amount().signum() > 0).flatMap(s -> s.programme().stream())
                    .filter(p -> p.kind() != MoneyKind.FEDERAL && !p.equals(programme))
                    .forEach(p -> sources.put("“" + p.name() + "”", in.facts().funding().ofProgramme(p.name())));
        }
        return sources;
    }

    /** The sources in words. */
    String sourceWords() {
        List<String> words = new ArrayList<>();
        sources().forEach((source, secured) -> words.add(source + ", " + secured.words()));
        return String.join("; ", words);
    }

    /** Sources that nobody has committed yet. */
    List<String> open() {
        List<String> open = new ArrayList<>();
        sources().forEach((source, secured) -> {
            if (!secured.committed()) {
                open.add(source + " (" + secured.words() + ")");
            }
        });
        return open;
    }
}
