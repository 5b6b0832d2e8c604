package org.amberyard.report;

import java.util.OptionalDouble;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.FundingFlow;
import org.amberyard.core.units.Unit;
import org.amberyard.core.why.Derivation;
import org.amberyard.report.FundingRows.OfSource;
import org.amberyard.report.FundingRows.OfYear;

/** Tables of who pays for what, and when. Their amounts are in money of the year in which they fall, as notices state them. */
final class FundingTables {
    private static final String OWN = "Own money";

    private FundingTables() {
    }

    static TableDefinition<OfSource> byLine() {
        return new TableDefinition<>("funding_by_line", "Who pays for each purchase", OfSource::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year of the purchase; amounts are in its money.", r -> r.result().input().baseYear() + r.funded().purchase().year())
                .text("line", "Purchase", "What is bought: a bus by its number with its type, ports with their number, a work, a cost.",
                        r -> r.funded().purchase().name())
                .heads()
                .text("kind", "Kind", "What is bought: bus, ports, site work, or training and tools.",
                        r -> r.funded().purchase().kind().label())
                .money("cost", "Cost, money of the year", "Cost of the line in money of its year: together the sources pay just that.",
                        r -> r.funded().purchase().cost())
                .why(r -> Derivation.sum("cost of " + r.funded().purchase().name(), Derivation.MONEY, r.funded().purchase().parts()))
                .count("order", "Order", "Place in the order in which sources are applied; own money comes last.", r -> r.order() + 1)
                .text("source", "Source", "Programme, or own money.", r -> r.programme().map(p -> p.name()).orElse(OWN))
                .text("money", "Kind of money", "Federal, state, utility, local, tax credit or own.",
                        r -> r.programme().map(p -> p.kind().label()).orElse("own"))
                .optional("probability", "Probability", Unit.SHARE,
                        "Probability of the award; it is no money. No figure for own money.",
                        r -> r.programme().map(p -> OptionalDouble.of(p.probability())).orElse(OptionalDouble.empty()))
                .optionalMoney("asked", "Asked, money of the year", "What the rule of the programme comes to, in money of the year; no figure for own money.",
                        OfSource::asked)
                .why(r -> r.award().map(Award::asked).orElseGet(
                        () -> Derivation.of("own money asks for nothing", Double.NaN, "", "no programme on the line asks for a match")))
                .money("amount", "Amount, money of the year", "What the source pays, in money of the year.", OfSource::amount)
                .why(FundingTables::whyAmount)
                .number("share", "Share", Unit.SHARE, "Amount over cost.",
                        r -> r.funded().purchase().cost() > 0 ? r.amount() / r.funded().purchase().cost() : 0)
                .money("left", "Left, money of the year", "Cost that is left after this source.", OfSource::left)
                .text("limit", "Limit", "Which limit kept the award below what was asked, or that it is paid in full.",
                        r -> r.award().map(a -> a.limit().label()).orElse(null))
                .text("limit_words", "Limit in words", "The limit as a clause, with what it leaves to be paid, money of the year; empty "
                        + "where the award is paid in full.", OfSource::limitWords)
                .text("paid_in", "Paid in", "Year or years in which an award is received.", OfSource::paidIn);
    }

    private static Derivation whyAmount(OfSource row) {
        String line = row.funded().purchase().name();
        return row.award().map(a -> a.why("award of " + row.programme().orElseThrow().name() + " for " + line))
                .orElseGet(() -> Derivation.of("own money for " + line, row.amount(), Derivation.MONEY,
                        "cost less what programmes pay"));
    }

    static TableDefinition<OfYear> byYear() {
        return new TableDefinition<>("funding_by_year", "Funding by year and source", OfYear::all)
                .text("plan", "Plan", "Name of the plan.", r -> r.plan().name())
                .year("year", "Year", "Year in which the money moves; it may lie after the study.",
                        r -> r.result().input().baseYear() + r.year())
                .text("kind", "Kind", "Award, award paid back, low-carbon credit or operating aid.", r -> words(r.kind()))
                .text("source", "Source", "Programme, credit or aid.", OfYear::source).heads()
                .money("amount", "Amount, money of the year", "What is received, in money of the time of payment; negative where it is paid back.",
                        OfYear::amount)
                .why(r -> Derivation.sum(r.source(), Derivation.MONEY, r.flows().stream().map(FundingFlow::why).toList()))
                .money("stated", "In the costs", "What it takes off the costs, in the money that the study states; what moves after the "
                        + "study counts in its last year with what it is worth at the end.", OfYear::stated);
    }

    private static String words(FundingFlow.Kind kind) {
        return switch (kind) {
            case AWARD -> "award";
            case REPAYMENT -> "award paid back";
            case CREDIT -> "low-carbon credit";
            case AID -> "operating aid";
        };
    }
}
