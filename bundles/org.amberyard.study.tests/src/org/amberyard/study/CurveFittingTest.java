package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.amberyard.core.consumption.ConsumptionCurve;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.SourceNote;
import org.amberyard.model.fleet.ConsumptionLog;
import org.amberyard.model.routes.EnergyModel;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.model.vehicles.HeatSource;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

/** Fits the invented logs of the example's demonstration bus. */
class CurveFittingTest {
    private Study study;
    private ElectricType type;

    @BeforeEach
    void load() throws Exception {
        study = ExampleStudy.load();
        type = CurveLogs.typesWithLogs(study).get(0);
    }

    private CurveFitting fitting(OptionalDouble rise) {
        return CurveLogs.of(study, type).fit(CurveFitting.settings(type, rise));
    }

    private CurveFitting fitting() {
        return fitting(OptionalDouble.empty());
    }

    private String words() {
        return String.join("\n", CurveWords.of(fitting()));
    }

    @Test
    void onlyElectricTypesWithLogsAreOffered() {
        assertEquals(List.of("Electric C 150"),
                CurveLogs.typesWithLogs(study).stream().map(ElectricType::getName).toList());
    }

    /** The logs were made from 1.31 kWh/mi, 0.55 %/K, 0.27 kW/K and 0.24 kW/K with a scatter of 2.5 %. */
    @Test
    void theCurveBehindTheLogsIsFound() {
        ConsumptionCurve curve = fitting().fit().orElseThrow().curve();
        assertEquals(1.31 / 1.609344, curve.baseKwhPerKm(), 0.03);
        assertEquals(0.0055, curve.tractionRisePerK(), 0.003);
        assertEquals(0.27, curve.heatKwPerK(), 0.08);
        assertEquals(20, curve.heatCapKw());
    }

    @Test
    void theWordsTellCurveTrustAndCautionsInTheUnitsOfTheStudy() {
        List<String> words = CurveWords.of(fitting());
        assertTrue(words.get(0).matches("Good fit: the curve is off by [\\d.]+ % on 15 logs from −4 °F to 84 °F and explains "
                + "[\\d.]+ % of the variation in energy per distance\\."), words.get(0));
        assertTrue(words.get(4).matches("Base use: 1\\.\\d+ kWh/mi, with 95 % confidence between 1\\.\\d+ kWh/mi and "
                + "1\\.\\d+ kWh/mi\\."), words.get(4));
        assertEquals("Heating limit: 20 kW, the heater's own; the logs show no limit.", words.get(8));
        assertEquals("Logs without time in service: 1. They are taken at the mean speed of the others.", words.get(2));
        assertEquals("The site's coldest day, −12 °F, is colder than any log; there the curve only carries on what it has "
                + "seen.", words.get(3));
        assertEquals("No route goes by consumption curves yet, so this one decides nothing until some do; choose it as their energy model on "
                + "the page Routes.", words.get(1));
        study.getRoutes().get(0).setEnergyModel(EnergyModel.CURVE);
        assertTrue(CurveWords.of(fitting()).contains("Routes that go by consumption curves: 1 of 18."));
    }

    /** What is on offer is what writing does, and nothing is on offer where nothing would change. */
    @Test
    void changesAreThoseOfWriting() {
        CurveFitting fitting = fitting();
        List<CurveWriter.Change> changes = CurveWriter.changes(fitting);
        assertEquals(List.of("curveBaseKwhPerKm", "curveRisePerK", "curveHeatKwPerK"),
                changes.stream().map(c -> c.field().getName()).limit(3).toList());
        assertEquals(0, changes.get(0).before());
        CurveWriter.write(fitting);
        changes.forEach(c -> assertEquals(c.after(), type.eGet(c.field())));
        assertEquals(List.of(), CurveWriter.changes(fitting()));
        study.getConsumptionLogs().clear();
        assertEquals(List.of(), CurveWriter.changes(fitting()));
    }

    @Test
    void aGivenRiseIsSaidToBeGiven() {
        assertTrue(CurveWords.of(fitting(OptionalDouble.of(0.0036))).contains("Rise in the cold: 0.2 %/°F, as given."));
    }

    @Test
    void aHeaterThatTheLogsContradictIsDoubted() {
        type.setHeaterKw(3);
        assertTrue(words().contains("the most that the logs have seen, although the heater has but 3 kW; check the heater."),
                words());
    }

    @Test
    void logsThatCannotBeUsedAreNamed() {
        study.getConsumptionLogs().get(3).setEnergyKwh(0);
        assertTrue(words().contains("Left out for want of distance, energy or temperature: no. 4."), words());
        assertEquals(14, fitting().logs().used().size());
    }

    @Test
    void refusalsSayWhatWouldHelp() {
        study.getConsumptionLogs().forEach(l -> l.setHours(0));
        assertEquals("No log tells its time in service, and heat counts per hour; enter the hours of some.", words());
        study.getConsumptionLogs().forEach(l -> l.setHours(l.getDistanceKm() / 30));
        assertTrue(words().startsWith("The logs were driven at nearly the same mean speed"), words());
        study.getConsumptionLogs().forEach(l -> l.setOutsideC(-10.0));
        assertTrue(words().startsWith("The temperatures of the logs lie too close together"), words());
        study.getConsumptionLogs().forEach(l -> l.setOutsideC(15.0));
        assertEquals("The coldest log is of 59 °F, so nothing tells what cold takes; add logs of 46.4 °F or colder.", words());
        study.getConsumptionLogs().subList(2, 15).clear();
        assertEquals("Electric C 150 has 2 usable consumption logs but a curve needs 5.", words());
        assertTrue(fitting().fit().isEmpty());
    }

    @Test
    void writingFillsTheTypeAndNotesTheSource() {
        CurveFitting fitting = fitting();
        CurveWriter.write(fitting);
        assertEquals(fitting.fit().map(f -> f.curve()), CurveCompiler.curve(type));
        SourceNote note = note("curveHeatKwPerK");
        assertEquals(Quality.MEASURED, note.getQuality());
        assertTrue(note.getCitation().startsWith("Fitted to 15 consumption logs of the study, off by "), note.getCitation());
        int notes = type.getSources().size();
        CurveWriter.write(fitting);
        assertEquals(notes, type.getSources().size());
    }

    private SourceNote note(String field) {
        return type.getSources().stream().filter(n -> field.equals(n.getField())).findFirst().orElseThrow();
    }

    @Test
    void coolingThatNoLogHasSeenStays() {
        type.setCurveCoolKwPerK(0.33);
        study.getConsumptionLogs().removeIf(l -> l.getOutsideC() != null && l.getOutsideC() > 20);
        assertTrue(words().contains("Cooling: no log is warm enough to tell, so the type's own 0.183 kW/°F stays."), words());
        CurveWriter.write(fitting());
        assertEquals(0.33, type.getCurveCoolKwPerK());
        assertTrue(type.getSources().stream().noneMatch(n -> "curveCoolKwPerK".equals(n.getField())));
    }

    @Test
    void aFuelFiredHeaterDrawsNothing() {
        type.setHeatSource(HeatSource.FUEL_FIRED);
        assertEquals(0, CurveFitting.settings(type, OptionalDouble.empty()).heaterKw());
    }

    @Test
    void logsOfOtherTypesAreNotMixedIn() {
        ConsumptionLog other = study.getConsumptionLogs().get(0);
        other.setType(study.getVehicleTypes().get(0));
        assertEquals(14, fitting().logs().entries().size());
    }
}
