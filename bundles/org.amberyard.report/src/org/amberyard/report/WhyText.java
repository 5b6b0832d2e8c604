package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;
import org.amberyard.model.meta.InputPlace;
import org.amberyard.model.study.Study;
import org.amberyard.study.InputSource;
import org.amberyard.study.StudyUnits;

/** A derivation as lines: each figure with its unit, what it follows from below it, and the source of each input. */
public final class WhyText {
    private final Study study;
    private final UnitSystem system;
    private final String currency;
    private final List<Line> lines = new ArrayList<>();

    private WhyText(Study study) {
        this.study = study;
        this.system = StudyUnits.of(study);
        this.currency = StudyUnits.currency(study);
    }

    /**
     * A figure of a derivation.
     *
     * @param depth steps from the result
     * @param name what it is
     * @param value its value with its unit, in the units of the study; empty for a text
     * @param rule how it follows from the lines one deeper; empty for an input
     * @param source where an input came from; empty for what is computed
     */
    public record Line(int depth, String name, String value, String rule, String source) {

        /** For a listing. */
        public String text() {
            return "  ".repeat(depth) + name + (value.isEmpty() ? "" : " = " + value) + (rule.isEmpty() ? "" : "   [" + rule + "]")
                    + (source.isEmpty() ? "" : "   {" + source + "}");
        }
    }

    /** Lines of a derivation, the result first; to be called where the study may be read. */
    public static List<Line> of(Study study, Derivation derivation) {
        WhyText text = new WhyText(study);
        text.add(derivation, 0);
        return List.copyOf(text.lines);
    }

    /** The line of a figure by itself; to be called where the study may be read. */
    public static Line line(Study study, Derivation figure) {
        return new WhyText(study).line(figure, 0);
    }

    /**
     * What a figure follows from; for an element all its inputs. Elements that the study does not have, such as a bus that a plan
     * will buy, are left out. To be called where the study may be read.
     */
    public static List<Derivation> parts(Study study, Derivation figure) {
        return figure.input().filter(InputRef::isWholeElement).flatMap(whole -> ElementInputs.of(study, whole))
                .orElseGet(() -> figure.parts().stream().filter(p -> exists(study, p)).toList());
    }

    private static boolean exists(Study study, Derivation figure) {
        return figure.input().filter(InputRef::isWholeElement)
                .map(whole -> InputPlace.element(study, whole.kind(), whole.element()).isPresent()).orElse(true);
    }

    private Line line(Derivation figure, int depth) {
        String source =
                figure.input().filter(i -> !i.isWholeElement()).map(i -> InputSource.of(study, i).map(InputSource::words).orElse("an input")).orElse("");
        return new Line(depth, figure.name(), value(figure), figure.rule(), source);
    }

    private void add(Derivation figure, int depth) {
        lines.add(line(figure, depth));
        parts(study, figure).forEach(p -> add(p, depth + 1));
    }

    private String value(Derivation figure) {
        if (Double.isNaN(figure.value())) {
            return "";
        }
        Unit unit = Unit.ofToken(figure.unit()).orElse(Unit.NONE);
        double shown = unit.show(figure.value(), system);
        String symbol = unit == Unit.NONE ? figure.unit() : unit.symbol(system, currency);
        return (number(shown) + " " + symbol).trim();
    }

    /** Enough digits to compute with: cents of amounts, seven digits of factors. */
    private static String number(double value) {
        double size = Math.abs(value);
        String pattern = size >= 1000 || size == Math.rint(size) ? "%,.2f" : size >= 1 ? "%,.4f" : "%.7f";
        return String.format(Locale.ROOT, pattern, value);
    }
}
