package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.amberyard.core.plan.CapLevelling;
import org.amberyard.model.meta.ElementNames;

/** What moves in a plan to keep it within its yearly cap, what that costs and what cannot be met, in sentences. */
public final class LevelWords {
    private final PlanLevel level;
    private final CapLevelling levelling;

    private LevelWords(PlanLevel level) {
        this.level = level;
        this.levelling = level.levelling();
    }

    /** Sentences for the user, the most important first. */
    public static List<String> of(PlanLevel level) {
        return new LevelWords(level).sentences();
    }

    private List<String> sentences() {
        List<String> all = new ArrayList<>();
        CapWords.broken(level.study(), level.plan(), levelling.before()).ifPresent(all::add);
        String cap = "the cap of " + money(level.plan().getYearlyCap()) + " a year";
        if (levelling.unmet().isEmpty()) {
            all.add(level.isEmpty() ? "The plan keeps " + cap + " as it is: no year is above it." : moved() + " so that no year is above " + cap + ".");
        } else {
            all.add(level.isEmpty() ? "No move of a step was found that helps to keep " + cap + "."
                    : moved() + " but no moves were found that keep " + cap + " in every year.");
        }
        levelling.shifts().forEach(s -> all.add(shift(s)));
        levelling.unmet().forEach(u -> all.add(level.year(u.year()) + " stays above the cap by " + money(u.above()) + "."));
        if (!levelling.unmet().isEmpty()) {
            all.add("No bus is kept beyond the rule of its type or its planned retirement, none is ordered before the base date, and no electric bus "
                    + "comes before the first port; what goes further is moved by hand.");
        }
        if (!level.isEmpty()) {
            all.add(presentCost());
        }
        return all;
    }

    private String moved() {
        int steps = levelling.shifts().size();
        return steps + (steps == 1 ? " step moves," : " steps move,");
    }

    private String shift(CapLevelling.Shift shift) {
        String type = level.step(shift).map(s -> " (" + ElementNames.of(s.getNewType()) + ")").orElse("");
        String lost = shift.lost().isEmpty() ? "" : "; lost: " + shift.lost().stream()
                .map(p -> ElementNames.of(level.study().getProgrammes().get(p))).collect(Collectors.joining(", "));
        return "Bus " + ElementNames.of(level.bus(shift.place())) + type + ": from " + level.year(shift.from()) + " to "
                + level.year(shift.to()) + lost + ".";
    }

    private String presentCost() {
        double change = levelling.presentCostAfter() - levelling.presentCostBefore();
        return "Present cost after financing: " + money(levelling.presentCostAfter()) + ", " + money(Math.abs(change))
                + (change > 0 ? " more" : " less") + " than before.";
    }

    private String money(double amount) {
        return String.format(Locale.ROOT, "%s %,.0f", StudyUnits.currency(level.study()), amount);
    }
}
