package org.amberyard.core.air;

import java.util.Optional;
import org.amberyard.core.math.Checks;
import org.amberyard.core.money.CostEffectiveness;

/**
 * Terms by which a grant programme judges what it pays for: reductions are weighted and added up, and the cost is spread over a
 * project life by capital recovery ({@link CostEffectiveness}).
 *
 * @param rate discount rate of capital recovery, as a share
 * @param years project life of capital recovery
 * @param noxWeight weight of nitrogen oxides
 * @param hcWeight weight of hydrocarbons
 * @param pmWeight weight of exhaust particles
 */
public record GrantTerms(double rate, double years, double noxWeight, double hcWeight, double pmWeight) {

    /** A short ton: 2,000 avoirdupois pounds (NIST Handbook 44, appendix C). */
    public static final double KG_PER_SHORT_TON = 2000 * 0.45359237;

    /** @throws IllegalArgumentException when a weight is below zero or the life is not above it */
    public GrantTerms {
        Checks.rate("Rate of capital recovery", rate);
        Checks.positive("Project life", years);
        Checks.notNegative("Weight of NOx", noxWeight);
        Checks.notNegative("Weight of HC", hcWeight);
        Checks.notNegative("Weight of PM2.5", pmWeight);
    }

    /** Weighted mass of reductions, kg; not a number where one that has a weight is not known. */
    public double weightedKg(Masses reduced) {
        return weighted(noxWeight, reduced.kg(Pollutant.NOX)) + weighted(hcWeight, reduced.kg(Pollutant.HC))
                + weighted(pmWeight, reduced.kg(Pollutant.PM25));
    }

    /** A pollutant without weight may be unknown. */
    private static double weighted(double weight, double kg) {
        return weight == 0 ? 0 : weight * kg;
    }

    /** Cost by capital recovery per weighted short ton of a year; empty where nothing is reduced or it is not known. */
    public Optional<CostEffectiveness> recovered(double cost, Masses reducedPerYear) {
        double tons = weightedKg(reducedPerYear) / KG_PER_SHORT_TON;
        return tons > 0 ? Optional.of(new CostEffectiveness(cost, rate, years, tons)) : Optional.empty();
    }

    /** Cost over a mass, money per short ton; not a number where nothing is reduced. */
    public static double perShortTon(double cost, double kg) {
        return kg > 0 ? cost / (kg / KG_PER_SHORT_TON) : Double.NaN;
    }
}
