package org.amberyard.report.papers;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.TreeSet;
import java.util.stream.IntStream;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.funding.Purchase;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.core.units.Unit;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables of when what happens and what is reported. */
final class SchedulePapers {
    private static final String BUILT_BEFORE = """
            The study buys at the start of fiscal years; ports and works of a year are in service then, so they must be built \
            before. The utility is asked first: its works can take the longest.""";
    private static final String NOT_HELD = "Milestones without a date are not held by the study; the applicant dates them.";
    private static final String ORDER = "Order at the latest";
    private static final int QUARTERS = 4;
    private static final int MONTHS_A_QUARTER = 3;

    private final PaperInput in;
    private final ProjectMoney money;
    private final DeadlineMilestones deadlines;

    private SchedulePapers(PaperInput in) {
        this.in = in;
        this.money = ProjectMoney.of(in);
        this.deadlines = new DeadlineMilestones(in, money, this::start);
    }

    static List<DataTable> timeline(PaperInput in) {
        return List.of(new SchedulePapers(in).timeline());
    }

    static List<DataTable> reporting(PaperInput in) {
        return List.of(new SchedulePapers(in).reporting());
    }

    private LocalDate start(int year) {
        return in.study().money().fiscal().start(in.calendar(year));
    }

    private DataTable timeline() {
        List<Milestone> dated = new ArrayList<>();
        addBuses(dated);
        addSite(dated);
        dated.addAll(deadlines.all());
        closeOut(dated).ifPresent(dated::add);
        addHolding(dated);
        dated.sort(Comparator.comparing(Milestone::date));
        List<Milestone> rows = new ArrayList<>();
        Optional<LocalDate> award = money.payingProgramme().flatMap(p -> in.facts().dates().of(p).award());
        boolean hasAward = dated.stream().anyMatch(m -> m.what().equals(DeadlineMilestones.AWARD));
        List<String> undated = new ArrayList<>(hasAward || !money.isFunded() ? List.of() : List.of(DeadlineMilestones.AWARD));
        undated.addAll(List.of("Notice to proceed", "Application to the utility", "Design and permits", "Construction",
                "Service energized and accepted"));
        undated.forEach(step -> rows.add(new Milestone("", step, "", "")));
        rows.addAll(together(dated));
        TableBuilder<Milestone> table = new TableBuilder<Milestone>("T9", "T9. Timeline").text("Date in the study", 1, Milestone::date);
        award.ifPresentOrElse(d -> table.optional("Months from the award", "", CellFormat.WHOLE, m -> months(d, m)),
                () -> table.toFill("Months from the award", 0.6));
        table.text("Milestone", 4, Milestone::words).text("Basis", 2, Milestone::basis).toFill("Date agreed", 0.7)
                .toFill("Responsible", 0.9).note(NOT_HELD + " " + counted(award));
        early(award, dated).ifPresent(table::note);
        return table.note(BUILT_BEFORE).of(rows);
    }

    /** From when months are counted, or why they are not. */
    private String counted(Optional<LocalDate> award) {
        if (award.isPresent()) {
            return "Months are counted from the award of “" + money.programme().orElseThrow()
                    + "”, in whole months, rounded down: a day before the award is in month −1.";
        }
        return AppliedProgramme.paysNothing(in).map(nothing -> nothing + " So no months are counted from its award.")
                .or(() -> money.programme().map(p -> "The study holds no date of the award of “" + p + "” to count months from."))
                .orElse("No award is counted on, so no months are counted from one.");
    }

    /** What is to be ordered before the award, which programmes seldom pay for. */
    private static Optional<String> early(Optional<LocalDate> award, List<Milestone> dated) {
        List<String> early = dated.stream().filter(m -> m.what().equals(ORDER) && award.filter(LocalDate.parse(m.date())::isBefore)
                .isPresent()).map(Milestone::whose).toList();
        return early.isEmpty() ? Optional.empty() : Optional.of("To be ordered before the award: " + String.join("; ", early)
                + ". Programmes seldom pay for what is ordered before (" + SourceWords.ASSUMED + "); see the notice.");
    }

    /** Milestones of a day that differ only in whose they are, as one. */
    private static Collection<Milestone> together(List<Milestone> dated) {
        Map<List<String>, Milestone> lines = new LinkedHashMap<>();
        dated.forEach(m -> lines.merge(List.of(m.date(), m.what(), m.basis()), m, Milestone::with));
        return lines.values();
    }

    private static OptionalDouble months(LocalDate award, Milestone of) {
        if (of.date().isEmpty()) {
            return OptionalDouble.empty();
        }
        LocalDate date = LocalDate.parse(of.date());
        long months = ChronoUnit.MONTHS.between(award, date);
        return OptionalDouble.of(award.plusMonths(months).isAfter(date) ? months - 1 : months);
    }

    /** The whole plan is closed out when all is done but the closing out with single programmes. */
    private static Optional<Milestone> closeOut(List<Milestone> dated) {
        return dated.stream().filter(m -> !m.what().equals(DeadlineMilestones.CLOSE_OUT)).map(Milestone::date).max(Comparator
                .naturalOrder()).map(
                        last -> new Milestone(last, "Close-out of the whole plan, not before", "",
                                "all purchases in service, all old buses gone"));
    }

    private void addBuses(List<Milestone> rows) {
        for (ReplacedBus bus : in.replaced()) {
            String unit = bus.now().vehicle().unit();
            in.plan().fleet().events().stream().filter(e -> bus.bought() && e instanceof FleetEvent.Bought b && b.vehicle().unit()
                    .equals(unit))
                    .forEach(e -> rows.add(new Milestone(FleetYear.orderBy(in.study(), (FleetEvent.Bought) e).toString(),
                            ORDER, unit, "delivery time of its type")));
            String changed = start(bus.year()).toString();
            rows.add(new Milestone(changed, bus.bought() ? "Delivered and in service at the latest, old bus leaves its place"
                    : "In service in its new place, old bus leaves it", unit + " for " + bus.old().vehicle().unit(), "step of the plan"));
            if (isScrapped(bus) && !deadlines.hasScrapDeadline(unit)) {
                rows.add(new Milestone(changed, "To be scrapped from then on", bus.old().vehicle().unit(),
                        "programme; days by its notice"));
            }
        }
    }

    private boolean isScrapped(ReplacedBus bus) {
        return in.plan().fleet().events().stream().anyMatch(e -> e instanceof FleetEvent.Sold sold && sold.scrapped()
                && sold.year() == bus.year() && sold.vehicle().unit().equals(bus.old().vehicle().unit()));
    }

    private void addHolding(List<Milestone> rows) {
        for (ReplacedBus bus : in.replaced()) {
            String unit = bus.now().vehicle().unit();
            int held = holdYears(unit);
            if (held > 0) {
                rows.add(new Milestone(start(bus.year() + held).toString(), "Held long enough", unit, Milestone.count(
                        held, "year") + ", by a programme"));
            }
        }
    }

    private int holdYears(String unit) {
        return money.lines().stream().filter(l -> l.funded().purchase().bus().filter(b -> b.unit().equals(unit)).isPresent())
                .flatMap(l -> l.shares().stream()).filter(s -> s.amount().signum() > 0).flatMap(s -> s.programme().stream())
                .map(Programme::conditions).mapToInt(c -> c.holdYears()).max().orElse(0);
    }

    private void addSite(List<Milestone> rows) {
        for (ProjectMoney.Line line : money.lines()) {
            Purchase purchase = line.funded().purchase();
            if (WorkCategory.of(purchase).isBuilt()) {
                rows.add(new Milestone(start(purchase.year()).toString(), "Ports and works in service", purchase.name(), "step of the plan"));
            }
        }
    }

    /** A quarter after the first purchase of the project. */
    private record Quarter(int year, int quarter) {
    }

    private DataTable reporting() {
        TreeSet<Integer> years = new TreeSet<>(money.lines().stream().map(l -> l.funded().purchase().year()).toList());
        List<Quarter> rows = years.isEmpty() ? List.of() : IntStream.rangeClosed(years.first(), years.last()).boxed()
                .flatMap(y -> IntStream.range(0, QUARTERS).mapToObj(q -> new Quarter(y, q))).toList();
        return new TableBuilder<Quarter>("T15", "T15. Reporting by quarter: what the study expects")
                .year("Fiscal year", q -> OptionalInt.of(in.calendar(q.year())))
                .text("Quarter from", 1.2, q -> start(q.year()).plusMonths((long) MONTHS_A_QUARTER * q.quarter()).toString())
                .number("New buses in service", "", CellFormat.WHOLE, q -> in.replaced().stream().filter(b -> b.year() <= q.year())
                        .count())
                .number("Distance of electric buses", in.symbol(Unit.KILOMETRE), CellFormat.WHOLE,
                        q -> in.shown(Unit.KILOMETRE, electricKm(q.year())) / QUARTERS)
                .number("Energy at the meter", "kWh", CellFormat.WHOLE, q -> in.plan().yards().get(q.year()).neededKwh() / QUARTERS)
                .number("Spent by then", in.currency(), CellFormat.MONEY, q -> money.lines().stream()
                        .filter(l -> l.funded().purchase().year() <= q.year()).mapToDouble(l -> l.cost().doubleValue()).sum())
                .toFill("Buses, actual").toFill("Distance, actual").toFill("Energy, actual").toFill("Spent, actual")
                .note("Distance and energy are a quarter of the year's figures; the seasons differ.").of(rows);
    }

    private double electricKm(int year) {
        return in.plan().fleet().inYear(year).stream().filter(this::isElectric).mapToDouble(v -> v.use().km()).sum();
    }

    private boolean isElectric(VehicleYear record) {
        return in.study().types().get(record.vehicle().type()).electric().isPresent();
    }
}
