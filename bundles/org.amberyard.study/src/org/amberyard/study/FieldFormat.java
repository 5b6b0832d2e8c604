package org.amberyard.study;

import java.math.BigDecimal;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.model.meta.ClockTime;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.meta.FieldWords;
import org.amberyard.model.meta.ModelWords;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage.Literals;
import org.eclipse.emf.common.util.Enumerator;
import org.eclipse.emf.ecore.EClassifier;
import org.eclipse.emf.ecore.EEnum;
import org.eclipse.emf.ecore.EEnumLiteral;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * Shows and reads the values of one field in the user's units and locale: the only place where the model's units meet
 * the user's.
 */
public final class FieldFormat {
    /** Stands between the names of several elements in one field. */
    private static final String BETWEEN_NAMES = ";";
    /** Years that are those of the study where they are 0. */
    private static final Set<EStructuralFeature> LEFT_TO_BASE_YEAR = Set.of(Literals.SETTINGS__PRICE_YEAR, Literals.SETTINGS__CALENDAR_YEAR);
    /** Digits of figures that need more than a {@code double} has, and how many more are tried. */
    private static final int FEWEST_LONG_DIGITS = 18;
    private static final int MOST_LONG_DIGITS = 60;
    private static final List<String> YES = List.of("true", "yes", "y", "x", "1");
    private static final List<String> NO = List.of("false", "no", "n", "", "0");

    private final EStructuralFeature feature;
    private final ModelWords words;
    private final FieldInfo info;
    private final Unit unit;
    private final UnitSystem system;
    private final String currency;
    private final NumberText numbers;
    private final Locale locale;

    private FieldFormat(EStructuralFeature feature, Unit unit, UnitSystem system, String currency, Locale locale, ModelWords words) {
        this.feature = feature;
        this.words = words;
        this.info = words.field(feature);
        this.unit = unit;
        this.system = system;
        this.currency = currency;
        this.numbers = new NumberText(locale);
        this.locale = locale;
    }

    /** Format of a field in a study's units, in English and with a point for the decimals wherever the program runs. */
    public static FieldFormat of(EStructuralFeature feature, Study study) {
        return of(feature, StudyUnits.of(study), StudyUnits.currency(study), Locale.ROOT);
    }

    /** Format of a field in given units and a given locale. */
    public static FieldFormat of(EStructuralFeature feature, UnitSystem system, String currency, Locale locale) {
        return new FieldFormat(feature, unit(feature), system, currency, locale, ModelWords.ENGLISH);
    }

    /** Format of a field in a study's units, the locale of the program and the words of a language. */
    public static FieldFormat of(EStructuralFeature feature, Study study, ModelWords words) {
        return new FieldFormat(feature, unit(feature), StudyUnits.of(study), StudyUnits.currency(study), Locale.getDefault(Locale.Category.FORMAT),
                words);
    }

    private static Unit unit(EStructuralFeature feature) {
        String token = FieldInfo.of(feature).unitToken();
        return Unit.ofToken(token).orElseThrow(() -> new IllegalArgumentException("Field " + feature.getName() + " has the unknown unit " + token));
    }

    /** The same of values in another unit. */
    FieldFormat in(Unit other) {
        return new FieldFormat(feature, other, system, currency, locale, words);
    }

    /** Label with unit, as a column header: {@code Distance (mi)}. */
    public String header() {
        String symbol = unit.symbol(system, currency);
        return symbol.isEmpty() ? info.label() : info.label() + " (" + symbol + ")";
    }

    /** True for fields that hold a number; clock times are not shown as numbers. */
    public boolean isNumber() {
        return holdsNumbers() && unit != Unit.CLOCK;
    }

    /** Text of a value; blank for a missing one. Of several elements their names one after the other. */
    public String text(Object value) {
        if (value == null || isMissing(value)) {
            return "";
        }
        if (value instanceof List<?> several) {
            return several.stream().map(this::text).collect(Collectors.joining(BETWEEN_NAMES + " "));
        }
        if (value instanceof Integer minutes && unit == Unit.CLOCK) {
            return ClockTime.text(minutes);
        }
        if (value instanceof Number number) {
            return numbers.text(unit.show(number.doubleValue(), system), unit != Unit.CALENDAR);
        }
        if (value instanceof Enumerator literal) {
            return words.choice((EEnum) feature.getEType(), literal);
        }
        if (value instanceof Boolean flag) {
            return words.flag(flag);
        }
        return value instanceof EObject element ? ElementNames.of(element) : value.toString();
    }

    /** Text of a value for reading: as {@link #text}, with the sign that is printed for minus; both signs are read. */
    public String shown(Object value) {
        return value instanceof Number ? text(value).replace('-', '−') : text(value);
    }

    /**
     * Text of a value for files that are read back: as {@link #text}, but of as many digits as the value needs, so that reading it gives just
     * the same value.
     */
    public String exactText(Object value) {
        String text = text(value);
        if (!(value instanceof Double number) || !Double.isFinite(number) || isMissing(number) || readsAs(text, number)) {
            return text;
        }
        // Of some stored figures no double in the unit is read as just them; more digits than a double has say them.
        Stream<String> asDouble = Stream.of(numbers.exactText(unit.show(number, system)));
        BigDecimal shown = unit.showExactly(number, system);
        Stream<String> longer = IntStream.range(FEWEST_LONG_DIGITS, MOST_LONG_DIGITS).mapToObj(d -> numbers.text(shown, d));
        return Stream.concat(asDouble, longer).filter(t -> readsAs(t, number)).findFirst().orElse(text);
    }

    private boolean readsAs(String text, double number) {
        return stored(text, system).filter(n -> n == number).isPresent();
    }

    private Optional<Double> stored(String text, UnitSystem typedIn) {
        Optional<Double> exactly = numbers.parseLong(text).map(n -> unit.storeExactly(n, typedIn));
        return exactly.isPresent() ? exactly : numbers.parse(text).map(n -> unit.store(n, typedIn));
    }

    /** The names in a text of a field that holds several elements. */
    public static List<String> names(String text) {
        return Arrays.stream(text.split(BETWEEN_NAMES)).map(String::strip).filter(n -> !n.isEmpty()).toList();
    }

    /** True for what says that nobody has measured or told a figure: nothing, or zero in a field where it says so. */
    public boolean isMissing(Object value) {
        return value == null || FieldInfo.zeroIsMissing(feature) && value instanceof Number number && number.doubleValue() == 0;
    }

    /** True for a year that is left to be the base year, which no number says. */
    public boolean isLeftToBaseYear(Object value) {
        return LEFT_TO_BASE_YEAR.contains(feature) && Integer.valueOf(0).equals(value);
    }

    /** Text of a value with its unit, for messages: {@code 18.6 mi}. */
    public String textWithUnit(Object value) {
        if (isLeftToBaseYear(value)) {
            return words.asBaseYear();
        }
        return value != null && isMissing(value) ? words.notTold() : withUnit(value, shown(value));
    }

    /** Text of a number with its unit, for limits: zero is zero here, whatever it says in the field. */
    public String limitWithUnit(Number limit) {
        return withUnit(limit, FieldInfo.zeroIsMissing(feature) && limit.doubleValue() == 0 ? "0" : shown(limit));
    }

    private String withUnit(Object value, String text) {
        String symbol = unit == Unit.CLOCK ? "" : unit.symbol(system, currency);
        return symbol.isEmpty() || value == null ? text : text + " " + symbol;
    }

    /**
     * Value of a typed text, for attributes; references are chosen, not typed. A blank is null where the model allows a
     * number to be missing, and zero where zero says that it is missing.
     *
     * @throws FieldFormatException when the text is no value of the field; ranges are left to validation
     */
    public Object parse(String typed) throws FieldFormatException {
        String text = typed == null ? "" : typed.strip();
        EClassifier type = feature.getEType();
        if (type instanceof EEnum choices) {
            return parseChoice(choices, text);
        }
        Class<?> java = type.getInstanceClass();
        if (java == boolean.class) {
            return parseFlag(text);
        }
        if (unit == Unit.CLOCK) {
            return parseClock(text);
        }
        if (text.isEmpty() && FieldWords.mayBeMissing(feature)) {
            return null;
        }
        if (text.isEmpty() && FieldInfo.zeroIsMissing(feature)) {
            return FieldWords.number(feature, 0);
        }
        if (FieldWords.isWhole(feature)) {
            return parseWhole(text);
        }
        return holdsNumbers() ? (Object) parseNumber(text) : parseText(text);
    }

    private boolean holdsNumbers() {
        Class<?> type = feature.getEType().getInstanceClass();
        return type == double.class || type == Double.class || FieldWords.isWhole(feature);
    }

    /** A text that is no date stays as it is; whether its field takes it is for validation to say. */
    private String parseText(String text) {
        return DateText.isDate(feature) ? DateText.date(text, locale).map(LocalDate::toString).orElse(text) : text;
    }

    private Enumerator parseChoice(EEnum choices, String text) throws FieldFormatException {
        for (EEnumLiteral literal : choices.getELiterals()) {
            if (literal.getLiteral().equalsIgnoreCase(text) || literal.getName().equalsIgnoreCase(text)
                    || words.choice(literal).equalsIgnoreCase(text)) {
                return literal.getInstance();
            }
        }
        throw failure(text, "one of "
                + choices.getELiterals().stream().map(words::choice).collect(Collectors.joining(", ")));
    }

    private Boolean parseFlag(String text) throws FieldFormatException {
        String lower = text.toLowerCase(Locale.ROOT);
        if (YES.contains(lower) || words.flag(true).equals(lower)) {
            return true;
        }
        if (NO.contains(lower)) {
            return false;
        }
        throw failure(text, words.flag(true) + " or " + words.flag(false));
    }

    private Integer parseClock(String text) throws FieldFormatException {
        Optional<Integer> minutes = ClockText.minutes(text);
        if (minutes.isEmpty()) {
            throw failure(text, "a clock time such as 6:35 or 2:05 pm");
        }
        return minutes.get();
    }

    private Integer parseWhole(String text) throws FieldFormatException {
        if (LEFT_TO_BASE_YEAR.contains(feature) && text.equalsIgnoreCase(words.asBaseYear())) {
            return 0;
        }
        double number = parseNumber(text);
        if (number != Math.rint(number) || Math.abs(number) > Integer.MAX_VALUE) {
            throw failure(text, "a whole number");
        }
        return (int) number;
    }

    private Double parseNumber(String text) throws FieldFormatException {
        UnitSystem typedIn = typed().of(text);
        return stored(withoutUnit(text, typedIn), typedIn)
                .orElseThrow(() -> failure(text, "a number such as " + numbers.text(1234.5, true) + unitHint()));
    }

    private String unitHint() {
        String symbol = unit.symbol(system, currency);
        return symbol.isEmpty() ? "" : " in " + symbol;
    }

    private TypedUnit typed() {
        return new TypedUnit(unit, system, currency);
    }

    private String withoutUnit(String text, UnitSystem in) {
        String bare = typed().endsWith(text, in) ? text.substring(0, text.length() - unit.symbol(in, currency).length()) : text;
        return unit.isMoney() ? bare.replace(currency, "").replace("$", "") : bare;
    }

    private FieldFormatException failure(String text, String allowed) {
        return new FieldFormatException(info.label() + " is “" + text + "”; it must be " + allowed + ".");
    }
}
