package org.amberyard.core.air;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.core.why.Derivation;
import org.amberyard.core.why.InputRef;

/** How a mass comes about from what causes it and a factor, and how greenhouse gases add up. */
public final class WhyMass {
    /** Unit of masses. */
    public static final String KG = "kg";
    private static final String MODEL_FACTORS = "EmissionFactors";

    private WhyMass() {
    }

    /**
     * A mass by activity and factor.
     *
     * @param name what the mass is
     * @param rates rates of the cause
     * @param pollutant pollutant
     * @param activity amount of the cause
     */
    public static Derivation of(String name, EmissionRates rates, Pollutant pollutant, Derivation activity) {
        if (activity.value() == 0 || !rates.answersFor(pollutant)) {
            return Derivation.of(name, 0, KG, "nothing of what causes it", activity);
        }
        return rates.factor(pollutant).map(f -> of(name, factor(f, pollutant), f, activity))
                .orElseGet(() -> Derivation.of(name, Double.NaN, KG, "its factor is not known", activity));
    }

    /** The same with a factor that has a derivation of its own. */
    static Derivation of(String name, Derivation factor, Factor unit, Derivation activity) {
        // The window shows masses in pounds, distances and factors by the mile: only the kilograms follow from them so.
        String rule = activity.name() + " × " + factor.name() + (unit.unit().kg() == 1 ? "" : " ÷ 1,000") + ", in kilograms";
        return Derivation.of(name, activity.value() * factor.value() * unit.unit().kg(), KG, rule, activity, factor);
    }

    /** A factor as an input. */
    static Derivation factor(Factor factor, Pollutant pollutant) {
        return Derivation.input(pollutant.label() + " factor", factor.value(), factor.unit().symbol(), factor.origin().input());
    }

    /**
     * CO2e of three gases.
     *
     * @param name what it is of
     * @param warming warming of the gases
     * @param co2 mass of carbon dioxide
     * @param ch4 mass of methane
     * @param n2o mass of nitrous oxide
     */
    public static Derivation co2e(String name, WarmingPotentials warming, Derivation co2, Derivation ch4, Derivation n2o) {
        InputRef set = new InputRef(MODEL_FACTORS, "", "warmingSet");
        Derivation ofCh4 = Derivation.product("CO2e of methane", KG, ch4,
                Derivation.input("warming of CH4, " + warming.set(), warming.ch4(), "1", set));
        Derivation ofN2o = Derivation.product("CO2e of nitrous oxide", KG, n2o,
                Derivation.input("warming of N2O, " + warming.set(), warming.n2o(), "1", set));
        return Derivation.sum(name, KG, List.of(co2, ofCh4, ofN2o));
    }

    /**
     * A mass of power plants.
     *
     * @param grid the power plants
     * @param year year of the study
     * @param pollutant pollutant
     * @param warming warming of the gases
     * @param meter energy at the meter
     */
    public static Derivation ofGrid(GridPath grid, int year, Pollutant pollutant, WarmingPotentials warming, Derivation meter) {
        boolean byGases = pollutant == Pollutant.CO2E && !grid.rates(year).answersFor(pollutant);
        if (byGases) {
            List<Derivation> gases = Stream.of(Pollutant.CO2, Pollutant.CH4, Pollutant.N2O)
                    .map(g -> ofGrid(grid, year, g, warming, meter)).toList();
            return co2e("CO2e of power plants", warming, gases.get(0), gases.get(1), gases.get(2));
        }
        Derivation generated = Derivation.of("energy generated", grid.generatedKwh(meter.value()), "kWh",
                meter.name() + " ÷ (1 − line loss)", meter, Derivation.input("line loss", grid.lineLossShare(), "share",
                        new InputRef(MODEL_FACTORS, "", "lineLossShare")));
        String name = pollutant.label() + " of power plants";
        Optional<Factor> factor = grid.rates(year).factor(pollutant);
        return factor.isEmpty() ? of(name, grid.rates(year), pollutant, generated)
                : of(name, ofPath(grid, year, pollutant, factor.get()), factor.get(), generated);
    }

    private static Derivation ofPath(GridPath grid, int year, Pollutant pollutant, Factor factor) {
        List<Derivation> around = grid.around(year).stream().flatMap(p -> p.rates().factor(pollutant).stream())
                .map(f -> factor(f, pollutant)).toList();
        String name = pollutant.label() + " factor of the year";
        if (around.size() > 1) {
            return Derivation.of(name, factor.value(), factor.unit().symbol(), "on the straight line between the years entered",
                    around.get(0), around.get(1));
        }
        return Derivation.of(name, factor.value(), factor.unit().symbol(), "the last factor entered, by the trend of the grid since",
                around.get(0), Derivation.input("grid trend", grid.trend(), "share",
                        new InputRef(MODEL_FACTORS, "", "gridTrendPerYear")));
    }
}
