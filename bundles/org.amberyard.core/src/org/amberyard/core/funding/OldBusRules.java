package org.amberyard.core.funding;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/**
 * What a programme asks of the papers of an old bus. Where a programme asks and nobody has told, it does not pay: an agency wants
 * evidence, and a guess is none.
 *
 * @param leastGvwrKg least gross vehicle weight rating, kg; empty for any
 * @param leastDaysPerWeek least days a week in service; empty for any
 * @param ownedOnly the old bus is owned by the district
 */
public record OldBusRules(OptionalDouble leastGvwrKg, OptionalDouble leastDaysPerWeek, boolean ownedOnly) {

    /** Asks nothing. */
    public static final OldBusRules NONE = new OldBusRules(OptionalDouble.empty(), OptionalDouble.empty(), false);

    private static final String GVWR = "leastGvwrKg";
    private static final String DAYS = "leastDaysPerWeek";
    private static final String OWNED = "ownedOnly";
    /** Ratings are typed in whole pounds and stored in kilograms: half a gram is no difference. */
    private static final double SAME = 5e-4;
    /** Enough to tell masses apart that are not the same. */
    private static final int MOST_DECIMALS = 3;

    /** Fields that ask for something, in the order in which they are checked. */
    List<String> asked() {
        return Stream.of(leastGvwrKg.isPresent() ? GVWR : "", leastDaysPerWeek.isPresent() ? DAYS : "", ownedOnly ? OWNED : "")
                .filter(f -> !f.isEmpty()).toList();
    }

    /** What it asks for, as clauses for lists of rules. */
    public List<String> words() {
        List<String> words = new ArrayList<>();
        leastGvwrKg.ifPresent(kg -> words.add("GVWR of the old bus at least " + mass(kg)));
        leastDaysPerWeek.ifPresent(days -> words.add("old bus in service at least " + figure(days) + " days a week"));
        if (ownedOnly) {
            words.add("old bus owned by the district");
        }
        return words;
    }

    /** What an old bus fails, or does not tell; empty when it fulfils all. */
    List<Refusal> failedBy(OldBus old) {
        List<Refusal> failed = new ArrayList<>();
        if (leastGvwrKg.isPresent()) {
            gvwr(old, leastGvwrKg.getAsDouble(), failed);
        }
        if (leastDaysPerWeek.isPresent()) {
            days(old, leastDaysPerWeek.getAsDouble(), failed);
        }
        if (ownedOnly) {
            owner(old, failed);
        }
        return failed;
    }

    private static void gvwr(OldBus old, double least, List<Refusal> failed) {
        OptionalDouble told = old.papers().gvwrKg();
        if (told.isEmpty()) {
            failed.add(Refusal.notTold(GVWR, "the weight rating (GVWR) of old bus " + old.unit() + " is not told; the programme asks for at least "
                    + mass(least)));
        } else if (told.getAsDouble() < least - SAME) {
            failed.add(new Refusal(Limit.CONDITION, GVWR, "the weight rating (GVWR) of old bus " + old.unit() + " is "
                    + mass(told.getAsDouble(), least) + ", less than " + mass(least, told.getAsDouble())));
        }
    }

    private static void days(OldBus old, double least, List<Refusal> failed) {
        OptionalDouble told = old.papers().daysPerWeek();
        if (told.isEmpty()) {
            failed.add(Refusal.notTold(DAYS, "the days a week in service of old bus " + old.unit() + " are not told; the programme asks for at least "
                    + figure(least)));
        } else if (told.getAsDouble() < least) {
            failed.add(new Refusal(Limit.CONDITION, DAYS, "old bus " + old.unit() + " is in service " + figure(told.getAsDouble())
                    + " days a week, less than " + figure(least)));
        }
    }

    private static void owner(OldBus old, List<Refusal> failed) {
        old.papers().owner().ifPresentOrElse(owner -> {
            if (owner != Owner.DISTRICT) {
                failed.add(new Refusal(Limit.CONDITION, OWNED, "old bus " + old.unit() + " is " + owner.label() + ", not owned"));
            }
        }, () -> failed.add(Refusal.notTold(OWNED, "who owns old bus " + old.unit() + " is not told; the programme asks for an owned one")));
    }

    /** In both systems, since a rule is quoted to agencies and shop alike. */
    private static String mass(double kg) {
        return mass(kg, Double.POSITIVE_INFINITY);
    }

    /** A mass beside another, which must not read as the same. */
    private static String mass(double kg, double otherKg) {
        return apart(Unit.KILOGRAM.show(kg, UnitSystem.US), Unit.KILOGRAM.show(otherKg, UnitSystem.US)) + " lb (" + apart(kg, otherKg) + " kg)";
    }

    /** A figure with the fewest decimals with which it does not read as another. */
    private static String apart(double figure, double other) {
        return IntStream.range(0, MOST_DECIMALS).filter(d -> !print(figure, d).equals(print(other, d))).mapToObj(d -> print(figure, d)).findFirst()
                .orElse(print(figure, MOST_DECIMALS));
    }

    private static String print(double figure, int decimals) {
        return String.format(Locale.ROOT, "%,." + decimals + "f", figure);
    }

    private static String figure(double days) {
        return days == Math.rint(days) ? String.valueOf((int) days) : String.valueOf(days);
    }
}
