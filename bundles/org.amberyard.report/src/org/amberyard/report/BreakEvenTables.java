package org.amberyard.report;

import static org.amberyard.report.WhatIfColumns.number;
import static org.amberyard.report.WhatIfColumns.plan;
import static org.amberyard.report.WhatIfColumns.text;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.amberyard.core.money.BreakEven;
import org.amberyard.core.variants.BreakEvenLine;
import org.amberyard.core.variants.BreakEvenSurface;
import org.amberyard.core.variants.BreakEvensAlone;
import org.amberyard.core.variants.OneAtATime;
import org.amberyard.core.variants.WhatIfResults;
import org.amberyard.core.whatif.BreakEvenCurve;
import org.amberyard.report.ResultColumn.Type;
import org.amberyard.report.ResultRows.OfPlan;

/** Tables of where plans cost as much as the baseline. Each value is found by evaluating, also where draws are read off surfaces. */
final class BreakEvenTables {
    private static final String NONE = "none";

    private final WhatIfResults results;
    private final List<String> names;
    private final List<Integer> others;

    private BreakEvenTables(WhatIfResults results) {
        this.results = results;
        this.names = results.inputs().names();
        this.others = WhyTables.others(results.base()).stream().map(OfPlan::index).toList();
    }

    /** The tables of what has been found. */
    static List<ResultTable> of(WhatIfResults results) {
        BreakEvenTables tables = new BreakEvenTables(results);
        List<ResultTable> made = new ArrayList<>();
        results.breakEvens().alone().ifPresent(run -> results.single().ifPresent(single -> made.add(tables.alone(run, single))));
        results.breakEvens().line().map(tables::line).ifPresent(made::add);
        results.breakEvens().surface().map(tables::surface).ifPresent(made::add);
        return made;
    }

    /** What would have to be true: each input by itself. */
    private ResultTable alone(BreakEvensAlone run, OneAtATime single) {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan : others) {
            for (int i = 0; i < run.inputs().size(); i++) {
                int input = run.inputs().get(i);
                BreakEven at = run.plans().get(plan).get(i);
                List<Object> heads = List.of(name(plan), names.get(input), words(input, single.spread(input).base()), looked(input, at));
                add(rows, heads, input, at);
            }
        }
        return new ResultTable("what_would_have_to_be_true", "What would have to be true", columns(List.of(plan(),
                text("input", "Input", "Uncertain input, varied by itself; all others as the study has them."),
                text("now", "In the study", "What the study has."),
                text("looked", "Looked at", "Range in which is searched: four times the spread, within what the field allows."))), rows);
    }

    private String looked(int input, BreakEven at) {
        return at.stretches().isEmpty() ? NONE : words(input, at.stretches().get(0).from()) + " to "
                + words(input, at.stretches().get(at.stretches().size() - 1).to());
    }

    /** Over a grid of two inputs. */
    private ResultTable surface(BreakEvenSurface run) {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan : others) {
            for (int cell = 0; cell < run.grid().evaluations(); cell++) {
                add(rows, List.of(name(plan), run.grid().first(cell), run.grid().second(cell)), run.searched(),
                        run.plans().get(plan).get(cell));
            }
        }
        String looked = " Looked at from " + words(run.searched(), run.low()) + " to " + words(run.searched(), run.high()) + ".";
        return new ResultTable("what_if_break_even_surface", names.get(run.searched()) + " at which plans cost the same", columns(List.of(
                plan(), number("first", names.get(run.first()), "Value of the first input." + looked),
                number("second", names.get(run.second()), "Value of the second input."))), rows);
    }

    /** A row for each change of the cheaper plan, or one that says there is none. */
    private void add(List<List<Object>> rows, List<Object> heads, int input, BreakEven at) {
        List<BreakEven.Stretch> all = at.stretches();
        if (all.size() < 2) {
            rows.add(row(heads, NONE, null, all.isEmpty() ? "" : cheaper(all.get(0)), "", all.isEmpty() ? "not allowed by the study" : NONE, null));
        }
        for (int i = 1; i < all.size(); i++) {
            BreakEven.Stretch below = all.get(i - 1);
            rows.add(row(heads, words(input, below.to()), below.to(), cheaper(below), cheaper(all.get(i)), meets(below), below.left()));
        }
    }

    private static List<Object> row(List<Object> heads, Object... cells) {
        List<Object> row = new ArrayList<>(heads);
        row.addAll(Arrays.asList(cells));
        return row;
    }

    private List<ResultColumn> columns(List<ResultColumn> heads) {
        List<ResultColumn> columns = new ArrayList<>(heads);
        columns.addAll(List.of(text("break_even", "Break-even", "Value at which the cheaper plan changes, in words; “none” where it "
                + "does not change."), number("value", "As a number", "The same; empty where there is none."),
                text("below", "Cheaper below", "What costs less below it; where there is none, throughout."),
                text("above", "Cheaper above", "What costs less above it."), meets(), left()));
        return columns;
    }

    private static ResultColumn meets() {
        return text("meets", "There", "“the same cost”: the plans cost the same; “jumps”: the difference of the costs jumps over zero, so "
                + "that they cost the same nowhere near.");
    }

    private ResultColumn left() {
        return new ResultColumn("left", "Put back", results.base().input().currency(), Type.MONEY, "Cost of the plan less that of the "
                + "baseline with this value put into the study and evaluated; far from zero where it jumps.");
    }

    /** Along one input for values of another. */
    private ResultTable line(BreakEvenLine run) {
        List<List<Object>> rows = new ArrayList<>();
        for (int plan : others) {
            for (BreakEvenCurve point : run.plans().get(plan)) {
                List<BreakEven.Stretch> all = point.at().stretches();
                for (int i = 0; i < all.size(); i++) {
                    BreakEven.Stretch stretch = all.get(i);
                    boolean last = i == all.size() - 1;
                    rows.add(Arrays.asList(name(plan), point.other(), stretch.from(), stretch.to(), cheaper(stretch),
                            last ? "end of what was looked at" : meets(stretch), stretch.left()));
                }
            }
        }
        String first = names.get(run.first());
        return new ResultTable("what_if_break_even", "Where plans cost the same", List.of(plan(),
                number("other", names.get(run.second()), "Value of the second input."),
                number("from", first + " from", "Lower end of a range of the first input."), number("to", first + " to", "Its upper end."),
                text("cheaper", "Cheaper", "What costs less in the range."), meets(), left()), rows);
    }

    private static String meets(BreakEven.Stretch below) {
        return below.jumps() ? "jumps" : "the same cost";
    }

    private static String cheaper(BreakEven.Stretch stretch) {
        return switch (stretch.cheaper()) {
            case PLAN -> "the plan";
            case OTHER -> "the baseline";
            case NEITHER -> "neither";
        };
    }

    private String words(int input, double value) {
        return results.inputs().words(input, value);
    }

    private String name(int plan) {
        return results.base().plans().get(plan).name();
    }
}
