package org.amberyard.report.papers;

import java.util.List;
import org.amberyard.core.duty.RouteInput;
import org.amberyard.report.document.Block;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.Document;
import org.amberyard.report.document.Section;
import org.amberyard.report.document.TableBuilder;

/** The list of routes for dispatch: which bus serves each in the plan, and which electric types could, with the reason. */
final class RouteListPaper {
    private static final String TITLE = "Route suitability list";
    private static final String WORDS = "Worst operated day: the coldest or hottest day on which the route runs. Days: operated days of a year "
            + "on which the bus would come below its reserve; aged: with a pack at the end of its service.";

    private final PaperInput in;

    private RouteListPaper(PaperInput in) {
        this.in = in;
    }

    static Document of(PaperInput in) {
        RouteListPaper paper = new RouteListPaper(in);
        return new Document("route-suitability", TITLE, in.study().name(), in.factsInShort(), in.running(TITLE), "", List.of(
                new Section("Routes in the plan", true, false, List.of(new Block.Paragraph(WORDS), Block.Condensed.close(paper.inPlan()))),
                new Section("Every electric type on every route", true, true, List.of(Block.Condensed.close(paper.options()))))).close();
    }

    private DataTable inPlan() {
        return days(new TableBuilder<ResultLine>("Routes", "Table 1. Routes in “" + in.plan().name() + "”").text("Route", 0.9, l -> l.text("route"))
                .text("Served at the end by", 1, l -> l.text("served_by")).text("Electric type", 1.5, l -> l.text("type"))
                .text("Verdict", 1.6, RouteListPaper::verdict).text("Why", 5, l -> l.text("why")))
                .note("Electric type: the one that serves the route, else the one that fits best.").of(ResultLine.of(in, "route_outlook"));
    }

    private DataTable options() {
        return days(new TableBuilder<ResultLine>("Options", "Table 2. Routes and electric types").text("Route", 0.9, l -> l.text("route"))
                .text("Electric type", 1.5, l -> l.text("type")).text("Verdict", 1.6, RouteListPaper::verdict).text("Why", 5, l -> l.text("why")))
                .note(unserved()).of(ResultLine.of(in, "route_fit"));
    }

    private static TableBuilder<ResultLine> days(TableBuilder<ResultLine> table) {
        return table.optional("Days, new pack", "", CellFormat.WHOLE, l -> l.number("failing_days_new"))
                .optional("Days, aged pack", "", CellFormat.WHOLE, l -> l.number("failing_days_aged"));
    }

    private static String verdict(ResultLine line) {
        String verdict = line.text("verdict");
        return verdict.isEmpty() ? "no electric bus listed for it" : verdict;
    }

    /** Routes that no electric type has the body for. */
    private String unserved() {
        List<String> asked = ResultLine.of(in, "route_fit").stream().map(l -> l.text("route")).toList();
        List<String> names = in.study().duty().routes().stream().map(RouteInput::name).filter(n -> !asked.contains(n)).toList();
        return names.isEmpty() ? "All routes have an electric type of their body." : "No electric type of the body they ask for is listed for "
                + String.join(", ", names) + ".";
    }
}
