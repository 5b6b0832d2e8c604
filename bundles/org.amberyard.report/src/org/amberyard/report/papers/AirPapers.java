package org.amberyard.report.papers;

import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.amberyard.core.air.GrantTerms;
import org.amberyard.core.air.Masses;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.plan.EngineModelYear;
import org.amberyard.core.plan.PlaceholderUse;
import org.amberyard.core.plan.ReplacedBus;
import org.amberyard.core.units.Unit;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables of what the project does to the air: by bus in a year, over remaining lives, and what a ton less costs. */
final class AirPapers {
    private static final List<Pollutant> TAILPIPE = List.of(Pollutant.NOX, Pollutant.PM25, Pollutant.HC, Pollutant.CO,
            Pollutant.CO2);
    private static final List<Pollutant> POLLUTANTS = Stream.concat(TAILPIPE.stream(), Stream.of(Pollutant.CO2E)).toList();
    /** Decimals of short tons as such tables print them. */
    private static final Map<Pollutant, Integer> DECIMALS = Map.of(Pollutant.NOX, 3, Pollutant.PM25, 4, Pollutant.HC, 3,
            Pollutant.CO, 3, Pollutant.CO2, 1, Pollutant.CO2E, 1);
    private static final CellFormat FINEST = CellFormat.decimals(4);
    private static final String TONS = "short tons";
    private static final String A_YEAR = "Short tons a year, in the year of the change, where nothing else is said.";
    private static final String METHOD = """
            Exhaust of engines and fuel-fired heaters at the bus: grams per distance by model year of the engine times distance, \
            grams per hour times hours of idling, and fuel times its carbon. Distance and idling are those of table T1b, whichever \
            bus drives them; the fuel of the bus compared with stands in table T6d; factors and their sources in table T12c. \
            A short ton is 2,000 pounds. Before, after and reduced are each rounded, so they may differ in the last digit.""";

    private static final String AS_ABOVE = "Method, factors and rounding as below table T6a.";

    private final PaperInput in;
    private final List<ReplacedBus> buses;
    private final String mark;

    private AirPapers(PaperInput in) {
        this.in = in;
        this.buses = in.replaced();
        this.mark = PlaceholderUse.inReplaced(buses) ? PlaceholderUse.WORDS : "";
    }

    static List<DataTable> annual(PaperInput in) {
        AirPapers papers = new AirPapers(in);
        return List.of(papers.byBus(), papers.inAll(), papers.elsewhere(), papers.warming());
    }

    static List<DataTable> lifetime(PaperInput in) {
        return List.of(new AirPapers(in).inLife());
    }

    static List<DataTable> perTon(PaperInput in) {
        return List.of(CostOfATon.of(in, POLLUTANTS.stream().collect(Collectors.toMap(p -> p, AirPapers::format)), mark(in)),
                ProjectBridge.of(in));
    }

    /** True where factors took part that only stand in. */
    static String mark(PaperInput in) {
        return new AirPapers(in).mark;
    }

    private static double tons(Masses masses, Pollutant pollutant) {
        return masses.kg(pollutant) / GrantTerms.KG_PER_SHORT_TON;
    }

    private DataTable byBus() {
        TableBuilder<ReplacedBus> table = named("T6a", "T6a. Emissions a year by bus, short tons: before, after, reduced");
        TAILPIPE.forEach(p -> beforeAndAfter(table, p));
        return table.note(A_YEAR).note(METHOD).mark(mark).of(buses);
    }

    private DataTable warming() {
        TableBuilder<ReplacedBus> table = named("T6d", "T6d. Greenhouse gases of exhaust by bus, short tons CO2e");
        fuel(table, "Fuel before", b -> b.compared().use().fuelL());
        boolean heaters = buses.stream().anyMatch(b -> b.compared().use().heaterFuelL() > 0);
        if (heaters) {
            fuel(table, "Heater fuel before", b -> b.compared().use().heaterFuelL());
        }
        beforeAndAfter(table, Pollutant.CO2E);
        return table.sum("reduced over remaining life", "", format(Pollutant.CO2E), b -> tons(b.lifetimeExhaust(), Pollutant.CO2E))
                .note(A_YEAR).note("CO2e: carbon dioxide, methane and nitrous oxide by their warming over 100 years. Fuel before: what the "
                        + "engine of the bus compared with burns in the year of the change."
                        + (heaters ? " Heater fuel before: the diesel that its fuel-fired heater burns in that year." : ""))
                .note(AS_ABOVE)
                .mark(mark).of(buses);
    }

    private void fuel(TableBuilder<ReplacedBus> table, String label, ToDoubleFunction<ReplacedBus> litres) {
        table.sum(label, in.symbol(Unit.LITRE), CellFormat.WHOLE, b -> in.shown(Unit.LITRE, litres.applyAsDouble(b)));
    }

    private static void beforeAndAfter(TableBuilder<ReplacedBus> table, Pollutant pollutant) {
        column(table, pollutant.label() + " before", pollutant, b -> tons(b.before().exhaust(), pollutant));
        column(table, pollutant.label() + " after", pollutant, b -> tons(b.after().exhaust(), pollutant));
        column(table, pollutant.label() + " reduced", pollutant, b -> tons(b.reducedExhaust(), pollutant));
    }

    private TableBuilder<ReplacedBus> named(String name, String title) {
        return new TableBuilder<ReplacedBus>(name, title).text("Old bus", 1, b -> b.old().vehicle().unit())
                .text("New bus", 1.2, b -> b.now().vehicle().unit()).text("Compared with", 1.6, this::compared);
    }

    /** What stands for the emissions before: the old bus, or the one that the baseline buys in its place by then; with its engine. */
    private String compared(ReplacedBus bus) {
        int engine = EngineModelYear.of(in.study(), bus.compared().vehicle());
        return bus.instead().map(b -> "new " + in.study().types().get(b.vehicle().type()).name()).orElse("the old bus") + ", engine of "
                + engine;
    }

    private static void column(TableBuilder<ReplacedBus> table, String label, Pollutant pollutant,
            ToDoubleFunction<ReplacedBus> tons) {
        table.sum(label, "", format(pollutant), tons);
    }

    private DataTable inAll() {
        TableBuilder<Pollutant> table = new TableBuilder<Pollutant>("T6b", "T6b. Emissions a year of all replaced buses")
                .text("Pollutant", 1, Pollutant::label);
        inAll(table, "Before", b -> b.before().exhaust());
        inAll(table, "After", b -> b.after().exhaust());
        inAll(table, "Reduced", ReplacedBus::reducedExhaust);
        return table.number("Reduced", "kg", CellFormat.CENTS, p -> sum(b -> b.reducedExhaust().kg(p)))
                .note(AS_ABOVE).mark(mark).of(POLLUTANTS);
    }

    private void inAll(TableBuilder<Pollutant> table, String label, Function<ReplacedBus, Masses> masses) {
        table.mixed(label, TONS, FINEST, AirPapers::format, p -> OptionalDouble.of(sum(b -> tons(masses.apply(b), p))));
    }

    private static CellFormat format(Pollutant pollutant) {
        return CellFormat.decimals(DECIMALS.get(pollutant));
    }

    private double sum(ToDoubleFunction<ReplacedBus> figure) {
        return buses.stream().mapToDouble(figure).sum();
    }

    private DataTable elsewhere() {
        List<ResultLine> years = ResultLine.of(in, "emissions_by_year").stream().filter(l -> l.text("pollutant").equals("CO2e"))
                .toList();
        return new TableBuilder<ResultLine>("T6c", "T6c. Greenhouse gas of the whole fleet by year, power plants apart")
                .year("Year", l -> l.year("year")).sum("Buses", "kg CO2e", CellFormat.WHOLE, l -> mass(l, "total")
                        - mass(l, "power_plants"))
                .sum("Power plants", "kg CO2e", CellFormat.WHOLE, l -> mass(l, "power_plants"))
                .across("Together", "kg CO2e", CellFormat.WHOLE, 2)
                .optional("Fuel upstream, in no total", "kg CO2e", CellFormat.WHOLE, l -> l.number("upstream"))
                .note("Plan “" + in.plan().name() + "”. Power plants: energy at the meter with line losses times the factor of "
                        + "the grid in the year. Together: sum of the two printed figures.")
                .mark(PlaceholderUse.inEmissions(in.result()) ? PlaceholderUse.WORDS : "").of(years);
    }

    private static double mass(ResultLine line, String column) {
        return line.number(column).orElse(Double.NaN);
    }

    private DataTable inLife() {
        TableBuilder<ReplacedBus> table = named("T7", "T7. Emissions reduced over the remaining life of the old buses")
                .number("Remaining life", "yr", CellFormat.WHOLE, ReplacedBus::remainingYears);
        for (Pollutant pollutant : POLLUTANTS) {
            table.sum(pollutant.label(), TONS, format(pollutant), b -> tons(b.lifetimeExhaust(),
                    pollutant));
        }
        return table.note("Unrounded reduction of a year times the years that the old bus would have driven on in its place in “"
                + in.result().baseline().name() + "”; distance as in the year of the change. A bus that the baseline replaces by then has no remaining life.")
                .note(METHOD).mark(mark).of(buses);
    }
}
