package org.amberyard.study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.routes.RoutesPackage;
import org.amberyard.model.routes.Run;
import org.amberyard.model.study.Study;
import org.amberyard.model.validation.Finding;
import org.amberyard.model.validation.Severity;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;

class TraceCompilerTest {
    private final DriveTrace trace = RoutesFactory.eINSTANCE.createDriveTrace();
    private Study study;
    private Run run;

    @BeforeEach
    void addTrace() throws Exception {
        study = ExampleStudy.load();
        run = study.getRoutes().get(0).getRuns().get(0);
        trace.setName("Logged");
        trace.setTimesS("0 100 1100 1200");
        trace.setSpeedsMps("0 10 10 0");
        trace.setElevationsM("200 200 300 300");
        study.getTraces().add(trace);
        run.setTrace(trace);
    }

    @Test
    void textsBecomeSpeedAndGrade() {
        SpeedTrace compiled = TraceCompiler.compile(trace);
        assertEquals(11_000, compiled.distanceM(), 1e-9);
        assertEquals(0.01 / Math.sqrt(1 - 1e-4), compiled.grade(1), 1e-12);
        assertEquals(0, compiled.grade(2));
        assertSame(compiled, TraceCompiler.compile(trace), "read once");
        trace.setSpeedsMps("0 12 12 0");
        assertEquals(13_200, TraceCompiler.compile(trace).distanceM(), 1e-9);
    }

    @Test
    void textsThatDoNotBelongTogetherAreRefused() {
        trace.setSpeedsMps("0 10 0");
        assertEquals("Drive trace Logged has 4 times, 3 speeds and 4 elevations",
                assertThrows(IllegalArgumentException.class, () -> TraceCompiler.compile(trace)).getMessage());
    }

    @Test
    void aRunFollowsItsTrace() {
        var runs = StudyCompiler.compile(study).duty().routes().get(0).runs();
        assertEquals(Optional.of(TraceCompiler.compile(trace)), runs.get(0).trace());
        assertEquals(Optional.empty(), runs.get(1).trace());
    }

    @Test
    void aRunOfAnotherLengthThanItsTraceIsPointedOut() {
        assertNotEquals(11, run.getDistanceKm(), 0.6);
        List<Finding> findings = StudyFindings.of(study).stream().filter(f -> f.element() == run).toList();
        assertEquals(List.of(new Finding(Severity.WARNING, run, RoutesPackage.Literals.RUN__TRACE,
                "Run AM of route R01: distance is 15.0 mi but drive trace “Logged” is 6.8 mi long; the trace is driven as often "
                        + "as the distance needs.")),
                findings);
        run.setDistanceKm(11.5);
        assertTrue(StudyFindings.of(study).stream().noneMatch(f -> f.element() == run));
    }

    @Test
    void aDamagedTraceIsTheRulesBusinessAlone() {
        trace.setSpeedsMps("0 10 0");
        assertEquals(List.of("Drive trace Logged: speeds in m/s: there are 3 numbers for 4 times; import the trace again or "
                + "correct it."), StudyFindings.of(study).stream().filter(f -> f.severity() == Severity.ERROR)
                        .map(Finding::message).toList());
    }
}
