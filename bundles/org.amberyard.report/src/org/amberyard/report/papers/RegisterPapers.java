package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Predicate;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables of assumptions and where they come from. */
final class RegisterPapers {
    /** Kinds of elements of which every input decides: how the register names them. */
    private static final List<String> WHOLE = List.of("settings", "fuel price", "exhaust fluid", "pack price", "battery pack price",
            "cost index", "low-carbon credit", "emission factors");
    /** Settings of how a bus is driven: the study's physics, not an assumption that an applicant defends. */
    private static final Set<String> DRIVING = Set.of("Acceleration", "Deceleration", "Driver hurry", "Rider mass");
    /** Kinds of elements of which prices decide. */
    private static final List<String> PRICED = List.of("engine bus type", "electric bus type", "port type", "site work",
            "service upgrade", "tariff", "programme", "bus award", "operating aid");

    private RegisterPapers() {
    }

    static List<DataTable> sources(PaperInput in) {
        return List.of(register(in, "T12a", "T12a. Main assumptions", l -> isMain(l, in.currency())), bySource(in), factors(in));
    }

    private static boolean isMain(ResultLine line, String currency) {
        if (isOf(WHOLE, line)) {
            return !DRIVING.contains(line.text("field"));
        }
        boolean amount = line.text("unit").contains(currency) || line.text("unit").equals("%") && isOf(List.of("programme"), line);
        return isOf(PRICED, line) && amount && line.number("value").orElse(0) != 0;
    }

    private static boolean isOf(List<String> kinds, ResultLine line) {
        return kinds.stream().anyMatch(line.text("element")::startsWith);
    }

    private static DataTable factors(PaperInput in) {
        String us = in.system() == UnitSystem.US ? "_us" : "";
        return new TableBuilder<ResultLine>("T12c", "T12c. Emission factors").text("Holds for", 2, l -> l.text("group"))
                .text("By", 1.4, l -> l.text("cause")).text("Pollutant", 0.8, l -> l.text("pollutant"))
                .value("Factor", 1, l -> figure(l, "value" + us)).text("Unit", 0.8, l -> l.text("unit" + us))
                .text("Quality", 0.9, l -> l.text("quality")).text("Source", 4, l -> l.text("citation"))
                .text("Date", 0.9, l -> l.text("date")).mark(AirPapers.mark(in)).of(ResultLine.of(in, "emission_factors"));
    }

    /** Every input. */
    static DataTable all(PaperInput in) {
        return register(in, "Inputs", "All inputs with their sources", l -> true);
    }

    private static List<ResultLine> lines(PaperInput in) {
        return ResultLine.all(in.facts().inputs(), "");
    }

    private static DataTable register(PaperInput in, String name, String title, Predicate<ResultLine> which) {
        return new TableBuilder<ResultLine>(name, title).text("Element", 2.2, l -> l.text("element")).text("Input", 2, l ->
                l.text("field"))
                .value("Value", 1.4, l -> figure(l, "value")).text("Unit", 0.8, l -> l.text("unit")).text("Quality", 0.9, l ->
                l.text("quality"))
                .text("Source", 3, l -> l.text("source")).text("Date", 0.9, l -> l.text("date"))
                .of(lines(in).stream().filter(which).toList());
    }

    /** A figure with as many digits as tell the input apart, and no more; else the words. */
    private static Object figure(ResultLine line, String column) {
        OptionalDouble figure = line.number(column);
        return figure.isPresent() && Double.isFinite(figure.getAsDouble()) ? InputFigure.of(figure.getAsDouble()) : line.text(column);
    }

    /** A source and the inputs that rest on it. */
    private record Source(String quality, String citation, String date, List<String> elements) {
    }

    private static DataTable bySource(PaperInput in) {
        Map<List<String>, List<String>> found = new LinkedHashMap<>();
        for (ResultLine line : lines(in)) {
            found.computeIfAbsent(List.of(line.text("quality"), line.text("source"), line.text("date")), k -> new ArrayList<>())
                    .add(line.text("element"));
        }
        List<Source> sources = found.entrySet().stream()
                .map(e -> new Source(e.getKey().get(0), e.getKey().get(1), e.getKey().get(2), e.getValue()))
                .toList();
        return new TableBuilder<Source>("T12b", "T12b. Sources and what rests on them").text("Source", 4, s -> s.citation()
                .isEmpty() ? "–" : s.citation())
                .text("Quality", 1, Source::quality).text("Date", 1, Source::date)
                .number("Inputs", "", CellFormat.WHOLE, s -> s.elements().size()).text("Such as", 2.4, s -> s.elements().get(0))
                .note("Every input of the study, the program's own defaults too; the consultant's appendix lists them one by one.")
                .of(sources);
    }
}
