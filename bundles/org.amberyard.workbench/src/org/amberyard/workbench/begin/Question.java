package org.amberyard.workbench.begin;

import java.util.List;
import org.amberyard.model.common.BodyType;
import org.amberyard.study.begin.Asked;

/**
 * A line of the dialog that asks one to four numbers.
 *
 * @param label what is asked
 * @param fields the numbers with a word before each, blank where none is needed
 */
record Question(String label, List<Part> fields) {

    /**
     * A number of a question.
     *
     * @param before word before it
     * @param asked the number
     * @param tip what the word stands for; blank where it says it all
     */
    record Part(String before, Asked asked, String tip) {
    }

    /** Number of controls side by side: a word where there is one, field and unit of each number. */
    int controls() {
        return fields.stream().mapToInt(p -> p.before().isEmpty() ? 2 : 3).sum();
    }

    private static Part part(String before, Asked asked) {
        return new Part(before, asked, "");
    }

    /** A number for each body type, by its letter. */
    private static Question byBody(String label, List<Asked> asked) {
        return new Question(label, BodyType.VALUES.stream().map(t -> new Part(t.getLiteral(), asked.get(BodyType.VALUES.indexOf(t)), label(t))).toList());
    }

    private static String label(BodyType type) {
        return switch (type) {
            case A -> Messages.Begin_bodyA;
            case B -> Messages.Begin_bodyB;
            case C -> Messages.Begin_bodyC;
            case D -> Messages.Begin_bodyD;
        };
    }

    /** All of them in the order in which they are asked. */
    static List<Question> all() {
        return List.of(
                new Question(Messages.Begin_years, List.of(part(Messages.Begin_from, Asked.BASE_YEAR),
                        part(Messages.Begin_electricBy, Asked.ELECTRIC_BY))),
                byBody(Messages.Begin_onRoutes, Asked.routes()), byBody(Messages.Begin_spares, Asked.spares()),
                new Question(Messages.Begin_ages, List.of(part(Messages.Begin_oldest, Asked.OLDEST_YEAR), part(Messages.Begin_newest, Asked.NEWEST_YEAR))),
                new Question(Messages.Begin_day, List.of(part("", Asked.DAY_KM), part("", Asked.DAY_HOURS))),
                new Question(Messages.Begin_days, List.of(part("", Asked.DAYS))),
                new Question(Messages.Begin_weather, List.of(part(Messages.Begin_january, Asked.JANUARY_LOW), part(Messages.Begin_july, Asked.JULY_HIGH),
                        part(Messages.Begin_coldest, Asked.COLDEST))),
                new Question(Messages.Begin_energy, List.of(part(Messages.Begin_diesel, Asked.DIESEL), part(Messages.Begin_electricity, Asked.ENERGY),
                        part(Messages.Begin_demand, Asked.DEMAND))),
                byBody(Messages.Begin_engine, Asked.engineBuses()), byBody(Messages.Begin_electric, Asked.electricBuses()));
    }
}
