package org.amberyard.report.papers;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.Function;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.duty.RunInput;
import org.amberyard.core.funding.FundedLine;
import org.amberyard.core.funding.NewBus;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.Vehicle;
import org.amberyard.core.plan.VehicleTypeInput;
import org.amberyard.core.units.Unit;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables of the vehicles that go and those that come. */
final class FleetPapers {
    private static final int SHOWN_OF_VIN = 6;
    private static final String NOT_TOLD = "not told";
    private static final String CLASSES = "GVWR: gross vehicle weight rating. Classes 1 to 8 by its pounds: up to 6,000; 10,000; 14,000; 16,000; "
            + "19,500; 26,000; 33,000; above (NTEA, “Gross Vehicle Weight Rating”, table “Truck Classification by GVWR”).";

    private final PaperInput in;
    private final List<Line> lines;

    /** A line of both tables: they have the same number in each. */
    private record Line(int number, ReplacedBus bus) {
        Vehicle old() {
            return bus.old().vehicle();
        }
    }

    private FleetPapers(PaperInput in) {
        this.in = in;
        List<ReplacedBus> buses = in.replaced();
        this.lines = IntStream.range(0, buses.size()).mapToObj(i -> new Line(i + 1, buses.get(i))).toList();
    }

    static List<DataTable> replaced(PaperInput in) {
        FleetPapers papers = new FleetPapers(in);
        return Stream.concat(Stream.of(papers.identity(), papers.use()), EligibilityPapers.of(in).stream()).toList();
    }

    static List<DataTable> bought(PaperInput in) {
        FleetPapers papers = new FleetPapers(in);
        return List.of(papers.vehicles(), papers.deliveries());
    }

    private static String number(Line line) {
        return String.valueOf(line.number());
    }

    private DataTable identity() {
        TableBuilder<Line> table = new TableBuilder<Line>("T1a", "T1a. Vehicles replaced: what they are").text("Line", 0.5,
                FleetPapers::number)
                .text("Bus no.", 0.9, l -> l.old().unit());
        boolean known = lines.stream().anyMatch(l -> !vin(l.old()).isEmpty());
        table = (known ? table.text("VIN", 1.5, l -> vin(l.old())) : table.toFill("VIN", 1.2)).text("Type", 2.2, l -> type(l.old())
                .name())
                .year("Chassis model year", l -> facts(l.old()).map(b -> OptionalInt.of(b.modelYear())).orElse(OptionalInt.empty()))
                .year("Engine model year", l -> facts(l.old()).map(b -> OptionalInt.of(b.engineModelYear()))
                        .orElse(OptionalInt.empty()))
                .text("Fuel", 0.9, l -> type(l.old()).engine().map(e -> e.fuel().word()).orElse(""))
                .text("Body", 0.6, l -> type(l.old()).spec().body().bodyType())
                .toFill("Make and model", 1.2);
        told(table, "Engine serial and family", 1.2, BusFacts::engine);
        told(table, "GVWR, class", 1, BusFacts::gvwr);
        told(table, "Seats", 0.6, BusFacts::seats);
        told(table, "Owner", 0.9, BusFacts::owner);
        return told(table, "Lien (yes, no)", 0.7, BusFacts::lien)
                .note(in.choices().wholeVins() ? "Vehicle identification numbers are shown in full: agency's copy, not for the "
                        + "public."
                        : "Public copy: of vehicle identification numbers the last " + SHOWN_OF_VIN + " signs are shown.")
                .note(CLASSES).of(lines);
    }

    /** What the study tells of some of the buses; a column to be filled in where it tells it of none. */
    private TableBuilder<Line> told(TableBuilder<Line> table, String label, double width, Function<BusFacts, String> fact) {
        Function<Line, String> told = l -> facts(l.old()).map(fact).orElse("");
        return lines.stream().map(told).allMatch(String::isEmpty) ? table.toFill(label, width)
                : table.text(label, width, told.andThen(t -> t.isEmpty() ? NOT_TOLD : t));
    }

    private String vin(Vehicle old) {
        String vin = facts(old).map(BusFacts::vin).orElse("");
        return vin.length() <= SHOWN_OF_VIN || in.choices().wholeVins() ? vin : "…" + vin.substring(vin.length() - SHOWN_OF_VIN);
    }

    private DataTable use() {
        String miles = in.symbol(Unit.KILOMETRE);
        TableBuilder<Line> table = new TableBuilder<Line>("T1b", "T1b. Vehicles replaced: how they are used and when they go")
                .text("Line", 0.5, FleetPapers::number).text("Bus no.", 0.9, l -> l.old().unit())
                .number("Odometer at the change", miles, CellFormat.WHOLE, l -> in.shown(Unit.KILOMETRE, l.old().odometerKm()))
                .sum("Distance a year", miles, CellFormat.WHOLE, l -> in.shown(Unit.KILOMETRE, l.bus().old().use().km()))
                .sum("Fuel a year", in.symbol(Unit.LITRE), CellFormat.WHOLE, l -> in.shown(Unit.LITRE, l.bus().old().use().fuelL()))
                .sum("Yard idling a year", "h", CellFormat.WHOLE, l -> place(l).idleHoursPerYear())
                .year("Year of the change", l -> OptionalInt.of(in.calendar(l.bus().year())))
                .year("Would have left", l -> OptionalInt.of(in.calendar(l.bus().retires())))
                .number("Remaining life", "yr", CellFormat.WHOLE, l -> l.bus().remainingYears())
                .text("Disposal", 1.2, this::disposal).toFill("Odometer read on");
        return told(table, "Days a week", 0.8, BusFacts::daysPerWeek).toFill("Disposal date").toFill("Evidence")
                .note(EligibilityPapers.noTable(in)
                        + "Distance, fuel and idling are those of the old bus on the duty of its place in the year of the change, as "
                        + "the study computes them from routes and logs. The odometer is that of today with what the bus drives until "
                        + "then. “Would have left”: year in which the bus would leave "
                        + "its place in “" + in.result().baseline().name() + "”.")
                .of(lines);
    }

    private BusInput place(Line line) {
        return in.study().buses().get(line.bus().place());
    }

    private String disposal(Line line) {
        return in.plan().fleet().events().stream().filter(e -> e.year() == line.bus().year()
                && e.vehicle().unit().equals(line.old().unit())).map(e -> e instanceof FleetEvent.Sold sold
                        ? sold.scrapped() ? "scrap" : "sale" : "moves to " + in.study().buses().get(e.place()).name())
                .findFirst().orElse("");
    }

    private DataTable vehicles() {
        String miles = in.symbol(Unit.KILOMETRE);
        return new TableBuilder<Line>("T2a", "T2a. New vehicles: what they are and whether they do the work").text("Line", 0.5,
                FleetPapers::number)
                .text("Replaces", 0.9, l -> l.old().unit()).text("New bus", 1, l -> l.bus().now().vehicle().unit())
                .text("Type", 1.6, l -> now(l).name()).text("Body", 0.6, l -> now(l).spec().body().bodyType())
                .text("Lift", 0.6, l -> in.facts().types().get(now(l).name()).lift() ? "yes" : "no")
                .text("Fuel", 0.9, l -> now(l).engine().map(e -> e.fuel().word()).orElse("electric"))
                .optional("Battery", "kWh", CellFormat.WHOLE, l -> now(l).electric()
                        .map(e -> OptionalDouble.of(e.battery().nominalKwh())).orElse(OptionalDouble.empty()))
                .text("Route", 0.8, this::route)
                .optional("Distance a day", miles, CellFormat.decimals(1), this::day)
                .optional("Range verified on the worst day, new", miles, CellFormat.decimals(1), this::range)
                .optional("Left on the worst day, new", miles, CellFormat.decimals(1), l -> margin(l, false))
                .optional("Left on the worst day, aged", miles, CellFormat.decimals(1), l -> margin(l, true))
                .toFill("Model year", 0.7).toFill("Seats", 0.6).toFill("Claimed range").toFill("Schools served")
                .note("“Left on the worst day”: distance that the energy above the reserve of " + CellFormat.PERCENT.print(
                        CellFormat.PERCENT.rounded(in.study().rules().reserveShare())) + " is good for after the tightest of the "
                        + "coldest operated days, with a new pack and with one at the end of its service; below zero the "
                        + "bus fails. “Range verified”: distance of the day with what is left.")
                .of(lines);
    }

    private VehicleTypeInput now(Line line) {
        return type(line.bus().now().vehicle());
    }

    private String route(Line line) {
        return place(line).route().isPresent() ? in.study().duty().routes().get(place(line).route().getAsInt()).name()
                : place(line).role().name().toLowerCase(Locale.ROOT);
    }

    private OptionalDouble day(Line line) {
        return place(line).route().isEmpty() ? OptionalDouble.empty() : OptionalDouble.of(in.shown(Unit.KILOMETRE,
                in.study().duty().routes().get(place(line).route().getAsInt()).runs().stream().filter(r -> !r.extendedYear())
                        .mapToDouble(RunInput::distanceKm).sum()));
    }

    private OptionalDouble range(Line line) {
        OptionalDouble day = day(line);
        OptionalDouble left = margin(line, false);
        return day.isPresent() && left.isPresent() ? OptionalDouble.of(day.getAsDouble() + left.getAsDouble())
                : OptionalDouble.empty();
    }

    private OptionalDouble margin(Line line, boolean aged) {
        Optional<RouteFit> fit = place(line).route().isEmpty() ? Optional.empty()
                : in.plan().fits().of(place(line).route().getAsInt(), line.bus().now().vehicle().type());
        boolean midday = in.study().middayCharging();
        return fit.map(f -> OptionalDouble.of(in.shown(Unit.KILOMETRE, (aged ? f.whenAged(midday) : f.whenNew(midday)).marginKm())))
                .orElse(OptionalDouble.empty());
    }

    private DataTable deliveries() {
        return new TableBuilder<Line>("T2b", "T2b. New vehicles: price and delivery").text("Line", 0.5, FleetPapers::number)
                .text("New bus", 1, l -> l.bus().now().vehicle().unit()).text("Type", 1.8, l -> now(l).name())
                .optional("Unit price", in.currency(), CellFormat.CENTS, l -> funded(l).map(f -> OptionalDouble.of(f.purchase()
                        .cost()))
                        .orElse(OptionalDouble.empty()))
                .text("Price source", 3, l -> l.bus().bought() ? in.facts().types().get(now(l).name()).priceSource()
                        : "moves within the fleet")
                .text("Order by", 1.1, this::orderBy)
                .text("In service", 1.1, l -> in.study().money().fiscal().start(in.calendar(l.bus().year())).toString())
                .toFill("Options").toFill("Warranty").toFill("Delivery month")
                .note("Unit prices are in money of the year of purchase. " + ProjectMoney.PRICES).of(lines);
    }

    private Optional<FundedLine> funded(Line line) {
        return in.plan().funding().awards().lines().stream().filter(f -> f.purchase().bus().map(NewBus::unit)
                .filter(line.bus().now().vehicle().unit()::equals).isPresent()).findFirst();
    }

    private String orderBy(Line line) {
        return in.plan().fleet().events().stream().filter(FleetEvent.Bought.class::isInstance).map(FleetEvent.Bought.class::cast)
                .filter(b -> b.vehicle().unit().equals(line.bus().now().vehicle().unit())).findFirst()
                .map(b -> FleetYear.orderBy(in.study(), b).toString()).orElse("");
    }

    private VehicleTypeInput type(Vehicle vehicle) {
        return in.study().types().get(vehicle.type());
    }

    private Optional<BusFacts> facts(Vehicle vehicle) {
        return in.facts().bus(vehicle.unit());
    }
}
