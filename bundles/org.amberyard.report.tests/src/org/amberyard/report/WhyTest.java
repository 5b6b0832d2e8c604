package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.money.CostCategory;
import org.amberyard.core.plan.StudyResult;
import org.amberyard.core.progress.Progress;
import org.amberyard.core.units.UnitSystem;
import org.amberyard.core.why.Derivation;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.io.StudyFileException;
import org.amberyard.model.study.Study;
import org.amberyard.testsupport.SampleDistrict;
import org.junit.jupiter.api.Test;

/** Every cell of every table says how it comes about; cells of money down to their parts. */
class WhyTest {
    private static final StudyResult RESULT = SampleDistrict.evaluated(SampleDistrict.small());
    private static final List<String> TRACED = List.of("headline.present_cost", "headline.annual_equivalent",
            "headline.cost_per_distance", "headline.cost_per_rider_day", "headline.present_saving", "headline.greenhouse_gas", "headline.greenhouse_gas_saving",
            "headline.distance",
            "headline.fuel", "headline.electricity", "cost_by_year.amount", "cost_by_bus.amount",
            "cash_by_year.capital", "cash_by_year.energy", "cash_by_year.upkeep");
    private static final List<String> NO_FIGURE = List.of("the baseline is not compared with itself", "no figure: the riders of a route are not known");

    @Test
    void tracedCellsAreWhatTheirDerivationComesTo() {
        List<ResultTable> tables = ResultTables.of(RESULT, UnitSystem.METRIC);
        int checked = 0;
        for (int place = 0; place < tables.size(); place++) {
            ResultTable table = tables.get(place);
            for (int column = 0; column < table.columns().size(); column++) {
                if (TRACED.contains(table.name() + "." + table.columns().get(column).name())) {
                    checked += check(table, place, column);
                }
            }
        }
        assertTrue(checked > 300, checked + " cells");
    }

    private static int check(ResultTable table, int place, int column) {
        for (int row = 0; row < table.rows().size(); row++) {
            Derivation why = ResultTables.why(place, RESULT, row, column);
            if (table.rows().get(row).get(column) == null) {
                assertTrue(NO_FIGURE.contains(why.rule()), why.rule());
                continue;
            }
            double cell = ((Number) table.rows().get(row).get(column)).doubleValue();
            assertEquals(cell, why.value(), 1e-7 * Math.max(1, Math.abs(cell)), table.name() + " row " + row);
            assertTrue(cell == 0 || !why.parts().isEmpty(), why.name());
            checkParts(why);
        }
        return table.rows().size();
    }

    /** Figures follow from their parts as their rules say. */
    private static void checkParts(Derivation why) {
        List<Double> parts = why.parts().stream().map(Derivation::value).toList();
        OptionalDouble follows = switch (why.rule()) {
            case "sum" -> OptionalDouble.of(parts.stream().mapToDouble(p -> p).sum());
            case "product" -> OptionalDouble.of(parts.stream().reduce(1.0, (a, b) -> a * b));
            case "kilograms ÷ 1,000" -> OptionalDouble.of(parts.get(0) / 1000);
            case "present cost of the baseline less that of the plan", "that of the baseline less that of the plan" ->
                OptionalDouble.of(parts.get(0) - parts.get(1));
            case "rate / (1 - (1 + rate)^-years)" -> OptionalDouble.of(parts.get(0) / (1 - Math.pow(1 + parts.get(0), -parts.get(1))));
            default -> why.rule().startsWith("present cost of ") ? OptionalDouble.of(parts.get(0) / parts.get(1)) : OptionalDouble.empty();
        };
        follows.ifPresent(f -> assertEquals(f, why.value(), 1e-9 * Math.max(1, Math.abs(f)), why.name() + ": " + why.rule()));
        why.parts().forEach(WhyTest::checkParts);
    }

    /** The divisor stands by itself: it does not follow from the cost that it explains. */
    @Test
    void aCostPerDistanceIsThatOfDiscountedYears() {
        int place = ResultTables.place("headline");
        int column = ResultTables.headings(place, RESULT, UnitSystem.METRIC).columns().stream().map(ResultColumn::name).toList()
                .indexOf("cost_per_distance");
        Derivation distance = ResultTables.why(place, RESULT, 0, column).parts().get(1);
        assertEquals(RESULT.input().years(), distance.parts().size());
        double rate = RESULT.input().money().rates().real();
        double expected = 0;
        for (int year = 0; year < RESULT.input().years(); year++) {
            expected += RESULT.plans().get(0).measures().kmByYear().get(year)
                    / Math.pow(1 + rate, RESULT.input().money().time(CostCategory.UPKEEP, year));
        }
        assertEquals(expected, distance.value(), 1e-9 * expected);
    }

    @Test
    void otherCellsAreToldByTheirMeaning() {
        List<ResultTable> tables = ResultTables.of(RESULT, UnitSystem.METRIC);
        for (int place = 0; place < tables.size(); place++) {
            for (int column = 0; !tables.get(place).rows().isEmpty() && column < tables.get(place).columns().size(); column++) {
                Derivation why = ResultTables.why(place, RESULT, 0, column);
                assertFalse(why.name().isBlank());
                assertTrue(!why.rule().isBlank() || why.input().isPresent(), tables.get(place).name() + ": " + why.name());
            }
        }
    }

    /** Energy on a route in the cold hangs on its runs, the bus and the climate. */
    @Test
    void aCellWithoutADerivationNamesTheElementsThatItRestsOn() {
        int place = ResultTables.place("route_weather");
        ResultTable table = ResultTables.of(place, RESULT, UnitSystem.METRIC, Progress.NONE);
        Derivation why = ResultTables.why(place, RESULT, 0, table.columns().size() - 1);
        assertEquals(List.of("Inputs of: Route " + table.rows().get(0).get(0), "Inputs of: Vehicle type " + table.rows().get(0).get(1),
                "Inputs of: Site and climate", "Inputs of: Service calendar", "Inputs of: Settings"),
                why.parts().stream().map(Derivation::name).toList());
    }

    @Test
    void anElementLeadsToItsInputsAndTheirSources() throws StudyFileException {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        Study study = StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
        for (Behind kind : Behind.values()) {
            assertFalse(WhyText.parts(study, kind.all()).isEmpty(), kind.name());
        }
        Derivation route = Behind.ofColumn("route", "R02").orElseThrow();
        Derivation run = part(study, route, "run PM of route R02");
        Derivation distance = part(study, run, "Distance");
        assertEquals(study.getRoutes().get(1).getRuns().get(1).getDistanceKm(), distance.value());
        assertEquals("measured: Route sheets of the district's routing program, FY2026 (invented), 2025-09-15",
                WhyText.line(study, distance).source());
        assertEquals("Serves: Fennick Primary", part(study, route, "Serves: Fennick Primary").name());
        Derivation figure = Derivation.of("Figure", 1, "", "meaning", Behind.ofColumn("bus", "B99").orElseThrow());
        assertEquals(List.of(), WhyText.parts(study, figure), "a bus that only a plan has");
    }

    private static Derivation part(Study study, Derivation of, String name) {
        return WhyText.parts(study, of).stream().filter(d -> d.name().equals(name)).findFirst().orElseThrow();
    }
}
