package org.amberyard.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.amberyard.core.air.AirFactors;
import org.amberyard.core.air.EmissionRates;
import org.amberyard.core.air.Factor;
import org.amberyard.core.air.GridPath;
import org.amberyard.core.air.Pollutant;
import org.amberyard.core.plan.FactorUse;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.units.Unit;
import org.amberyard.core.units.UnitSystem;

/** The table of all emission factors of a study with where each comes from. */
final class FactorTable {
    private FactorTable() {
    }

    /**
     * A factor.
     *
     * @param group what it holds for
     * @param cause what it goes by
     * @param pollutant pollutant
     * @param factor the factor; empty where it is not known
     * @param used true when it took part in the emissions of a plan
     */
    record Line(String group, String cause, Pollutant pollutant, Optional<Factor> factor, boolean used) {
        static List<Line> all(StudyResult result) {
            List<Line> lines = new ArrayList<>();
            AirFactors air = result.input().air().factors();
            FactorUse use = FactorUse.of(result);
            air.fuels().entrySet().stream().sorted(Map.Entry.comparingByKey()).forEach(fuel -> {
                String name = "fuel " + fuel.getKey().word();
                add(lines, name, "fuel burnt", fuel.getValue().burnt(), use.fuel(fuel.getKey()));
                add(lines, name, "fuel, well to tank", fuel.getValue().upstream(), air.upstream() && use.fuel(fuel.getKey()));
            });
            air.engines().forEach(e -> {
                add(lines, "engines " + e.name(), "distance", e.perKm(), use.engine(e));
                add(lines, "engines " + e.name(), "yard idling", e.perIdleHour(), use.engine(e));
            });
            add(lines, "other engines", "distance", air.otherEngines().perKm(), use.engine(air.otherEngines()));
            add(lines, "fuel-fired heaters", "fuel burnt", air.heaterPerL(), use.heaters());
            air.wear().forEach(w -> {
                add(lines, "brakes, " + w.name(), "distance without recovery", w.brakes(), use.wear(w));
                add(lines, "tyres, " + w.name(), "distance", w.tyres(), use.wear(w));
            });
            addGrid(lines, air.grid(), result.input().baseYear(), use.grid());
            air.otherGrid().ifPresent(g -> addGrid(lines, g, result.input().baseYear(), false));
            return lines;
        }

        private static void addGrid(List<Line> lines, GridPath grid, int baseYear, boolean used) {
            String name = grid.region().isEmpty() ? "power plants" : "power plants, " + grid.region();
            grid.points().forEach(p -> add(lines, name + ", " + grid.basis().label() + " " + (baseYear + p.year()),
                    "energy generated", p.rates(), used));
        }

        private static void add(List<Line> lines, String group, String cause, EmissionRates rates, boolean used) {
            for (Pollutant pollutant : Pollutant.values()) {
                if (rates.answersFor(pollutant)) {
                    lines.add(new Line(group, cause, pollutant, rates.factor(pollutant), used));
                }
            }
        }

        private Double shown(UnitSystem system) {
            return factor.map(f -> unit(f).show(f.value(), system)).orElse(Double.NaN);
        }

        private String symbol(UnitSystem system) {
            return factor.map(f -> unit(f).symbol(system, "")).orElse("");
        }

        private static Unit unit(Factor factor) {
            return Unit.ofToken(factor.unit().symbol()).orElseThrow();
        }

        private String quality() {
            return factor.map(f -> f.origin().quality().label()).orElse("not known");
        }

        private boolean placeholder() {
            return factor.filter(Factor::placeholder).isPresent();
        }
    }

    static TableDefinition<Line> factors() {
        return new TableDefinition<>("emission_factors", "Emission factors and their sources", Line::all)
                .notForSubmissionWhen(r -> Line.all(r).stream().anyMatch(Line::placeholder))
                .text("group", "Holds for", "Fuel, engines, dust, heaters or power plants that the factor holds for.", Line::group)
                .text("cause", "By", "What the emission goes by.", Line::cause)
                .text("pollutant", "Pollutant", "Pollutant.", r -> r.pollutant().label()).heads()
                .number("value", "Factor, metric", ColumnUnit.OF_LINE, "The factor in metric units; no figure where it is not known.",
                        r -> r.shown(UnitSystem.METRIC))
                .text("unit", "Metric unit", "Unit of the factor.", r -> r.symbol(UnitSystem.METRIC))
                .number("value_us", "Factor, US customary", ColumnUnit.OF_LINE, "The same in US customary units.",
                        r -> r.shown(UnitSystem.US))
                .text("unit_us", "US unit", "Unit of the factor in US customary units.", r -> r.symbol(UnitSystem.US))
                .text("used", "Took part", "Whether it took part in the emissions of a plan: yes or no.", r -> r.used() ? "yes" : "no")
                .text("region", "Region", "Where the factor holds, if that was said.", r -> of(r, f -> f.origin().region()))
                .text("quality", "Quality", "Measured, quoted, published, assumed, default, placeholder, no source given, or not known.",
                        Line::quality)
                .text("placeholder", "Placeholder", "Whether figures that rest on it are not for submission: yes or no.",
                        r -> r.placeholder() ? "yes" : "no")
                .text("citation", "Source", "Document and table.", r -> of(r, f -> f.origin().citation()))
                .text("date", "Date", "Date of the document.", r -> of(r, f -> f.origin().date()));
    }

    private static String of(Line line, Function<Factor, String> text) {
        return line.factor().map(text).orElse("");
    }
}
