package org.amberyard.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.amberyard.core.charging.ChargePolicy;
import org.amberyard.core.charging.PortUnit;
import org.amberyard.core.depot.Port;
import org.amberyard.core.depot.ServiceInput;
import org.amberyard.core.depot.ServiceYear;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.core.plan.ServiceYears;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.report.LastYears.LastYear;

/** What a utility asks for of a plan's charging before it connects it, as far as results tell it. */
final class LoadLetter {
    private static final String STUDY = "study";
    private static final String COMPUTED = "computed by the study";
    private static final String KW = "kW";
    private static final String KVA = "kVA";

    private final LastYear at;
    private final List<Item> items = new ArrayList<>();

    private LoadLetter(LastYear at) {
        this.at = at;
    }

    /** A row of the letter. */
    record Item(String plan, String item, String value, String unit, String source) {
    }

    static TableDefinition<Item> table(LastYears years) {
        return new TableDefinition<>("load_letter", "Load letter to the utility", r -> all(r, years))
                .text("plan", "Plan", "Name of the plan.", Item::plan)
                .text("item", "Item", "What the utility asks for.", Item::item).heads()
                .text("value", "Value", "What the study says.", Item::value)
                .text("unit", "Unit of the value", "Unit of the value.", Item::unit)
                .text("source", "Source", "Where the value comes from.", Item::source);
    }

    private static List<Item> all(StudyResult result, LastYears years) {
        return years.of(result).stream().flatMap(y -> new LoadLetter(y).written().stream()).toList();
    }

    private List<Item> written() {
        addCustomer();
        addService();
        addPorts();
        addDemand();
        IntStream.range(0, years().size()).filter(this::changes).forEach(this::addYear);
        addBreaches();
        addCautions();
        return items;
    }

    private StudyInput study() {
        return at.result().input();
    }

    private List<ServiceYear> years() {
        return at.plan().service();
    }

    private void addCustomer() {
        add("Customer and site", study().name(), "", STUDY);
    }

    private void addService() {
        ServiceInput service = ServiceYears.today(study().depot(), at.plan().plan());
        add("Service voltage, three phases", whole(service.lineVolts()), "V", STUDY);
        add("Main breaker today", whole(service.breakerA()), "A", STUDY);
        add("Transformer today", whole(service.transformerKva()), KVA, STUDY);
        add("Power factor at the peak", String.format(Locale.ROOT, "%.2f", service.powerFactor()), "", STUDY);
        add("Existing peak demand", figure(service.buildingPeakKw()), KW, STUDY);
    }

    /** What stands since before the base year is not asked for again. */
    private void addPorts() {
        List<PlanInput.PortPurchase> bought = at.plan().plan().ports().stream().filter(p -> p.year() >= 0)
                .sorted(Comparator.comparingInt(PlanInput.PortPurchase::year)).toList();
        bought.forEach(p -> add("Requested in service, " + (study().baseYear() + p.year()),
                ports(p.count(), study().depot().ports().get(p.port())), "ports", "plan"));
        ServiceYears.toCome(study().depot(), at.plan().plan()).forEach(o -> add("Larger service, " + (study().baseYear() + o.inServiceYear()),
                whole(o.upgrade().transformerKva()) + " kVA, " + whole(o.upgrade().breakerA()) + " A", "",
                "plan: ordered in " + (study().baseYear() + o.orderYear()) + ", in service from the year given"));
        Map<Port, Integer> last = new LinkedHashMap<>();
        at.input().ports().forEach((PortUnit u) -> last.merge(u.port(), 1, Integer::sum));
        last.forEach((port, count) -> add("Ports in " + at.at().calendarYear(), ports(count, port), "ports", "plan"));
    }

    private static String ports(int count, Port port) {
        return count + " × " + figure(port.powerKw()) + " kW " + (port.direct() ? "direct current" : "alternating current") + " ("
                + port.name() + ")";
    }

    private void addDemand() {
        int year = at.at().calendarYear();
        add("Connected load of ports, " + year, figure(at.input().connectedKw()), KW, COMPUTED);
        add("All ports at full power, a continuous load, and the building's measured demand, both at 125 %, " + year,
                figure(study().depot().service().sizingKva(years().get(at.at().year()).connectedKw())), KVA,
                COMPUTED + "; NFPA 70, 625.42 and 220.87; the local code decides");
        add("Highest coincident demand of charging without load management, " + year,
                figure(at.plan().yardComparison().under(at.at().year(), ChargePolicy.AT_ONCE).yardPeakKw()), KW,
                COMPUTED + ": every bus at full power from its arrival");
        add("Highest coincident demand of charging as planned, " + year, figure(at.yard().year().yardPeakKw()), KW,
                COMPUTED + ": " + at.input().rule().policy().label()
                        + "; counts for sizing only under a listed load-management system");
    }

    /** True for a year whose ports or service are not those of the year before. */
    private boolean changes(int year) {
        ServiceYear now = years().get(year);
        if (year == 0) {
            return now.ports() > 0;
        }
        ServiceYear before = years().get(year - 1);
        return now.ports() != before.ports() || now.connectedKw() != before.connectedKw() || now.limitKva() != before.limitKva();
    }

    private void addYear(int year) {
        ServiceYear service = years().get(year);
        String ramp = "Ramp, " + (study().baseYear() + year) + ": ";
        add(ramp + "connected load of ports", figure(service.connectedKw()), KW, COMPUTED);
        add(ramp + "demand of charging as planned", figure(service.demandKw()), KW, COMPUTED);
        add(ramp + "load with the building as planned", figure(service.demandKva()), KVA, COMPUTED);
    }

    private void addBreaches() {
        add("First year above the transformer, all ports at full power", first(s -> s.connectedKva() > s.transformerKva()));
        add("First year above the transformer, as planned", first(s -> s.demandKva() > s.transformerKva()));
        add("First year above the main breaker's continuous load, all ports at full power",
                first(s -> s.connectedKva() > s.breakerContinuousKva()));
        add("First year above the main breaker's continuous load, as planned", first(s -> s.demandKva() > s.breakerContinuousKva()));
    }

    private String first(Predicate<ServiceYear> above) {
        return IntStream.range(0, years().size()).filter(y -> above.test(years().get(y))).boxed().findFirst()
                .map(y -> String.valueOf(study().baseYear() + y)).orElse("in no year studied");
    }

    private void addCautions() {
        add("Caution", "The local electrical code, the utility and a licensed electrician decide what may be built and connected.");
        add("Caution", "Charging counts as a continuous load and the building's measured demand as an existing one, both at 125 % "
                + "(NFPA 70, 625.42 and 220.87; check the edition in force).");
        add("Caution", "These are estimates for planning, as good as their inputs.");
    }

    private void add(String item, String value) {
        add(item, value, "", COMPUTED);
    }

    private void add(String item, String value, String unit, String source) {
        items.add(new Item(at.plan().name(), item, value, unit, source));
    }

    private static String whole(double value) {
        return String.format(Locale.ROOT, "%.0f", value);
    }

    private static String figure(double value) {
        return String.format(Locale.ROOT, "%.1f", value);
    }
}
