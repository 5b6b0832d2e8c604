package org.amberyard.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;

import java.nio.file.Path;
import java.util.OptionalDouble;
import org.amberyard.model.io.StudyFile;
import org.amberyard.model.study.Study;
import org.amberyard.model.vehicles.ElectricType;
import org.amberyard.study.CurveFitting;
import org.amberyard.study.CurveLogs;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class ResidualTableTest {
    private Study study;

    @BeforeEach
    void load() throws Exception {
        Path bundle = Path.of(System.getProperty("basedir", "."));
        study = StudyFile.load(bundle.resolve("../../examples/ostrick-vale/ostrick-vale.amberyard").normalize());
    }

    private ResultTable table() {
        ElectricType type = CurveLogs.typesWithLogs(study).get(0);
        return ResidualTable.of(CurveLogs.of(study, type).fit(CurveFitting.settings(type, OptionalDouble.empty())));
    }

    @Test
    void everyLogStandsBesideTheCurveInTheUnitsOfTheStudy() {
        ResultTable table = table();
        assertEquals(15, table.rows().size());
        assertEquals("no. 1", table.cell(0, "log"));
        assertEquals(66, (double) table.cell(0, "outside"), 1e-9);
        assertEquals(309, (double) table.cell(0, "distance"), 1e-9);
        assertEquals(386.0, table.cell(0, "measured"));
        assertEquals((double) table.cell(0, "measured") - (double) table.cell(0, "fitted"),
                (double) table.cell(0, "residual"), 1e-9);
        assertEquals(100 * (double) table.cell(0, "residual") / 386, (double) table.cell(0, "share"), 1e-9);
        assertNull(table.cell(3, "hours"), "the log does not tell");
    }

    @Test
    void aRefusedFitHasNoRows() {
        study.getConsumptionLogs().forEach(l -> l.setHours(0));
        assertEquals(0, table().rows().size());
        assertEquals(11, table().columns().size());
    }
}
