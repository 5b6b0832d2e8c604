package org.amberyard.exchange.weather;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.model.study.Study;

/** A file of weather that has been read, and the stations in it: one in an EPW file, one or more in a table of normals. */
public interface WeatherSource {

    /**
     * Reads an EPW file, or a CSV file of monthly normals of any ending but that of EPW.
     *
     * @throws ImportException when the file is not understood
     * @throws java.util.concurrent.CancellationException when the reading is no longer wanted
     */
    static WeatherSource read(Path path, ReadingProgress progress) throws ImportException {
        boolean epw = path.getFileName().toString().toLowerCase(Locale.ROOT).endsWith(".epw");
        return epw ? new EpwWeather(EpwFile.read(path, progress)) : NormalsFile.read(path);
    }

    /** Names of the stations, in the order of the file. */
    List<String> stations();

    /**
     * What the weather of a station changes in a study.
     *
     * @param station place among {@link #stations()}
     * @throws ImportException when the study lacks what the file does not tell
     */
    WeatherImport load(int station, Study study) throws ImportException;
}
