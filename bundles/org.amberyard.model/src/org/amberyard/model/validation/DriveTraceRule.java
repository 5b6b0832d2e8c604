package org.amberyard.model.validation;

import java.util.Arrays;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.model.meta.PlainNumber;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.model.routes.RoutesPackage.Literals;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EAttribute;

/** A drive trace can be driven: its texts are numbers that belong together, time rises, and it starts and ends at rest. */
final class DriveTraceRule implements Rule {
    private static final EAttribute TIMES = Literals.DRIVE_TRACE__TIMES_S;
    private static final EAttribute SPEEDS = Literals.DRIVE_TRACE__SPEEDS_MPS;
    private static final EAttribute ELEVATIONS = Literals.DRIVE_TRACE__ELEVATIONS_M;

    @Override
    public void check(Study study, Findings findings) {
        for (DriveTrace trace : study.getTraces()) {
            try {
                check(trace);
            } catch (SeriesFault fault) {
                findings.error(trace, fault.field(), Findings.label(fault.field()) + ": " + fault.getMessage()
                        + "; import the trace again or correct it.");
            }
        }
    }

    private static void check(DriveTrace trace) throws SeriesFault {
        double[] times = numbers(trace, TIMES, 0, 86_400);
        checkTimes(times);
        double[] speeds = numbers(trace, SPEEDS, 0, 60);
        checkCount(SPEEDS, speeds.length, times.length);
        checkRest(speeds);
        double[] elevations = numbers(trace, ELEVATIONS, -500, 9000);
        if (elevations.length > 0) {
            checkCount(ELEVATIONS, elevations.length, times.length);
        }
    }

    private static double[] numbers(DriveTrace trace, EAttribute field, int min, int max) throws SeriesFault {
        double[] numbers;
        try {
            numbers = NumberSeries.parse((String) trace.eGet(field));
        } catch (NumberFormatException e) {
            throw new SeriesFault(field, e.getMessage());
        }
        for (int i = 0; i < numbers.length; i++) {
            if (!(numbers[i] >= min && numbers[i] <= max)) {
                throw new SeriesFault(field, at(i, numbers) + " but must be " + min + " to " + max);
            }
        }
        return numbers;
    }

    private static void checkTimes(double[] times) throws SeriesFault {
        if (times.length < 2) {
            throw new SeriesFault(TIMES, "there are " + times.length + " numbers but at least 2 are needed");
        }
        for (int i = 1; i < times.length; i++) {
            if (times[i] <= times[i - 1]) {
                throw new SeriesFault(TIMES, at(i, times) + ", not above the " + PlainNumber.text(times[i - 1]) + " before it");
            }
        }
    }

    private static void checkCount(EAttribute field, int count, int times) throws SeriesFault {
        if (count != times) {
            throw new SeriesFault(field, "there are " + count + " numbers for " + times + " times");
        }
    }

    private static void checkRest(double[] speeds) throws SeriesFault {
        for (int end : new int[] {0, speeds.length - 1}) {
            if (speeds[end] > 0) {
                throw new SeriesFault(SPEEDS, at(end, speeds) + " but a trace starts and ends at rest, with 0");
            }
        }
        if (Arrays.stream(speeds).allMatch(v -> v == 0)) {
            throw new SeriesFault(SPEEDS, "all are 0 but a trace must move");
        }
    }

    private static String at(int place, double[] numbers) {
        return "number " + (place + 1) + " is " + PlainNumber.text(numbers[place]);
    }
}
