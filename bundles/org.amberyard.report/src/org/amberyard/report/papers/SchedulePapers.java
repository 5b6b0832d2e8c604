package org.amberyard.report.papers;

import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
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
    private static final int QUARTERS = 4;
    private static final int MONTHS_A_QUARTER = 3;

    private final PaperInput in;
    private final ProjectMoney money;

    /** A milestone; without a date it is for the applicant to date. */
    private record Milestone(String date, String what, String basis) {
    }

    private SchedulePapers(PaperInput in) {
        this.in = in;
        this.money = ProjectMoney.of(in);
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
        closeOut(dated).ifPresent(dated::add);
        addHolding(dated);
        dated.sort(Comparator.comparing(Milestone::date));
        List<Milestone> rows = new ArrayList<>();
        for (String step : List.of("Award", "Notice to proceed", "Application to the utility", "Design and permits", "Construction",
                "Service energized and accepted")) {
            rows.add(new Milestone("", step, "not held by the study"));
        }
        rows.addAll(dated);
        return new TableBuilder<Milestone>("T9", "T9. Timeline").text("Date in the study", 1, Milestone::date)
                .optional("Months after the first date", "", CellFormat.WHOLE, m -> months(dated, m))
                .text("Milestone", 3, Milestone::what).text("Basis", 2.4, Milestone::basis).toFill("Date agreed")
                .toFill("Month from the award", 0.8).toFill("Responsible", 1.2).note(BUILT_BEFORE).of(rows);
    }

    private static OptionalDouble months(List<Milestone> dated, Milestone of) {
        return of.date().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(ChronoUnit.MONTHS.between(
                LocalDate.parse(dated.get(0).date()), LocalDate.parse(of.date())));
    }

    private static Optional<Milestone> closeOut(List<Milestone> dated) {
        return dated.stream().map(Milestone::date).max(Comparator.naturalOrder())
                .map(last -> new Milestone(last, "Close-out, not before", "all purchases in service, all old buses gone"));
    }

    private void addBuses(List<Milestone> rows) {
        for (ReplacedBus bus : in.replaced()) {
            String unit = bus.now().vehicle().unit();
            in.plan().fleet().events().stream().filter(e -> bus.bought() && e instanceof FleetEvent.Bought b && b.vehicle().unit()
                    .equals(unit))
                    .forEach(e -> rows.add(new Milestone(FleetYear.orderBy(in.study(), (FleetEvent.Bought) e).toString(),
                            "Order of " + unit + " at the latest", "delivery time of its type")));
            String changed = start(bus.year()).toString();
            if (bus.bought()) {
                rows.add(new Milestone(changed, "Delivery of " + unit + " at the latest", "start of the year of its purchase"));
            }
            rows.add(new Milestone(changed, unit + " in service, " + bus.old().vehicle().unit() + " leaves its place",
                    "step of the plan"));
            if (isScrapped(bus)) {
                rows.add(new Milestone(changed, bus.old().vehicle().unit() + " to be scrapped from then on",
                        "asked by a programme; its notice says within how many days"));
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
                rows.add(new Milestone(start(bus.year() + held).toString(), unit + " held long enough", held
                        + " years asked by a programme"));
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
                rows.add(new Milestone(start(purchase.year()).toString(), purchase.name() + " in service", "step of the plan"));
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
                .number("Spent by then", in.currency(), CellFormat.WHOLE, q -> money.lines().stream()
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
