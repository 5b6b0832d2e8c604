package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.core.units.Unit;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** Tables that show that the buses can do the work, that the yard can charge them, and what would change the answer. */
final class EvidencePapers {
    private EvidencePapers() {
    }

    static List<DataTable> routes(PaperInput in) {
        List<ResultLine> lines = ResultLine.of(in, "route_outlook");
        String distance = ResultLine.unit(lines, "margin_new");
        return List.of(new TableBuilder<ResultLine>("T16", "T16. Routes: energy and range on the worst day")
                .text("Route", 0.8, l -> l.text("route")).text("Served by", 1.3, l -> l.text("served_by"))
                .text("Electric type judged", 1.6, l -> l.text("type"))
                .optional("Left, new pack", distance, CellFormat.decimals(1), l -> l.number("margin_new"))
                .optional("Share left, new pack", "%", CellFormat.decimals(1), l -> l.number("margin_new_share"))
                .optional("Left, aged pack", distance, CellFormat.decimals(1), l -> l.number("margin_aged"))
                .optional("Share left, aged pack", "%", CellFormat.decimals(1), l -> l.number("margin_aged_share"))
                .optional("Days a year that fail, new", "d", CellFormat.WHOLE, l -> l.number("failing_days_new"))
                .optional("Days a year that fail, aged", "d", CellFormat.WHOLE, l -> l.number("failing_days_aged"))
                .text("What makes it work", 2.6, l -> l.text("best_remedy"))
                .note("Each route is driven second by second on the coldest and hottest operated day of every month, with heat, "
                        + "aged packs and the study's charging habit. What is left stands above the reserve; below zero the bus "
                        + "fails.")
                .of(lines));
    }

    static List<DataTable> charging(PaperInput in) {
        return List.of(service(in, "T17a", "T17a. Ports and load on the service by year"), policies(in));
    }

    /** Ports and load of each year beside what the service carries. */
    static DataTable service(PaperInput in, String name, String title) {
        List<ResultLine> lines = ResultLine.of(in, "service_by_year");
        return new TableBuilder<ResultLine>(name, title)
                .year("Year", l -> l.year("year")).optional("Ports", "", CellFormat.WHOLE, l -> l.number("ports"))
                .optional("Connected power", "kW", CellFormat.decimals(1), l -> l.number("connected_power"))
                .optional("Demand of charging as planned", "kW", CellFormat.decimals(1), l -> l.number("charging_demand"))
                .optional("All ports with the building", "kVA", CellFormat.decimals(1), l -> l.number("connected_load"))
                .optional("As planned with the building", "kVA", CellFormat.decimals(1), l -> l.number("planned_load"))
                .optional("Transformer", "kVA", CellFormat.decimals(1), l -> l.number("transformer"))
                .optional("Main breaker, continuous", "kVA", CellFormat.decimals(1), l -> l.number("breaker"))
                .text("All ports exceed it", 0.8, l -> l.text("connected_exceeds")).text("As planned exceeds it", 0.8, l -> l.text("planned_exceeds"))
                .note("The demand as planned counts for sizing only under a listed load-management system.").of(lines);
    }

    private static DataTable policies(PaperInput in) {
        List<ResultLine> lines = ResultLine.of(in, "policies");
        return new TableBuilder<ResultLine>("T17b", "T17b. The electric bill of the last year by way of charging")
                .text("Way of charging", 1.8, l -> l.text("policy")).text("Used by the study", 0.8, l -> l.text("in_use"))
                .optional("Energy", in.currency(), CellFormat.MONEY, l -> l.number("energy"))
                .optional("Demand", in.currency(), CellFormat.MONEY, l -> l.number("demand"))
                .optional("Fixed", in.currency(), CellFormat.MONEY, l -> l.number("fixed"))
                .optional("Bill", in.currency(), CellFormat.MONEY, l -> l.number("total"))
                .optional("Demand of charging", "kW", CellFormat.decimals(1), l -> l.number("charging_peak"))
                .optional("Above least cost", in.currency(), CellFormat.MONEY, l -> l.number("above_least_cost"))
                .note("At base-date prices. Each figure is rounded by itself, so values may not add due to rounding.").of(lines);
    }

    static List<DataTable> sensitivity(PaperInput in) {
        List<ResultLine> lines = ResultLine.of(in, "price_break_even");
        List<DataTable> tables = new ArrayList<>();
        tables.add(new TableBuilder<ResultLine>("T18", "T18. What would change the answer: prices at which the plan costs the "
                + "same")
                .text("Price", 1.4, l -> l.text("price")).text("In the study", 1.2, l -> l.text("present")).text("Answer", 4, l -> l.text("answer"))
                .note("One price at a time, all others as in the study, at present cost. " + in.moneyWords()).of(lines));
        SensitivityPapers.oneAtATime(in).ifPresent(tables::add);
        return tables;
    }

    /** Energy of the plan in a few figures, as sentences. */
    static List<String> energyWords(PaperInput in) {
        List<String> words = new ArrayList<>();
        words.add("Distance over the study: " + CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(in.shown(Unit.KILOMETRE,
                in.plan().measures().km()))) + " " + in.symbol(Unit.KILOMETRE) + ".");
        words.add("Fuel: " + CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(in.shown(Unit.LITRE, in.plan().measures().fuelL())))
                + " "
                + in.symbol(Unit.LITRE) + "; electricity at the meter: " + CellFormat.WHOLE.print(CellFormat.WHOLE.rounded(
                        in.plan().measures().meterKwh()))
                + " kWh.");
        return words;
    }
}
