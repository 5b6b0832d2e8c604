package org.amberyard.report.papers;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.funding.Award;
import org.amberyard.core.funding.AwardLedger;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.MoneyKind;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.PrintRounding;

/**
 * The budget of a project in whole units of money. Each purchase is rounded once, to whole units; what programmes pay of it is
 * rounded down, so that nothing that is asked for is above an award or its cap, and own money is the rest; every total of every
 * table is the sum of these printed amounts. So all tables of a set agree, down and across.
 *
 * @param lines purchases of the project
 * @param programme name of the programme that is applied to; empty where the plan names none
 * @param programmes programmes of the study, at their places
 */
record ProjectMoney(List<Line> lines, Optional<String> programme, List<Programme> programmes) {
    private static final double HALF_A_CENT = 0.005;

    /** How amounts are rounded, for footnotes. */
    static final String ROUNDING = "Amounts are in money of the year of purchase. Each purchase is rounded to the cent and then "
            + "to whole units (half up); what a programme pays of it is rounded down to whole units, so that nothing is asked for "
            + "above an award; own money is the rest. All totals are sums of these printed amounts.";

    /** How the price of a purchase comes about from the price of the study, for footnotes. */
    static final String PRICES = "A price is that of the study at the base date, times (1 + its yearly rise) and, where that rise is "
            + "real, times (1 + general inflation), each to the power of the years from then to the purchase; table T12a has the rises.";

    /** Whose money pays, as the columns of a budget have it. */
    enum Column {
        REQUESTED, OTHER_FEDERAL, STATE, UTILITY, LOCAL, TAX_CREDIT, OWN
    }

    /**
     * What one source pays.
     *
     * @param programme the programme; empty for own money
     * @param amount whole units of money
     */
    record Share(Optional<Programme> programme, BigDecimal amount) {
    }

    /**
     * A purchase.
     *
     * @param funded the purchase with its awards, unrounded
     * @param cost cost in whole units of money
     * @param shares who pays it; they add up to the cost
     */
    record Line(FundedLine funded, BigDecimal cost, List<Share> shares) {
        /** What own money pays of it. */
        BigDecimal own() {
            return shares.get(shares.size() - 1).amount();
        }

        /** Programmes that pay, each with its amount, in words. */
        String programmeWords() {
            return shares.stream().filter(s -> s.programme().isPresent() && s.amount().signum() != 0)
                    .map(s -> s.programme().orElseThrow().name() + " " + CellFormat.MONEY.print(s.amount()))
                    .collect(Collectors.joining("; "));
        }
    }

    /** The purchases that belong to the project: buses that replace others, and all that is no bus. */
    static ProjectMoney of(PaperInput in) {
        return of(in, in.plan().funding().awards());
    }

    /** The same with other awards of the plan's purchases. */
    static ProjectMoney of(PaperInput in, AwardLedger awards) {
        Set<String> bought = in.replaced().stream().filter(ReplacedBus::bought).map(b -> b.now().vehicle().unit())
                .collect(Collectors.toSet());
        Predicate<FundedLine> ofProject = l -> l.purchase().bus().map(NewBus::unit).map(bought::contains).orElse(true);
        List<Line> lines = awards.lines().stream().filter(ofProject).map(l -> printed(in, l))
                .sorted(Comparator.comparingInt((Line l) -> l.funded().purchase().year()).thenComparing(l -> l.funded().purchase()
                        .kind()))
                .toList();
        return new ProjectMoney(lines, in.choices().programme().or(() -> largest(lines)), in.study().funding().programmes());
    }

    /** A purchase with its sources as every document prints them. */
    static Line printed(PaperInput in, FundedLine funded) {
        BigDecimal cost = CellFormat.MONEY.rounded(funded.purchase().cost());
        List<Share> shares = new ArrayList<>();
        BigDecimal own = cost;
        for (Award award : funded.awards()) {
            BigDecimal paid = PrintRounding.cents(award.paid()).setScale(0, RoundingMode.DOWN);
            shares.add(new Share(Optional.of(in.study().funding().programmes().get(award.programme())), paid));
            own = own.subtract(paid);
        }
        shares.add(new Share(Optional.empty(), own));
        return new Line(funded, cost, List.copyOf(shares));
    }

    /** The programme that pays most, of those that pay for buses if there is one. */
    private static Optional<String> largest(List<Line> lines) {
        return lines.stream().flatMap(l -> l.shares().stream()).flatMap(s -> s.programme().stream()).map(Programme::name).distinct()
                .sorted()
                .max(Comparator.comparing((String name) -> paid(lines.stream().filter(l -> l.funded().purchase().kind() == Purchase.Kind.BUS), name).signum())
                        .thenComparing(name -> paid(lines.stream(), name)));
    }

    private static BigDecimal paid(Stream<Line> lines, String name) {
        return sum(lines.flatMap(l -> l.shares().stream()).filter(s -> s.programme().map(Programme::name).filter(name::equals)
                .isPresent()));
    }

    private static BigDecimal sum(Stream<Share> shares) {
        return shares.map(Share::amount).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** Cost of all purchases. */
    BigDecimal total() {
        return lines.stream().map(Line::cost).reduce(BigDecimal.ZERO, BigDecimal::add);
    }

    /** What a programme pays in all. */
    BigDecimal paidBy(String name) {
        return paid(lines.stream(), name);
    }

    /** The programme that is applied to, where it pays something. */
    Optional<String> payingProgramme() {
        return programme.filter(p -> paidBy(p).signum() > 0);
    }

    /** True where any programme pays something. */
    boolean isFunded() {
        return total().compareTo(own()) > 0;
    }

    /** Programmes that pay and are not certain, each with its probability. */
    List<String> uncertain() {
        return lines.stream().flatMap(l -> l.shares().stream()).filter(s -> s.amount().signum() > 0).flatMap(s -> s.programme()
                .stream()).filter(p -> !p.isCertain()).map(ProjectMoney::probable).distinct().toList();
    }

    /** A programme with its probability. */
    static String probable(Programme programme) {
        return String.format(Locale.ROOT, "“%s”, probability %.0f %%", programme.name(), 100 * programme.probability());
    }

    /** What own money pays in all. */
    BigDecimal own() {
        return sum(lines.stream().flatMap(l -> l.shares().stream()).filter(s -> s.programme().isEmpty()));
    }

    /** What stands in a column for purchases of a kind. */
    BigDecimal amount(Column column, Predicate<Line> which) {
        return sum(lines.stream().filter(which).flatMap(l -> l.shares().stream()).filter(s -> column(s) == column));
    }

    /** What stands in a column in all, summed from unrounded awards and own money. */
    double unrounded(Column column) {
        return lines.stream().map(Line::funded).mapToDouble(f -> column == Column.OWN ? f.own() : f.awards().stream()
                .filter(a -> column(programmes.get(a.programme())) == column).mapToDouble(Award::paid).sum()).sum();
    }

    /** Unrounded cost of all purchases. */
    double unroundedTotal() {
        return lines.stream().mapToDouble(l -> l.funded().purchase().cost()).sum();
    }

    /** True when unrounded sources come to the unrounded cost and no printed sum is further off than rounding explains. */
    boolean balances() {
        double sources = Arrays.stream(Column.values()).mapToDouble(this::unrounded).sum();
        return Math.abs(sources - unroundedTotal()) < HALF_A_CENT && isNear(total(), unroundedTotal()) && Arrays.stream(Column.values())
                .allMatch(c -> isNear(amount(c, l -> true), unrounded(c)));
    }

    private boolean isNear(BigDecimal printed, double unrounded) {
        return Math.abs(printed.doubleValue() - unrounded) <= Math.max(1, lines.stream().mapToInt(l -> l.shares().size()).sum());
    }

    private Column column(Share share) {
        if (share.programme().isEmpty()) {
            return Column.OWN;
        }
        return column(share.programme().get());
    }

    private Column column(Programme of) {
        return programme.filter(of.name()::equals).isPresent() ? Column.REQUESTED : column(of.kind());
    }

    private static Column column(MoneyKind kind) {
        return switch (kind) {
            case FEDERAL -> Column.OTHER_FEDERAL;
            case STATE -> Column.STATE;
            case UTILITY -> Column.UTILITY;
            case LOCAL -> Column.LOCAL;
            case TAX_CREDIT -> Column.TAX_CREDIT;
        };
    }
}
