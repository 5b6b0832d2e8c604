package org.amberyard.exchange;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.amberyard.core.duty.SpeedTrace;
import org.amberyard.core.trace.CleanedTrack;
import org.amberyard.core.trace.Track;
import org.amberyard.core.trace.TrackCleaning;
import org.amberyard.core.trace.UnusableTrackException;
import org.amberyard.model.meta.NumberSeries;
import org.amberyard.model.routes.DriveTrace;
import org.amberyard.model.routes.RoutesFactory;
import org.amberyard.model.study.Study;

/**
 * A drive trace made from a file: read, cleaned and ready to be put into a study.
 *
 * @param trace the trace, which belongs to no study yet; named after the file
 * @param cleaned the drive and what cleaning did
 */
public record TraceImport(DriveTrace trace, CleanedTrack cleaned) {
    private static final String GPX = ".gpx";
    /** A millimetre, and a millimetre per second: finer than any logger, and grades stay smooth. */
    private static final int DECIMALS = 3;

    /**
     * The trace in a GPX file, or in a CSV file of any ending but that of GPX.
     *
     * @throws ImportException when the file is not understood, or no drive can be made from it
     */
    public static TraceImport read(Path path) throws ImportException {
        String file = path.getFileName().toString();
        Track track = file.toLowerCase(Locale.ROOT).endsWith(GPX) ? TraceGpx.read(path) : TraceCsv.read(path);
        try {
            CleanedTrack cleaned = TrackCleaning.clean(track);
            return new TraceImport(trace(file, cleaned), cleaned);
        } catch (UnusableTrackException e) {
            throw new ImportException(List.of(new ImportProblem(file, 0, "", e.getMessage())));
        }
    }

    /** A name that no trace of a study has yet: the one that is wanted, or with a number behind it. */
    public static String freeName(Study study, String wanted) {
        Set<String> taken = study.getTraces().stream().map(DriveTrace::getName).collect(Collectors.toSet());
        return Stream.concat(Stream.of(wanted), IntStream.iterate(2, i -> i + 1).mapToObj(i -> wanted + " " + i))
                .filter(n -> !taken.contains(n)).findFirst().orElseThrow();
    }

    private static DriveTrace trace(String file, CleanedTrack cleaned) {
        SpeedTrace drive = cleaned.trace();
        double[] timeS = new double[drive.steps() + 1];
        double[] speedMps = new double[timeS.length];
        for (int i = 0; i < timeS.length; i++) {
            timeS[i] = drive.timeS(i);
            speedMps[i] = drive.speedMps(i);
        }
        DriveTrace trace = RoutesFactory.eINSTANCE.createDriveTrace();
        int dot = file.lastIndexOf('.');
        trace.setName(dot > 0 ? file.substring(0, dot) : file);
        trace.setDescription(file);
        trace.setTimesS(NumberSeries.text(timeS, DECIMALS));
        trace.setSpeedsMps(NumberSeries.text(speedMps, DECIMALS));
        if (!cleaned.elevationM().isEmpty()) {
            trace.setElevationsM(NumberSeries.text(
                    cleaned.elevationM().stream().mapToDouble(Double::doubleValue).toArray(), DECIMALS));
        }
        return trace;
    }
}
