package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables of assumptions and where they come from. */
final class RegisterPapers {
    /** Kinds of elements that decide most: how the register names them. */
    private static final List<String> MAIN = List.of("settings", "fuel price", "exhaust fluid", "pack price", "battery pack price",
            "cost index");

    private RegisterPapers() {
    }

    static List<DataTable> sources(PaperInput in) {
        return List.of(register(in, "T12a", "T12a. Main assumptions", l -> MAIN.stream().anyMatch(m -> l.text("element")
                .startsWith(m))),
                bySource(in));
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
                .text("Value", 1.4, RegisterPapers::value).text("Unit", 0.8, l -> l.text("unit")).text("Quality", 0.9, l ->
                l.text("quality"))
                .text("Source", 3, l -> l.text("source")).text("Date", 0.9, l -> l.text("date"))
                .of(lines(in).stream().filter(which).toList());
    }

    /** As many digits as tell the input apart, and no more. */
    private static String value(ResultLine line) {
        return line.number("value").isPresent() ? InputFigure.text(line.number("value").getAsDouble()) : line.text("value");
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
                .filter(s -> !s.quality().equals("default")).toList();
        return new TableBuilder<Source>("T12b", "T12b. Sources and what rests on them").text("Source", 4, s -> s.citation()
                .isEmpty() ? "–" : s.citation())
                .text("Quality", 1, Source::quality).text("Date", 1, Source::date)
                .number("Inputs", "", CellFormat.WHOLE, s -> s.elements().size()).text("Such as", 2.4, s -> s.elements().get(0))
                .note("Inputs at the program's own defaults are left out here; the consultant's appendix lists every input.")
                .of(sources);
    }
}
