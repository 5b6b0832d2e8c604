package org.amberyard.charts;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;
import java.util.stream.Stream;
import org.amberyard.core.plan.RouteAnswer;
import org.amberyard.core.plan.RouteFit;
import org.amberyard.core.plan.StudyInput;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.UnitSystem;

/** The figures and words of the range margin chart. */
final class RangeMargins {
    private final StudyInput study;
    private final RangeWords words;
    private final List<Row> rows;

    RangeMargins(StudyResult result, int plan, UnitSystem system) {
        this.study = result.input();
        this.words = new RangeWords(result, plan, system);
        this.rows = RouteAnswer.of(result, plan).stream().map(this::row).toList();
    }

    /**
     * One route.
     *
     * @param label route and type
     * @param whenNew margin with a new pack in the unit shown, null when nothing fits
     * @param whenAged margin with an aged pack
     * @param note the answer in words
     * @param answer the answer
     */
    record Row(String label, Double whenNew, Double whenAged, String note, RouteAnswer answer) {
    }

    List<Row> rows() {
        return rows;
    }

    double least() {
        return values().min().orElse(0);
    }

    double most() {
        return values().max().orElse(0);
    }

    private DoubleStream values() {
        return rows.stream().flatMap(r -> Stream.of(r.whenNew(), r.whenAged())).filter(v -> v != null)
                .mapToDouble(Double::doubleValue);
    }

    private boolean midday() {
        return study.middayCharging();
    }

    private Row row(RouteAnswer answer) {
        if (answer.fit().isEmpty()) {
            return new Row(words.label(answer), null, null, RangeWords.NOT_JUDGED, answer);
        }
        RouteFit fit = answer.fit().get();
        double whenNew = words.shown(fit.whenNew(midday()).marginKm());
        double whenAged = words.shown(fit.whenAged(midday()).marginKm());
        return new Row(words.label(answer), whenNew, whenAged, note(whenNew, whenAged), answer);
    }

    private static String note(double whenNew, double whenAged) {
        String figures = Figures.whole(whenNew) + " new, " + Figures.whole(whenAged) + " aged";
        if (whenNew < 0) {
            return "fails: " + figures;
        }
        return whenAged < 0 ? "fails when aged: " + figures : figures;
    }

    /** A route in words, with what would help where it fails. */
    String tip(Row row) {
        String failing = words.failing(row.answer());
        return row.label() + ": " + row.note() + (failing.isEmpty() ? "" : "\n" + failing);
    }

    String caption() {
        return words.caption();
    }

    String sentences() {
        long judged = rows.stream().filter(r -> r.whenNew() != null).count();
        long passNew = rows.stream().filter(r -> r.whenNew() != null && r.whenNew() >= 0).count();
        long passAged = rows.stream().filter(r -> r.whenAged() != null && r.whenAged() >= 0).count();
        StringBuilder text = new StringBuilder("Distance left above the reserve on the worst operated day. ");
        text.append(caption().replace("\n", ". ")).append(". Of ").append(rows.size()).append(" routes, ").append(judged)
                .append(" could be judged; ").append(passNew).append(" pass with a new pack and ").append(passAged)
                .append(" with an aged one.");
        rows.forEach(r -> text.append(' ').append(tip(r).replace("\n", ". ")).append('.'));
        return text.append(" Distances in ").append(words.unit()).append('.').toString();
    }

    ChartData data() {
        List<List<Object>> cells = new ArrayList<>();
        for (Row row : rows) {
            List<Object> line = new ArrayList<>();
            line.add(words.route(row.answer()));
            line.add(row.answer().fit().map(f -> study.types().get(f.type()).name()).orElse(null));
            line.add(row.answer().electric() ? "yes" : "no");
            line.add(row.whenNew());
            line.add(row.whenAged());
            cells.add(line);
        }
        String unit = " (" + words.unit() + ")";
        return new ChartData(List.of("Route", "Electric type", "Electric in the plan", "Margin with a new pack" + unit,
                "Margin with an aged pack" + unit), cells);
    }
}
