package org.amberyard.core.plan;

import java.util.Arrays;
import java.util.stream.IntStream;
import org.amberyard.core.optimum.Choice;
import org.amberyard.core.optimum.ChoiceProblem;

/**
 * The choice of the best plan as a knapsack: each place takes one option; scarce are the money of each year under the cap, the buses
 * of the programmes, and, where a number of electric buses is to be reached, the places that stay without one. An option costs what its
 * place costs by itself, its share of a port, and its energy at a price for each year.
 */
final class PlanProblem {
    private final PlaceChoices choices;
    private final BestPlanAim aim;
    private final int years;
    private final double[] busesLeft;
    private final double electricMissing;

    /** @param left the plan in which all places are left to the rule; a number out of reach is taken for the one in reach */
    PlanProblem(StudyInput study, PlanResult left, BestPlanAim aim, PlaceChoices choices) {
        this.choices = choices;
        this.aim = aim;
        this.years = study.years();
        this.busesLeft = aim.programmes().stream().mapToDouble(p -> study.funding().programmes().get(p).budget().maxBuses()
                - left.plan().replacements().stream().filter(r -> r.programmes().contains(p)).count()).toArray();
        this.electricMissing = aim.goal()
                .map(g -> (double) Math.min(choices.mostElectricBy(g.year()),
                        g.count() - FleetYear.of(study, left.fleet()).get(g.year()).electric()))
                .orElse(Double.NEGATIVE_INFINITY);
    }

    /**
     * Electricity by the kWh that charging must bring.
     *
     * @param present present cost by year
     * @param nominal money of the year by year
     */
    record EnergyPrice(double[] present, double[] nominal) {
    }

    /** Place of a programme of the aim among what is scarce; the years come before, the number to be reached after. */
    int programme(int ofAim) {
        return years + ofAim;
    }

    /** Place of the number of electric buses to be reached. */
    int goal() {
        return years + busesLeft.length;
    }

    /**
     * The problem at some prices and with some room.
     *
     * @param portShare present cost that an electric bus bears of the ports, by the year in which it comes
     * @param room money of each year above that of the plan in which all places are left to the rule; infinite without cap
     */
    ChoiceProblem at(EnergyPrice energy, double[] portShare, double[] room) {
        double[] limits = Arrays.copyOf(room, goal() + 1);
        System.arraycopy(busesLeft, 0, limits, years, busesLeft.length);
        limits[goal()] = -electricMissing;
        return new ChoiceProblem(choices.options().stream().map(place -> place.stream()
                .map(o -> choice(o, place.get(0), energy, portShare)).toList()).toList(), limits);
    }

    private Choice choice(PlaceChoices.Option option, PlaceChoices.Option kept, EnergyPrice energy, double[] portShare) {
        double[] use = new double[goal() + 1];
        double cost = option.probed().presentCost() - kept.probed().presentCost();
        for (int year = 0; year < years; year++) {
            double kwh = option.probed().batteryKwh()[year] - kept.probed().batteryKwh()[year];
            cost += kwh * energy.present[year];
            use[year] = option.probed().appropriation()[year] - kept.probed().appropriation()[year] + kwh * energy.nominal[year];
        }
        for (int p = 0; p < busesLeft.length; p++) {
            use[programme(p)] = option.probed().paying().contains(aim.programmes().get(p)) ? 1 : 0;
        }
        use[goal()] = aim.goal().filter(g -> option.electricBy(g.year())).isPresent() ? -1 : 0;
        return new Choice(cost + (option.electric() ? portShare[option.step().orElseThrow().year()] : 0), use);
    }

    /** Room for money above that of a plan, by year. */
    static double[] room(PlanResult plan) {
        return plan.finance().budget().stream().mapToDouble(y -> y.cap().isPresent() ? y.cap().getAsDouble() - y.appropriation()
                : Double.POSITIVE_INFINITY).toArray();
    }

    /** What a bus bears of the ports at least, by the year in which it comes: the least that a port costs until then, shared. */
    static double[] portShares(double[] portCost, double busesPerPort) {
        return IntStream.range(0, portCost.length)
                .mapToDouble(year -> Arrays.stream(portCost, 0, year + 1).min().orElseThrow() / busesPerPort).toArray();
    }
}
