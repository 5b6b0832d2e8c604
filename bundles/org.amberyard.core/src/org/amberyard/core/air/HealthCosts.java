package org.amberyard.core.air;

import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Harm to health by pollutant, as a range: figures differ widely by place. Left out where no figure is entered.
 *
 * @param costs costs by pollutant and origin
 */
public record HealthCosts(List<Cost> costs) {

    /** No figures. */
    public static final HealthCosts NONE = new HealthCosts(List.of());
    private static final double KG_PER_TONNE = 1000;

    /**
     * Harm of a tonne.
     *
     * @param pollutant pollutant
     * @param powerPlants true for what power plants emit, false for what buses do
     * @param lowPerTonne low end of the range, money of the base date
     * @param highPerTonne high end of the range
     * @param origin where the range comes from
     */
    public record Cost(Pollutant pollutant, boolean powerPlants, double lowPerTonne, double highPerTonne, FactorOrigin origin) {
    }

    public HealthCosts {
        costs = List.copyOf(costs);
    }

    /** Low end of the harm of emissions; what is upstream of the tank does not count. */
    public double low(Emissions emissions) {
        return sum(emissions, Cost::lowPerTonne);
    }

    /** High end of the harm of emissions. */
    public double high(Emissions emissions) {
        return sum(emissions, Cost::highPerTonne);
    }

    private double sum(Emissions emissions, ToDoubleFunction<Cost> perTonne) {
        Masses plants = emissions.of(EmissionSource.GRID);
        Masses buses = emissions.exhaust().plus(emissions.wear());
        return costs.stream().mapToDouble(c -> (c.powerPlants() ? plants : buses).kg(c.pollutant()) / KG_PER_TONNE
                * perTonne.applyAsDouble(c)).sum();
    }
}
