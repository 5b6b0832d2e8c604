package org.amberyard.study;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.amberyard.core.plan.BestPlan;
import org.amberyard.core.plan.PlanInput;
import org.amberyard.model.meta.ElementNames;

/** The cheapest plan found, how far it may be from the cheapest there is, and what binds it, in sentences. */
public final class BestWords {
    private final PlanBest found;
    private final BestPlan best;

    private BestWords(PlanBest found) {
        this.found = found;
        this.best = found.best();
    }

    /** Sentences for the user, the most important first. */
    public static List<String> of(PlanBest found) {
        return new BestWords(found).sentences();
    }

    private List<String> sentences() {
        List<String> all = new ArrayList<>(List.of(cost()));
        CapWords.broken(found.study(), found.plan(), best.unmetBefore()).ifPresent(all::add);
        all.add(bound());
        if (best.electricShort() > 0) {
            all.add("The number of electric buses to be reached is missed by " + best.electricShort()
                    + ": of the buses decided on, too few have a type that does their route to the end of its pack by then, or the cap "
                    + "leaves no room.");
        }
        best.unmet().forEach(u -> all.add(found.year(u.year()) + " stays above the cap by " + money(u.above()) + "."));
        best.scarce().forEach(s -> all.add(scarce(s)));
        best.steps().forEach(s -> all.add(step(s)));
        best.ports().stream().filter(p -> p.year() >= found.aim().firstYear()).forEach(p -> all.add(ports(p)));
        String left = leftAsTheyAre();
        if (!left.isEmpty()) {
            all.add("Left as the plan has them: " + left + ".");
        }
        return all;
    }

    private String cost() {
        double change = best.presentCost() - best.presentCostBefore();
        return "Present cost after financing: " + money(best.presentCost()) + ", " + money(Math.abs(change))
                + (change > 0 ? " more" : " less") + " than the plan as it is.";
    }

    private String bound() {
        if (best.bound().isEmpty()) {
            return "How far the cheapest plan may lie below cannot be told: "
                    + best.noBound().stream().map(BestWords::words).collect(Collectors.joining("; ")) + ".";
        }
        return "No plan with the works, other steps and programmes of this one that replaces each bus once, by a new one, no later than its rule or this "
                + "plan does, costs less than "
                + money(best.bound().getAsDouble()) + (best.gapShare().isPresent() ? ": the plan found is at most "
                        + String.format(Locale.ROOT, "%.1f %%", 100 * best.gapShare().getAsDouble()) + " above the cheapest of them." : ".")
                + (best.boundWithoutCap()
                        ? " The bound leaves out demand and fixed charges of the electric bill, and the cap, since awards, debts or shared "
                                + "ports and bills move money between years."
                        : " The bound leaves out demand and fixed charges of the electric bill.");
    }

    private static String words(BestPlan.NoBound reason) {
        return switch (reason) {
            case TAXED -> "income tax is paid on sums of all buses";
            case OPERATING_AID -> "operating aid is paid on sums of all buses";
            case ENERGY_CREDITS -> "credits are earned on the energy charged";
            case NOTHING_WITHIN -> "no plan was found that keeps the cap, the programmes and the number to be reached";
            case SHARED_PROGRAMMES -> "steps that stay take part in the same programmes, or more than four programmes are asked";
            case TARIFF -> "the tariff has a minimum bill, prices below zero or prices by demand";
        };
    }

    private String scarce(BestPlan.Scarce scarce) {
        String worth = String.format(Locale.ROOT, "%,.2f", scarce.worth());
        return switch (scarce.kind()) {
            case CAP -> "The cap binds in " + found.year(scarce.of().getAsInt()) + ": one " + currency()
                    + " more in that year would save about " + currency() + " " + worth + " of present cost.";
            case PROGRAMME -> ElementNames.of(found.programme(scarce.of().getAsInt()))
                    + " is used up: one bus more would save about " + money(scarce.worth()) + ".";
            case GOAL -> "The number of electric buses binds: one less would save about " + money(scarce.worth()) + ".";
        };
    }

    private String step(PlanInput.Replacement step) {
        return found.year(step.year()) + ": " + ElementNames.of(found.study().getVehicleTypes().get(step.newType().getAsInt()))
                + " for bus " + ElementNames.of(found.bus(step.place())) + payers(step.programmes()) + ".";
    }

    private String ports(PlanInput.PortPurchase ports) {
        return found.year(ports.year()) + ": " + ports.count() + " × "
                + ElementNames.of(found.study().getDepot().getPortTypes().get(ports.port())) + payers(ports.programmes()) + ".";
    }

    private String payers(List<Integer> programmes) {
        return programmes.isEmpty() ? "" : ", " + programmes.stream().map(p -> ElementNames.of(found.programme(p)))
                .collect(Collectors.joining(", "));
    }

    /** Buses with steps that are not decided on. */
    private String leftAsTheyAre() {
        return found.plan().getReplacements().stream().map(r -> found.study().getBuses().indexOf(r.getBus()))
                .filter(place -> place >= 0 && !best.decided().contains(place)).distinct().sorted()
                .map(place -> ElementNames.of(found.bus(place))).collect(Collectors.joining(", "));
    }

    private String money(double amount) {
        return String.format(Locale.ROOT, "%s %,.0f", currency(), amount);
    }

    private String currency() {
        return StudyUnits.currency(found.study());
    }
}
