package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.Programme;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;
import org.amberyard.report.papers.ProjectMoney.Line;

/** Tables of who pays the project: sources with how far they are secured, each purchase with its sources, and the match. */
final class SourcePapers {
    private final PaperInput in;
    private final ProjectMoney money;

    /** A source of money; empty for own money. */
    private record Source(Optional<Programme> programme, BigDecimal amount) {
    }

    private SourcePapers(PaperInput in) {
        this.in = in;
        this.money = ProjectMoney.of(in);
    }

    static List<DataTable> of(PaperInput in) {
        SourcePapers papers = new SourcePapers(in);
        List<DataTable> tables = new ArrayList<>(List.of(papers.bySource(), papers.stacking()));
        List<ProgrammeMatch> matches = ProgrammeMatch.all(in, papers.money);
        if (!matches.isEmpty()) {
            tables.add(papers.match(matches));
        }
        return tables;
    }

    private DataTable bySource() {
        List<Source> sources = new ArrayList<>();
        in.study().funding().programmes().forEach(p -> sources.add(new Source(Optional.of(p), money.paidBy(p.name()))));
        sources.removeIf(s -> s.amount().signum() == 0);
        sources.add(new Source(Optional.empty(), money.own()));
        double total = money.total().doubleValue();
        TableBuilder<Source> table = new TableBuilder<Source>("T5a", "T5a. Sources of funds")
                .text("Source", 1.8, s -> s.programme().map(Programme::name).orElse("Own money, cash"))
                .text("Kind of money", 1, s -> s.programme().map(p -> p.kind().label()).orElse("own"))
                .sum("Amount", in.currency(), CellFormat.MONEY, s -> s.amount().doubleValue())
                .optional("Share of the cost", "", CellFormat.PERCENT, s -> total > 0
                        ? OptionalDouble.of(s.amount().doubleValue() / total) : OptionalDouble.empty())
                .optional("Share of the eligible cost applied for", "", CellFormat.PERCENT, s -> s.programme()
                        .map(p -> OptionalDouble.of(s.amount().doubleValue() / eligibleCost(p))).orElse(OptionalDouble.empty()))
                .text("In the study", 1.8, s -> s.programme().map(p -> p.isCertain() ? "counted as certain"
                        : String.format(Locale.ROOT, "probability %.0f %%, counted in full", 100 * p.probability())).orElse(""))
                .text("Restrictions", 3, s -> s.programme().map(p -> Restrictions.of(in, p)).orElse(""))
                .text("Status", 1.1, s -> secured(s).statusOrBlank()).text("Letter or document", 1.6, s -> secured(s).letterOrBlank());
        if (sources.stream().anyMatch(s -> secured(s).isToFill())) {
            table.note(DataTable.TO_FILL);
        }
        sources.stream().flatMap(s -> s.programme().stream()).map(Programme::name).forEach(p -> table.note("Rules of “" + p
                + "”: " + in.facts().rules().of(p) + "."));
        return table.note(AwardCertainty.of(in).words()).sums(ProjectMoney.ROUNDING).of(sources);
    }

    private FundingFacts.Secured secured(Source source) {
        return source.programme().map(p -> in.facts().funding().ofProgramme(p.name())).orElseGet(() -> in.facts().funding().ofOwn(
                in.plan().name()));
    }

    /** Cost of the lines that a programme does not refuse, of ports the part that it covers; money of the years of purchase. */
    private double eligibleCost(Programme programme) {
        return money.lines().stream().map(Line::funded).filter(f -> f.awards().stream().anyMatch(a -> programme(a) == programme
                && !a.limit().refuses() && a.asked().value() > 0)).mapToDouble(f -> f.purchase().covered(programme).value()).sum();
    }

    private Programme programme(Award award) {
        return in.study().funding().programmes().get(award.programme());
    }

    private DataTable stacking() {
        return new TableBuilder<Line>("T5b", "T5b. Each purchase and its sources")
                .year("Year", l -> OptionalInt.of(in.calendar(l.funded().purchase().year())))
                .text("Purchase", 3, l -> l.funded().purchase().name())
                .sum("Cost", in.currency(), CellFormat.MONEY, l -> l.cost().doubleValue())
                .sum("Programmes", in.currency(), CellFormat.MONEY, l -> l.cost().subtract(l.own()).doubleValue())
                .sum("Own money", in.currency(), CellFormat.MONEY, l -> l.own().doubleValue())
                .text("Programmes applied", 3.4, Line::programmeWords)
                .note("On no line do the sources come to more than its cost. Programmes are applied in the order of their "
                        + "priority; where two may not be combined, the first that is applied pays.")
                .note(AwardCertainty.of(in).words()).sums(ProjectMoney.ROUNDING)
                .of(money.lines());
    }

    private DataTable match(List<ProgrammeMatch> matches) {
        return new TableBuilder<ProgrammeMatch>("T5c", "T5c. Match").text("Programme", 1.6, m -> m.programme().name())
                .text("Match is a share of", 1.6, m -> m.programme().match().base().label())
                .number("Comes to", in.currency(), CellFormat.MONEY, m -> m.base().doubleValue())
                .optional("Match asked for, share", "", CellFormat.PERCENT, m -> m.isAsked() ? OptionalDouble.of(m.programme().match()
                        .share()) : OptionalDouble.empty())
                .optional("Match asked for", in.currency(), CellFormat.MONEY, ProgrammeMatch::asked)
                .number("Match provided", in.currency(), CellFormat.MONEY, m -> m.provided().doubleValue())
                .optional("Match provided, share", "", CellFormat.PERCENT, ProgrammeMatch::providedShare)
                .text("From", 1.2, m -> m.programme().match().from().label()).text("How far it is secured", 3, ProgrammeMatch::sourceWords)
                .note("Of each programme over the purchases for which it pays, in money of the year of purchase. What the "
                        + "programme itself pays is no match of its own; federal money matches no federal money. The study asks "
                        + "for the match on each purchase by itself.")
                .note(AwardCertainty.of(in).words())
                .of(matches);
    }
}
