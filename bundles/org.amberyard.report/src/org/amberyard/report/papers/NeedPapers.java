package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.PlanResult;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.core.units.Unit;
import org.amberyard.core.upkeep.ShopCalendar;
import org.amberyard.core.upkeep.Skill;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables of need and benefit, and of the people that the project needs. */
final class NeedPapers {
    private static final String STUDY = "study";
    /** What the study does not hold and the applicant says. */
    private static final List<String> TO_SAY = List.of("Enrollment", "Riders a day", "Share of riders from low-income families", "Locale",
            "Air-quality status of the county", "Failures in service, last three years",
            "Repair cost by distance, trend of the last three years");

    private final PaperInput in;

    /** A figure with its source; without a value it is for the applicant to fill in. */
    private record Item(String what, Object value, String unit, String source) {
    }

    private NeedPapers(PaperInput in) {
        this.in = in;
    }

    static List<DataTable> need(PaperInput in) {
        return List.of(new NeedPapers(in).need());
    }

    static List<DataTable> workforce(PaperInput in) {
        return List.of(new NeedPapers(in).hours(), new NeedPapers(in).courses());
    }

    private DataTable need() {
        List<Item> rows = new ArrayList<>();
        List<VehicleYear> buses = in.result().baseline().fleet().inYear(0);
        addFleet(rows, buses);
        addUse(rows, buses);
        repairs(buses).ifPresent(rows::add);
        TO_SAY.forEach(missing -> rows.add(new Item(missing, "", "", "†")));
        return new TableBuilder<Item>("T10", "T10. Need and benefit").text("Figure", 4, Item::what).value("Value", 1.2, Item::value)
                .text("Unit", 0.8, Item::unit).text("Source", 1, Item::source).note(DataTable.TO_FILL).of(rows);
    }

    /** How many buses there are and how old they are. */
    private void addFleet(List<Item> rows, List<VehicleYear> buses) {
        FleetYear now = FleetYear.of(in.study(), in.result().baseline().fleet()).get(0);
        add(rows, "Buses" + year(), now.electric() + now.engine(), "");
        add(rows, "of these with an engine", now.engine(), "");
        List<VehicleYear> past = buses.stream().filter(b -> yearsOver(b) >= 0).toList();
        add(rows, "of these at or past the retirement age of their type", past.size(), "");
        past.stream().mapToDouble(this::yearsOver).average().ifPresent(over -> rows.add(new Item("Mean years of these past it",
                CellFormat.decimals(1).rounded(over), "yr", STUDY)));
        rows.add(new Item("Mean age" + year(), CellFormat.decimals(1).rounded(now.meanAgeYears()), "yr", STUDY));
        add(rows, "Oldest bus", now.oldestAgeYears(), "yr");
    }

    /** What they drive and burn, what the plan saves of it, and under which conditions. */
    private void addUse(List<Item> rows, List<VehicleYear> buses) {
        PlanResult baseline = in.result().baseline();
        add(rows, "Distance of the fleet" + year(), in.shown(Unit.KILOMETRE, buses.stream().mapToDouble(b -> b.use().km()).sum()),
                in.symbol(Unit.KILOMETRE));
        add(rows, "Fuel of the fleet" + year(), in.shown(Unit.LITRE, fuelL(baseline, 0)), in.symbol(Unit.LITRE));
        add(rows, "Fuel not burnt over the study, beside “" + baseline.name() + "”", in.shown(Unit.LITRE,
                baseline.measures().fuelL() - in.plan().measures().fuelL()), in.symbol(Unit.LITRE));
        add(rows, "Electricity at the meter over the study", in.plan().measures().meterKwh(), "kWh");
        add(rows, "Mean temperature of the coldest operated day", in.shown(Unit.CELSIUS, in.study().duty().climate().months().stream()
                .mapToDouble(m -> m.coldest().meanAirC()).min().orElseThrow()), in.symbol(Unit.CELSIUS));
        add(rows, "Failures of buses to be expected" + year(), baseline.failures(0).failures(), "a year");
    }

    private String year() {
        return ", " + in.calendar(0);
    }

    private static void add(List<Item> rows, String what, double value, String unit) {
        rows.add(new Item(what, CellFormat.WHOLE.rounded(value), unit, STUDY));
    }

    private double yearsOver(VehicleYear record) {
        Vehicle bus = record.vehicle();
        return bus.ageYears(0) - in.study().types().get(bus.type()).prices().lifeYears();
    }

    /** Repair cost by distance of the buses whose work orders were read; empty where there is none. */
    private Optional<Item> repairs(List<VehicleYear> buses) {
        Map<String, Double> perKm = in.study().rules().upkeep().measuredPerKm();
        List<VehicleYear> measured = buses.stream().filter(b -> perKm.containsKey(b.vehicle().unit()) && b.use().km() > 0).toList();
        double km = measured.stream().mapToDouble(b -> b.use().km()).sum();
        double cost = measured.stream().mapToDouble(b -> b.use().km() * perKm.get(b.vehicle().unit())).sum();
        return measured.isEmpty() ? Optional.empty() : Optional.of(new Item("Repair cost by distance",
                CellFormat.CENTS.rounded(in.shown(Unit.MONEY_PER_KM, cost / km)), in.symbol(Unit.MONEY_PER_KM),
                "work orders, buses: " + measured.size()));
    }

    private static double fuelL(PlanResult plan, int year) {
        return plan.fleet().inYear(year).stream().mapToDouble(b -> b.use().fuelL() + b.use().heaterFuelL()).sum();
    }

    private DataTable hours() {
        return new TableBuilder<ResultLine>("T14a", "T14a. Work of the shop and people trained for high voltage")
                .year("Year", l -> l.year("year"))
                .sum("Technicians", "h", CellFormat.WHOLE, l -> l.number("technician_labour").orElse(0))
                .sum("Senior technicians", "h", CellFormat.WHOLE, l -> l.number("senior_labour").orElse(0))
                .sum("High-voltage technicians", "h", CellFormat.WHOLE, l -> l.number("high_voltage_labour").orElse(0))
                .optional("People trained for high voltage, at least", "", CellFormat.WHOLE, l -> l.number("high_voltage_people"))
                .text("The shop is", 2, l -> l.text("verdict"))
                .note("Hours are those of all tasks that fall due in the year, of parts and systems on their intervals, and of failures to be "
                        + "expected, bus by bus as in table “Tasks of the shop by bus and year” of the consultant's appendix.")
                .note("People trained: hours of high-voltage work over the " + CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(in.study()
                        .rules().upkeep().highVoltageHours())) + " h a year of one person, rounded up. Nobody works on high voltage "
                        + "alone, so two people at least are trained as soon as there is such work.")
                .of(ResultLine.of(in, "shop_by_year"));
    }

    /** Who is trained in what. */
    private record Course(String who, String what, String people) {
    }

    private DataTable courses() {
        int highVoltage = IntStream.range(0, in.study().years()).mapToObj(in.plan()::shop)
                .mapToInt((ShopCalendar s) -> s.highVoltagePeople(in.study().rules().upkeep().highVoltageHours())).max().orElse(0);
        List<Course> rows = new ArrayList<>(List.of(new Course("Everybody at the yard", "High-voltage awareness: what not to touch",
                ""),
                new Course("Drivers", "Driving, charging and what to do on the road", ""),
                new Course(Skill.HIGH_VOLTAGE.word() + "s", "Isolation and work on high voltage, gloves and tools tested in "
                        + "their terms",
                        highVoltage > 0 ? String.valueOf(highVoltage) : ""),
                new Course("First responders and tow operators", "Walk-round of a bus, cut loops, storage of a damaged one", "")));
        in.plan().plan().oneOffs().forEach(o -> rows.add(new Course("as the plan says", o.name() + ", " + in.calendar(o.year())
                + ", "
                + in.currency() + " " + CellFormat.MONEY.print(CellFormat.MONEY.rounded(o.amount())) + " at base-date prices", "")));
        return new TableBuilder<Course>("T14b", "T14b. Training").text("Who", 2, Course::who).text("What", 4, Course::what)
                .text("People by the study", 1, Course::people).toFill("People").toFill("Hours each").toFill("Cost")
                .toFill("By whom", 1.3)
                .note("Courses: " + SourceWords.ASSUMED + "; the vehicle maker and the authority having jurisdiction decide.")
                .of(rows);
    }
}
