package org.amberyard.report.papers;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.plan.FleetYear;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.ServiceYears;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables of the load letter on customer, equipment and phases. */
final class LetterTables {
    private static final CellFormat TENTHS = CellFormat.decimals(1);
    /** Rows of the results that tables of the letter say in other words. */
    private static final List<String> SAID_ELSEWHERE = List.of("Customer and site", "Requested in service", "Larger service",
            "Ports in ", "Ramp,", "Caution");
    private static final String STUDY = "study";
    private static final String TO_FILL = "†";

    /** A share of a port that is rounding of binary numbers, no port. */
    private static final double ROUNDING = 1e-9;
    /** How many tables of the letter they are; those that follow go on counting. */
    static final int TABLES = 3;

    private final PaperInput in;
    private final ServiceFacts site;

    /** An item with its value. */
    private record Item(String what, Object value, String unit, String source) {
        static Item of(String what, String text) {
            return new Item(what, ApplicantFacts.orBlank(text), "", text.isEmpty() ? "" : STUDY);
        }
    }

    LetterTables(PaperInput in) {
        this.in = in;
        this.site = in.facts().service();
    }

    DataTable customer() {
        ApplicantFacts who = in.facts().applicant();
        List<Item> rows = new ArrayList<>(List.of(Item.of("Customer", who.name()), Item.of("Address of the customer", who.address()),
                Item.of("Contact", who.person()), Item.of("Phone", who.phone()), Item.of("E-mail", who.email()),
                Item.of("Utility", site.utility()), Item.of("Account number", site.account()), Item.of("Meter number", site.meter()),
                Item.of("Service address", site.address()), Item.of("Requested in-service date", firstPorts())));
        ResultLine.of(in, "load_letter").stream().filter(l -> SAID_ELSEWHERE.stream().noneMatch(l.text("item")::startsWith))
                .forEach(l -> {
                    rows.add(new Item(l.text("item"), l.text("value"), l.text("unit"), SourceWords.of(l.text("source"))));
                    if (l.text("item").startsWith("Existing peak")) {
                        rows.add(Item.of("Date of the existing peak", site.peakDate()));
                    }
                });
        rows.add(Item.of("Listed load-management system", site.loadManagement()));
        rows.add(setPoint());
        buildOut().ifPresent(ports -> rows.add(new Item("Full build-out: connected load of ports if every bus of the fleet went "
                + "electric, as many ports for each as in the last year, rounded up to " + ports + " ports",
                TENTHS.print(TENTHS.rounded(ports * year(last()).connectedKw() / year(last()).ports())), "kW", "computed by the study")));
        TableBuilder<Item> table = new TableBuilder<Item>("Load letter", "Table 1. Customer, service and load").text("Item", 4, Item::what)
                .value("Value", 2.6, Item::value).text("Unit", 0.6, Item::unit).text("Source", 2.2, Item::source);
        if (rows.stream().anyMatch(i -> i.value().toString().startsWith(TO_FILL))) {
            table.note(DataTable.TO_FILL);
        }
        return table.note("A site sketch and the one-line diagram go with this letter.").of(rows);
    }

    private Item setPoint() {
        if (site.setPointKw() <= 0) {
            return Item.of("Set-point of load management (kW)", "");
        }
        OptionalInt above = IntStream.range(0, in.study().years()).filter(y -> year(y).demandKw() > site.setPointKw()).findFirst();
        return new Item("Set-point of load management", TENTHS.print(TENTHS.rounded(site.setPointKw())), "kW", above.isPresent()
                ? "study; charging as planned is above it from " + in.calendar(above.getAsInt())
                : "study; charging as planned stays within it");
    }

    private ServiceYear year(int year) {
        return in.plan().service().get(year);
    }

    /** Ports that are still to come; those of years before the base year stand already. */
    private Stream<PlanInput.PortPurchase> bought() {
        return in.plan().plan().ports().stream().filter(p -> p.year() >= 0);
    }

    private String firstPorts() {
        OptionalInt first = bought().mapToInt(PlanInput.PortPurchase::year).min();
        return first.isPresent() ? start(first.getAsInt()).toString() : "";
    }

    private LocalDate start(int year) {
        return in.study().money().fiscal().start(in.calendar(year));
    }

    private int last() {
        return in.study().years() - 1;
    }

    /** Whole ports for the whole fleet. */
    private OptionalInt buildOut() {
        FleetYear fleet = FleetYear.of(in.study(), in.plan().fleet()).get(last());
        int ports = year(last()).ports();
        return fleet.electric() == 0 || ports == 0 ? OptionalInt.empty()
                : OptionalInt.of((int) Math.ceil(ports * (1.0 + (double) fleet.engine() / fleet.electric()) - ROUNDING));
    }

    /** Ports of the last year by their type. */
    DataTable equipment() {
        Map<Port, Integer> ports = new LinkedHashMap<>();
        in.plan().yards().get(last()).input().ports().forEach((PortUnit u) -> ports.merge(u.port(), 1, Integer::sum));
        TableBuilder<Map.Entry<Port, Integer>> table =
                new TableBuilder<Map.Entry<Port, Integer>>("Equipment", "Table 2. Charging equipment at the end of the plan")
                        .text("Equipment", 2, e -> e.getKey().name()).text("Current", 0.9, e -> e.getKey().direct() ? "direct" : "alternating")
                        .number("Quantity", "", CellFormat.WHOLE, Map.Entry::getValue)
                        .number("Power of each", "kW", TENTHS, e -> e.getKey().powerKw())
                        .value("Phases", 0.6, e -> known(supply(e).phases(), CellFormat.WHOLE))
                        .value("Volts", 0.6, e -> known(supply(e).volts(), CellFormat.WHOLE))
                        .value("Power factor", 0.6, e -> known(supply(e).powerFactor(), CellFormat.CENTS))
                        .value("Most of each (A)", 0.8, e -> known(supply(e).amps(e.getKey().powerKw()).orElse(0), TENTHS))
                        .sum("Connected", "kW", TENTHS, e -> e.getValue() * e.getKey().powerKw())
                        .value("Connected (kVA)", 0.8, e -> known(supply(e).kva(e.getValue() * e.getKey().powerKw()).orElse(0), TENTHS))
                        .note("Amperes: power over volts and power factor, of three phases over the square root of three too. Amperes and kVA "
                                + "of this table are at the power factor of the equipment; kVA of the load with the building, in tables 1 "
                                + "and 4, are at the power factor of " + String.format(Locale.ROOT, "%.2f", in.study().depot().service()
                                        .powerFactor())
                                + " at the peak of the whole service.");
        ports.forEach((port, count) -> voltage(port).ifPresent(table::note));
        if (ports.keySet().stream().map(this::supply).anyMatch(s -> s.phases() <= 0 || s.volts() <= 0 || s.powerFactor() <= 0)) {
            table.note(DataTable.TO_FILL);
        }
        return table.of(List.copyOf(ports.entrySet()));
    }

    /** What equipment needs that the voltage of the service does not give; empty where it does or is not known. */
    private Optional<String> voltage(Port port) {
        ServiceFacts.Supply supply = supply(port);
        double service = in.study().depot().service().lineVolts();
        return supply.fits(service) ? Optional.empty() : Optional.of(String.format(Locale.ROOT, "%s: the equipment is for %s, %.0f V, the "
                + "service is of %.0f V, three phases. A transformer, or a panel of 208 or 240 V where the equipment takes it, is needed"
                + "%s; electrician and utility to confirm.", port.name(), supply.phases() == 1 ? "one phase" : "three phases",
                supply.volts(), service, supply.phases() == 1 ? ", and ports spread evenly over the phases" : ""));
    }

    private ServiceFacts.Supply supply(Map.Entry<Port, Integer> port) {
        return supply(port.getKey());
    }

    private ServiceFacts.Supply supply(Port port) {
        return site.supplies().getOrDefault(port.name(), new ServiceFacts.Supply(0, 0, 0));
    }

    private static Object known(double figure, CellFormat format) {
        return figure > 0 ? format.rounded(figure) : TO_FILL;
    }

    /** What goes into service when. */
    DataTable phases() {
        List<Integer> years = IntStream.range(0, in.study().years()).filter(y -> !words(y).isEmpty()).boxed().toList();
        return new TableBuilder<Integer>("Phases", "Table 3. Phases").text("In service from", 1.1, y -> start(y).toString())
                .text("What", 4, this::words)
                .number("Ports then", "", CellFormat.WHOLE, y -> year(y).ports())
                .number("Connected then", "kW", TENTHS, y -> year(y).connectedKw())
                .number("Highest coincident, as planned", "kW", TENTHS, y -> year(y).demandKw())
                .note("Dates are starts of the fiscal years in which the plan has ports and works in service.").of(years);
    }

    private String words(int year) {
        List<String> words = new ArrayList<>();
        bought().filter(p -> p.year() == year).forEach(p -> words.add(p.count() + " × " + in.study().depot().ports().get(p.port())
                .name()));
        ServiceYears.toCome(in.study().depot(), in.plan().plan()).stream().filter(o -> o.inServiceYear() == year).forEach(o -> words.add(
                String.format(Locale.ROOT, "service of %.0f kVA and %.0f A, ordered in %d", o.upgrade().transformerKva(), o.upgrade().breakerA(),
                        in.calendar(o.orderYear()))));
        return String.join("; ", words);
    }
}
