package org.amberyard.study.begin;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.OptionalDouble;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.common.BodyType;
import org.amberyard.model.study.UnitChoice;
import org.amberyard.study.NumberText;
import org.amberyard.study.TypedUnit;

/** Answers as they are typed: read in units of choice, checked one by one and against each other. */
public final class AnswerSheet {
    private static final double ROUND_TO = 100;
    private static final MathContext USUAL_DIGITS = new MathContext(3);
    /** Years after the first that a study looks ahead at first. */
    private static final int LAST_OF_HORIZON = 14;

    private final Map<Asked, Double> answers = new EnumMap<>(Asked.class);
    private final NumberText numbers;
    private UnitSystem units;

    /** A sheet with what is usual. */
    public AnswerSheet(UnitSystem units, Locale locale) {
        this.units = units;
        this.numbers = new NumberText(locale);
        for (Asked asked : Asked.values()) {
            answers.put(asked, asked.usual());
        }
    }

    /** Reads and shows in other units from now on. */
    public void use(UnitSystem chosen) {
        units = chosen;
    }

    /** The units read and shown. */
    public UnitSystem units() {
        return units;
    }

    /** The answer as shown, to the hundredth; what is usual, a round figure in one unit, to three digits in another. */
    public String text(Asked asked) {
        double answer = answers.get(asked);
        boolean converted = answer == asked.usual() && asked.unit().show(answer, UnitSystem.US) != asked.unit().show(answer, UnitSystem.METRIC);
        return converted ? text(asked, BigDecimal.valueOf(asked.unit().show(answer, units)).round(USUAL_DIGITS).doubleValue()) : shown(asked, answer);
    }

    /** The unit shown beside an answer. */
    public String symbol(Asked asked, String currency) {
        return asked.unit().symbol(units, currency);
    }

    /**
     * Reads an answer; one that is shown as it was before keeps all its digits.
     *
     * @return false when it is no number that is allowed; then the answer is as before
     */
    public boolean read(Asked asked, String typed) {
        if (typed.equals(text(asked))) {
            return isAllowed(asked, answers.get(asked));
        }
        OptionalDouble figure = numbers.parse(bare(asked, typed)).stream()
                .mapToDouble(n -> asked.unit().store(n, new TypedUnit(asked.unit(), units, "").of(typed.strip()))).findFirst();
        boolean fits = figure.isPresent() && isAllowed(asked, figure.getAsDouble());
        figure.ifPresent(f -> answers.put(asked, fits ? f : answers.get(asked)));
        return fits;
    }

    /** Without a sign of money before the number or a unit or word behind it. */
    private static String bare(Asked asked, String typed) {
        String text = asked.unit().isMoney() ? typed.replaceFirst("^\\s*(\\$|€|£|[A-Z]{3})\\s*", "") : typed;
        return text.replaceFirst("(?<=\\d)\\s*[\\p{L}°/·$€£][\\p{L}°/·$€£]*\\s*$", "");
    }

    private boolean isAllowed(Asked asked, double figure) {
        return figure >= lowest(asked) && figure <= highest(asked) && (!asked.whole() || figure == Math.rint(figure));
    }

    /** What is allowed for an answer, given the others. */
    public String lowestText(Asked asked) {
        return shown(asked, lowest(asked));
    }

    /** What is allowed for an answer, given the others. */
    public String highestText(Asked asked) {
        return shown(asked, highest(asked));
    }

    private String shown(Asked asked, double figure) {
        return text(asked, asked.unit().show(figure, units));
    }

    private String text(Asked asked, double shown) {
        double rounded = Math.rint(shown * ROUND_TO) / ROUND_TO;
        return numbers.text(rounded, asked.unit() != Unit.CALENDAR);
    }

    private double lowest(Asked asked) {
        return switch (asked) {
            case ELECTRIC_BY -> answers.get(Asked.BASE_YEAR) + 1;
            case NEWEST_YEAR -> answers.get(Asked.OLDEST_YEAR);
            case JULY_HIGH -> answers.get(Asked.JANUARY_LOW);
            case ROUTES_A, ROUTES_B, ROUTES_C, ROUTES_D -> Asked.routes().stream().filter(a -> a != asked).anyMatch(a -> answers.get(a) > 0) ? 0 : 1;
            default -> asked.lowest();
        };
    }

    private double highest(Asked asked) {
        return switch (asked) {
            case NEWEST_YEAR, OLDEST_YEAR -> answers.get(Asked.BASE_YEAR);
            case COLDEST -> answers.get(Asked.JANUARY_LOW);
            case ELECTRIC_BY -> answers.get(Asked.BASE_YEAR) + LAST_OF_HORIZON;
            default -> asked.highest();
        };
    }

    /** The answers, all of which have been read. */
    public Answers answers(String name) {
        return new Answers(name, units == UnitSystem.US ? UnitChoice.US : UnitChoice.METRIC, whole(Asked.BASE_YEAR),
                new Answers.Fleet(bodies(), whole(Asked.OLDEST_YEAR), whole(Asked.NEWEST_YEAR)),
                new Answers.RouteDay(answers.get(Asked.DAY_KM), answers.get(Asked.DAY_HOURS), whole(Asked.DAYS)),
                new Answers.Weather(answers.get(Asked.JANUARY_LOW), answers.get(Asked.JULY_HIGH), answers.get(Asked.COLDEST)),
                new Answers.Prices(answers.get(Asked.DIESEL), answers.get(Asked.ENERGY), answers.get(Asked.DEMAND)),
                whole(Asked.ELECTRIC_BY));
    }

    private List<Answers.Bodies> bodies() {
        return BodyType.VALUES.stream().map(type -> new Answers.Bodies(type, whole(at(Asked.routes(), type)), whole(at(Asked.spares(), type)),
                answers.get(at(Asked.engineBuses(), type)), answers.get(at(Asked.electricBuses(), type)))).filter(b -> b.onRoutes() + b.spares() > 0)
                .toList();
    }

    private static Asked at(List<Asked> byBody, BodyType type) {
        return byBody.get(BodyType.VALUES.indexOf(type));
    }

    /** False for the prices of a body type of which there are no buses. */
    public boolean matters(Asked asked) {
        int body = Math.max(Asked.engineBuses().indexOf(asked), Asked.electricBuses().indexOf(asked));
        return body < 0 || answers.get(Asked.routes().get(body)) + answers.get(Asked.spares().get(body)) > 0;
    }

    private int whole(Asked asked) {
        return (int) Math.rint(answers.get(asked));
    }
}
