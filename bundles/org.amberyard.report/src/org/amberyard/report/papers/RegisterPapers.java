package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.core.funding.Programme;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;
import org.amberyard.report.papers.SourceList.Source;

/** Tables of assumptions and where they come from. */
final class RegisterPapers {
    /** Kinds of elements of which every input decides: how the register names them. */
    private static final List<String> WHOLE = List.of("settings", "fuel price", "exhaust fluid", "pack price", "battery pack price",
            "cost index", "low-carbon credit", "emission factors");
    /** How a bus is driven, which is the study's physics and nothing that an applicant defends; and what other columns say. */
    private static final Set<String> SAID_ELSEWHERE = Set.of("Acceleration", "Deceleration", "Driver hurry", "Rider mass", "Currency",
            "Units", "Fuel", "Scales");
    /** Units of emission factors begin so; they have a table of their own. */
    private static final List<String> MASSES = List.of("kg/", "g/", "lb/");
    private static final String INCOME_TAX = "Income tax rate";
    /** Settings that count only where income is taxed. */
    private static final Set<String> ASKED_FOR_TAXES = Set.of("Buses depreciate as", "Ports and works depreciate as",
            "Straight-line years", "Depreciation convention", "Bonus depreciation");
    /** Kinds of elements of which prices decide. */
    private static final List<String> PRICED = List.of("engine bus type", "electric bus type", "port type", "site work",
            "service upgrade", "tariff", "programme", "bus award", "operating aid");

    /** Kinds of elements that stand in one line, for they have a figure or two each. */
    private static final List<String> LISTED = List.of("tariff charge", "cost index", "site work");

    /** Years that are those of the base year where they are empty. */
    private static final Set<String> OF_THE_BASE_YEAR = Set.of("Price year", "Weekdays as in");

    private RegisterPapers() {
    }

    /** Name and title of a table, and what it says of inputs that stand elsewhere. */
    private record Caption(String name, String title, String elsewhere) {
    }

    static List<DataTable> sources(PaperInput in) {
        SourceList sources = new SourceList();
        DataTable main = main(in, sources, new Caption("T12a", "T12a. Main assumptions", "sources by their number in table T12b, emission factors "
                + "in T12c. The consultant's appendix lists every input by itself."));
        DataTable factors = factors(in, sources);
        return List.of(main, bySource(in, sources, new Caption("T12b", "T12b. Sources and what rests on them",
                "Cited in none of these tables: see the consultant's appendix")), factors);
    }

    /** The main assumptions and their sources, for pages that have no room for every input. */
    static List<DataTable> inShort(PaperInput in) {
        SourceList sources = new SourceList();
        DataTable main = main(in, sources, new Caption("Main", "Main assumptions", "sources by their number in the next table, emission factors "
                + "among the results."));
        return List.of(main, bySource(in, sources, new Caption("Sources", "Sources and what rests on them",
                "Cited by other inputs alone: see the workbook (XLSX) of this document")));
    }

    private static DataTable main(PaperInput in, SourceList sources, Caption caption) {
        List<ResultLine> all = lines(in);
        Set<String> idle = idle(in);
        boolean taxed = all.stream().anyMatch(l -> l.text("field").equals(INCOME_TAX) && l.number("value").orElse(0) > 0);
        List<Together> rows = Together.of(all.stream().filter(l -> isMain(l, in.currency())
                && idle.stream().noneMatch(l.text("element")::endsWith) && (taxed || !ASKED_FOR_TAXES.contains(l.text("field")))),
                l -> List.of(kind(l).orElse(l.text("element")), l.text("quality"), sources.cite(Source.of(l, "source"))),
                RegisterPapers::input);
        return new TableBuilder<Together>(caption.name(), caption.title()).text("Element", 2.4, t -> t.key(0))
                .text("Inputs", 5, Together::words).text("Quality", 0.9, t -> t.key(1)).text("Source", 0.6, t -> t.key(2))
                .note("Settings, prices, programmes and what emissions rest on, as far as they decide; " + caption.elsewhere())
                .of(rows);
    }

    private static Optional<String> kind(ResultLine line) {
        return LISTED.stream().filter(line.text("element")::startsWith).findFirst();
    }

    private static String input(ResultLine line) {
        // Years have no unit; all else is grouped as in the tables beside.
        String value = (line.text("unit").isEmpty() ? CellFormat.VALUE : CellFormat.WHOLE).print(value(line));
        String named = kind(line).map(k -> line.text("element").substring(k.length()).strip() + ", ").orElse("");
        return (named + line.text("field") + " " + (value.isEmpty() ? "not told" : value + " " + line.text("unit"))).strip();
    }

    /** Programmes that pay nothing of the project; what they would pay is no assumption of it. */
    private static Set<String> idle(PaperInput in) {
        ProjectMoney money = ProjectMoney.of(in);
        return in.study().funding().programmes().stream().map(Programme::name).filter(n -> money.paidBy(n).signum() == 0)
                .map(n -> "programme " + n).collect(Collectors.toSet());
    }

    private static boolean isMain(ResultLine line, String currency) {
        if (isOf(WHOLE, line)) {
            return !SAID_ELSEWHERE.contains(line.text("field")) && MASSES.stream().noneMatch(line.text("unit")::startsWith);
        }
        boolean amount = line.text("unit").contains(currency) || line.text("unit").equals("%") && isOf(List.of("programme"), line);
        return isOf(PRICED, line) && amount && line.number("value").orElse(0) != 0;
    }

    private static boolean isOf(List<String> kinds, ResultLine line) {
        return kinds.stream().anyMatch(line.text("element")::startsWith);
    }

    private static DataTable factors(PaperInput in, SourceList sources) {
        String us = in.system() == UnitSystem.US ? "_us" : "";
        List<Together> rows = Together.of(ResultLine.of(in, "emission_factors").stream().filter(l -> l.text("used").equals("yes")),
                l -> List.of(l.text("group"), l.text("cause"), l.text("unit" + us), l.text("quality"),
                        sources.cite(Source.of(l, "citation"))),
                l -> (l.text("pollutant") + " " + CellFormat.VALUE.print(InputFigure.orWords(l, "value" + us))).strip());
        return new TableBuilder<Together>("T12c", "T12c. Emission factors that took part").text("Holds for", 2, t -> t.key(0))
                .text("By", 1.4, t -> t.key(1)).text("Factors", 3, Together::words).text("Unit", 0.8, t -> t.key(2))
                .text("Quality", 0.9, t -> t.key(3)).text("Source", 0.6, t -> t.key(4))
                .note("Factors of engines, fuels and power plants that no plan of the study uses are left out; sources by their "
                        + "number in table T12b.")
                .mark(AirPapers.mark(in)).of(rows);
    }

    /** Every input. */
    static DataTable all(PaperInput in) {
        return new TableBuilder<ResultLine>("Inputs", "All inputs with their sources").text("Element", 2.2, l -> l.text("element"))
                .text("Input", 2, l -> l.text("field")).value("Value", 1.4, RegisterPapers::value)
                .text("Unit", 0.8, l -> l.text("unit")).text("Quality", 0.9, l -> l.text("quality"))
                .text("Source", 3, l -> l.text("source")).text("Date", 0.9, l -> l.text("date")).of(lines(in));
    }

    private static List<ResultLine> lines(PaperInput in) {
        return ResultLine.all(in.facts().inputs(), "");
    }

    /** The value of an input. */
    private static Object value(ResultLine line) {
        boolean base = OF_THE_BASE_YEAR.contains(line.text("field")) && line.number("value").isEmpty();
        return base ? "the base year" : InputFigure.orWords(line, "value");
    }

    /** A row of the list of sources and how many inputs rest on it. */
    private record Cited(String number, Source source, long inputs) {
    }

    private static DataTable bySource(PaperInput in, SourceList sources, Caption caption) {
        List<Source> ofInputs = lines(in).stream().map(l -> Source.of(l, "source")).toList();
        List<Cited> rows = new ArrayList<>();
        for (Source source : sources.cited()) {
            rows.add(new Cited(sources.cite(source), source, ofInputs.stream().filter(source::equals).count()));
        }
        rows.add(new Cited("–", new Source(caption.elsewhere(), "", ""),
                ofInputs.stream().filter(s -> !s.citation().isEmpty() && !sources.cites(s)).count()));
        rows.add(new Cited("–", new Source("No source noted", "", ""), ofInputs.stream().filter(s -> s.citation().isEmpty()).count()));
        return new TableBuilder<Cited>(caption.name(), caption.title()).text("Number", 0.6, Cited::number)
                .text("Source", 4, c -> c.source().citation()).text("Quality", 1, c -> c.source().quality())
                .text("Date", 1, c -> c.source().date()).number("Inputs", "", CellFormat.WHOLE, Cited::inputs)
                .note("Inputs: how many of the study's inputs rest on it, the program's own defaults too; those of tables of factors "
                        + "count none of their own.")
                .of(rows);
    }
}
