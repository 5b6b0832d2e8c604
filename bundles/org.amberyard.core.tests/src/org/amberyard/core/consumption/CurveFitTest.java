package org.amberyard.core.consumption;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.amberyard.core.consumption.FitRefusal.Cause;
import org.amberyard.core.consumption.TermEstimate.Standing;
import org.junit.jupiter.api.Test;

class CurveFitTest {
    private static final ConsumptionCurve CURVE = new ConsumptionCurve(0.8, 18, 0.005, 0.4, 25, 22, 0.5, 6);

    /** Least squares of the same fourteen days by NumPy and SciPy (nnls, t distribution), intervals by hand from them. */
    @Test
    void scatteredLogsFitAsByAnotherProgram() {
        CurveFit fit = fit(SampleLogs.scattered(), SampleLogs.settings());
        assertTerm(fit, CurveTerm.BASE, 0.7599519107835254, 0.02788509);
        assertTerm(fit, CurveTerm.COLD_RISE, 0.006174838561465876, 0.004874722862272119);
        assertTerm(fit, CurveTerm.HEATING, 0.39767899844809196, 0.09551331);
        assertTerm(fit, CurveTerm.COOLING, 0.48143819835637314, 0.30261497);
        assertEquals(0.020460963208568786, fit.rmsShare(), 1e-9);
        assertEquals(0.9895292570294352, fit.rSquared().getAsDouble(), 1e-9);
        assertEquals(-5.34845308, fit.residuals().get(7).kwh(), 1e-7);
        assertEquals(-5.34845308 / 168, fit.residuals().get(7).share(), 1e-9);
        assertEquals(-16, fit.coldestC());
        assertEquals(27, fit.warmestC());
    }

    /** The unconstrained solution has a negative rise; values by SciPy's nnls. */
    @Test
    void termThatWouldBeNegativeIsZeroWithoutInterval() {
        CurveFit fit = fit(SampleLogs.withoutRise(), SampleLogs.settings());
        assertEquals(new TermEstimate(CurveTerm.COLD_RISE, 0, Standing.AT_ZERO, Optional.empty()),
                fit.term(CurveTerm.COLD_RISE));
        assertTerm(fit, CurveTerm.BASE, 0.7895327023830728, 0.0496614);
        assertTerm(fit, CurveTerm.HEATING, 0.42064239633284034, 0.06607436);
        assertTerm(fit, CurveTerm.COOLING, 0.5662372871287297, 0.50203729);
        assertEquals(0.039834750800953056, fit.rmsShare(), 1e-9);
    }

    @Test
    void heaterAtItsLimitIsFoundInTheLogs() {
        ConsumptionCurve limited = new ConsumptionCurve(0.8, 18, 0.005, 0.4, 9.2, 22, 0.5, 6);
        CurveFit fit = fit(SampleLogs.of(limited), SampleLogs.settings());
        assertTrue(fit.heatLimitSeen());
        assertEquals(9.2, fit.curve().heatCapKw(), 1e-5);
        assertEquals(0.4, fit.curve().heatKwPerK(), 1e-6);
        assertEquals(0.005, fit.curve().tractionRisePerK(), 1e-7);
    }

    @Test
    void limitThatTheLogsDoNotShowIsTheHeaters() {
        FitSettings strong = new FitSettings(18, 22, 25, 6, OptionalDouble.empty());
        CurveFit fit = fit(SampleLogs.of(CURVE), strong);
        assertFalse(fit.heatLimitSeen());
        assertEquals(25, fit.curve().heatCapKw());
    }

    @Test
    void heaterWeakerThanTheLogsHaveSeenIsNotBelieved() {
        FitSettings weak = new FitSettings(18, 22, 3, 1, OptionalDouble.empty());
        CurveFit fit = fit(SampleLogs.of(CURVE), weak);
        assertEquals(0.4 * (18 + 24), fit.curve().heatCapKw(), 1e-6);
        assertEquals(0.5 * (31 - 22), fit.curve().coolCapKw(), 1e-6);
    }

    @Test
    void coolingIsNotSeenWithoutHotDays() {
        CurveFit fit = fit(SampleLogs.of(CURVE).stream().filter(e -> e.outsideC() < 22).toList(), SampleLogs.settings());
        assertEquals(Standing.NOT_SEEN, fit.term(CurveTerm.COOLING).standing());
        assertEquals(0, fit.curve().coolKwPerK());
    }

    @Test
    void entryWithoutHoursIsTakenAtTheUsualSpeed() {
        List<LogEntry> logs = new ArrayList<>(SampleLogs.of(CURVE));
        double km = logs.stream().mapToDouble(LogEntry::km).sum();
        double hours = logs.stream().mapToDouble(LogEntry::hours).sum();
        logs.add(new LogEntry(50, 0, CURVE.totalKwh(50, 50 * hours / km, -10), -10));
        CurveFit fit = fit(logs, SampleLogs.settings());
        assertEquals(1, fit.withoutHours());
        assertEquals(0, fit.residuals().get(logs.size() - 1).kwh(), 1e-9);
    }

    @Test
    void knownRiseLetsLogsOfOneSpeedBeFitted() {
        List<LogEntry> oneSpeed = oneSpeed();
        FitRefusal refusal = refusal(oneSpeed, SampleLogs.settings());
        assertEquals(Cause.SPEEDS_ALIKE, refusal.cause());
        assertTrue(refusal.found() > refusal.needed(), refusal.toString());
        CurveFit fit = fit(oneSpeed, new FitSettings(18, 22, 14, 6, OptionalDouble.of(0.005)));
        assertEquals(new TermEstimate(CurveTerm.COLD_RISE, 0.005, Standing.GIVEN, Optional.empty()),
                fit.term(CurveTerm.COLD_RISE));
        assertEquals(0.4, fit.curve().heatKwPerK(), 1e-9);
    }

    private static List<LogEntry> oneSpeed() {
        return SampleLogs.of(CURVE).stream().map(e -> SampleLogs.entry(CURVE, e.km(), 30, e.outsideC())).toList();
    }

    @Test
    void tooFewEntriesAreRefused() {
        assertEquals(new FitRefusal(Cause.TOO_FEW_ENTRIES, 4, 6),
                refusal(List.of(SampleLogs.of(CURVE).get(0), SampleLogs.of(CURVE).get(4), SampleLogs.of(CURVE).get(5),
                        SampleLogs.of(CURVE).get(6)), SampleLogs.settings()));
        assertEquals(new FitRefusal(Cause.TOO_FEW_ENTRIES, 0, 5), refusal(List.of(), SampleLogs.settings()));
    }

    @Test
    void logsWithoutColdAreRefused() {
        List<LogEntry> warm = SampleLogs.of(CURVE).stream().map(e -> SampleLogs.entry(CURVE, e.km(), 30,
                Math.max(9, e.outsideC()))).toList();
        assertEquals(new FitRefusal(Cause.NOTHING_COLD, 9, 8), refusal(warm, SampleLogs.settings()));
    }

    @Test
    void logsWithoutHoursAreRefused() {
        List<LogEntry> logs = SampleLogs.of(CURVE).stream()
                .map(e -> new LogEntry(e.km(), 0, e.energyKwh(), e.outsideC())).toList();
        assertEquals(new FitRefusal(Cause.HOURS_UNKNOWN, 0, 1), refusal(logs, SampleLogs.settings()));
    }

    @Test
    void logsOfOneTemperatureAreRefused() {
        List<LogEntry> logs = SampleLogs.of(CURVE).stream().map(e -> SampleLogs.entry(CURVE, e.km(),
                e.km() / e.hours(), -5)).toList();
        assertEquals(Cause.TEMPERATURES_ALIKE, refusal(logs, SampleLogs.settings()).cause());
    }

    @Test
    void logsInWhichOnlyHeatTakesEnergyAreRefused() {
        List<LogEntry> logs = SampleLogs.scattered().stream().filter(e -> e.outsideC() < 22)
                .map(e -> new LogEntry(e.km(), e.hours(), Math.max(1e-3, e.hours() * (18 - e.outsideC()) - 40), e.outsideC()))
                .toList();
        assertEquals(Cause.NO_BASE, refusal(logs, SampleLogs.settings()).cause());
    }

    @Test
    void consumptionThatNeverVariesHasNoShareExplained() {
        List<LogEntry> logs = SampleLogs.of(CURVE).stream().map(e -> new LogEntry(64, e.hours(), 64, e.outsideC())).toList();
        assertTrue(fit(logs, SampleLogs.settings()).rSquared().isEmpty());
    }

    private static void assertTerm(CurveFit fit, CurveTerm term, double value, double reach) {
        TermEstimate estimate = fit.term(term);
        assertEquals(Standing.FITTED, estimate.standing());
        assertEquals(value, estimate.value(), 1e-9);
        assertEquals(value - reach, estimate.interval95().orElseThrow().low(), 1e-7);
        assertEquals(value + reach, estimate.interval95().orElseThrow().high(), 1e-7);
    }

    private static CurveFit fit(List<LogEntry> logs, FitSettings settings) {
        return assertInstanceOf(CurveFit.class, CurveFit.of(logs, settings));
    }

    private static FitRefusal refusal(List<LogEntry> logs, FitSettings settings) {
        return assertInstanceOf(FitRefusal.class, CurveFit.of(logs, settings));
    }
}
