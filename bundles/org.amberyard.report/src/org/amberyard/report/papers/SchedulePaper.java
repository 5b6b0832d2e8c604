package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.amberyard.core.plan.BusInput;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.core.plan.VehicleYear;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.RowSetting;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;

/**
 * The replacement schedule to hang up: a row for each place of the fleet, a column for each year, and then every purchase in its
 * order. What a cell says is letters and digits, so that it is legible without colours.
 */
final class SchedulePaper {
    private static final String TITLE = "Replacement schedule";
    /** More years need smaller letters to stand across a letter page. */
    private static final int YEARS_AT_EASE = 16;
    private static final double YEAR_WIDTH = 0.62;

    private final PaperInput in;
    private final List<Integer> years;
    /** Short names of types by their place in the list of types, in the order in which the legend has them. */
    private final Map<Integer, String> codes = new LinkedHashMap<>();
    private final Map<List<Integer>, VehicleYear> standing;

    /** A row: a place, or a count. */
    private record Line(String place, String route, IntFunction<String> cell) {
    }

    private SchedulePaper(PaperInput in) {
        this.in = in;
        this.years = IntStream.range(0, in.study().years()).boxed().toList();
        this.standing = in.plan().fleet().years().stream().collect(Collectors.toMap(y -> List.of(y.place(), y.year()), y -> y, (a, b) -> a));
        Set<Integer> used = standing.values().stream().map(y -> y.vehicle().type()).collect(Collectors.toSet());
        name("E", used.stream().filter(this::isElectric).sorted().toList());
        name("F", used.stream().filter(t -> !isElectric(t)).sorted().toList());
    }

    static Document of(PaperInput in) {
        SchedulePaper paper = new SchedulePaper(in);
        return new Document("replacement-schedule", TITLE, in.study().name(), in.factsInShort(), in.running(TITLE), "", List.of(
                new Section("Who stands where", true, false, List.of(paper.grid())),
                new Section("Purchases in their order", true, true, List.of(Block.Condensed.close(paper.purchases()))))).close();
    }

    private void name(String letter, List<Integer> types) {
        types.forEach(t -> codes.put(t, letter + (types.indexOf(t) + 1)));
    }

    private boolean isElectric(int type) {
        return in.study().types().get(type).electric().isPresent();
    }

    private Block grid() {
        TableBuilder<Line> table = new TableBuilder<Line>("Schedule", "Table 1. Type in each place by year").text("Place", 1, Line::place).text(
                "Route", 0.9, Line::route);
        years.forEach(y -> table.text(String.valueOf(in.calendar(y)), YEAR_WIDTH, l -> l.cell().apply(y)));
        DataTable made = table.note(codes.entrySet().stream().map(e -> e.getValue() + " " + in.study().types().get(e.getKey()).name())
                .collect(Collectors.joining("; "))
                + ". E: electric, F: with an engine; + comes at the start of the year; p a pack is replaced in the year; – no bus stands there.").of(lines());
        return new Block.Condensed(made, List.of(made), years.size() > YEARS_AT_EASE ? RowSetting.DENSE : RowSetting.CLOSE);
    }

    private List<Line> lines() {
        List<Line> lines = new ArrayList<>();
        for (int i = 0; i < in.study().buses().size(); i++) {
            int place = i;
            BusInput bus = in.study().buses().get(place);
            lines.add(new Line(bus.name(), route(bus), year -> cell(place, year)));
        }
        lines.add(new Line("Buses that come", "", year -> String.valueOf(bought().stream().filter(b -> b.year() == year).count())));
        lines.add(new Line("Electric buses", "", year -> String.valueOf(standing.values().stream().filter(y -> y.year() == year && isElectric(y
                .vehicle().type())).count())));
        return lines;
    }

    private String route(BusInput bus) {
        return bus.route().isPresent() ? in.study().duty().routes().get(bus.route().getAsInt()).name() : bus.role().name().toLowerCase(
                Locale.ROOT);
    }

    private String cell(int place, int year) {
        VehicleYear stands = standing.get(List.of(place, year));
        if (stands == null) {
            return "–";
        }
        boolean comes = bought().stream().anyMatch(b -> b.place() == place && b.year() == year);
        boolean pack = in.plan().fleet().events().stream().anyMatch(e -> e instanceof FleetEvent.PackReplaced && e.place() == place && e
                .year() == year);
        return (comes ? "+" : "") + codes.get(stands.vehicle().type()) + (pack ? " p" : "");
    }

    private List<FleetEvent.Bought> bought() {
        return in.plan().fleet().events().stream().filter(FleetEvent.Bought.class::isInstance).map(FleetEvent.Bought.class::cast).toList();
    }

    private DataTable purchases() {
        return new TableBuilder<FleetEvent.Bought>("Purchases", "Table 2. Every bus that comes").year("Year", b -> OptionalInt.of(in.calendar(
                b.year()))).text("Place", 1, b -> in.study().buses().get(b.place()).name()).text("Route", 1, b -> route(in.study().buses().get(b
                        .place())))
                .text("Comes", 2, b -> in.study().types().get(b.vehicle().type()).name())
                .text("New or used", 0.8, b -> b.vehicle().used().isPresent() ? "used" : "new")
                .text("Replaces", 2, b -> in.study().types().get(b.outgoingType()).name())
                .text("Old bus", 1.4, this::old).text("Asked by", 1.2, b -> b.step().isPresent() ? "a step of the plan" : "the rule of the plan").of(bought());
    }

    /** What becomes of the bus that stood there. */
    private String old(FleetEvent.Bought bought) {
        return in.plan().fleet().events().stream().filter(e -> e.year() == bought.year() && e instanceof FleetEvent.Sold sold && sold
                .place() == bought.place()).map(FleetEvent.Sold.class::cast).findFirst().map(s -> s.scrapped() ? "scrapped" : "sold").orElse(
                        "moves to another place");
    }
}
