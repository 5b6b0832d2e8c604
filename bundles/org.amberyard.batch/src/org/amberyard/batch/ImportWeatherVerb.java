package org.amberyard.batch;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ReadingProgress;
import org.amberyard.exchange.weather.WeatherImport;
import org.amberyard.exchange.weather.WeatherSource;
import org.amberyard.model.study.Study;

/** Puts the climate of a weather file into a study, and says what was read, assumed and changed. */
final class ImportWeatherVerb implements Verb {
    private static final String STATION = "--station";

    @Override
    public String name() {
        return "import-weather";
    }

    @Override
    public String usage() {
        return "import-weather STUDY FILE [" + STATION + " NAME]";
    }

    @Override
    public String summary() {
        return "takes the climate of STUDY from FILE: hourly weather (EPW), or monthly normals (CSV)";
    }

    @Override
    public Set<String> options() {
        return Set.of(STATION);
    }

    @Override
    public int run(Arguments arguments, Console console) throws WrongUse {
        Arguments.StudyAndFile paths = arguments.studyAndFile(console.folder());
        Study study = StudyArgument.load(paths.study());
        WeatherImport imported = read(paths.file(), arguments, study);
        imported.update().apply();
        StudyArgument.save(study, paths.study());
        imported.sentences().forEach(console.out()::println);
        UpdateText.print(imported.update().changes(), console.out());
        return ExitCode.DONE;
    }

    private static WeatherImport read(Path file, Arguments arguments, Study study) throws WrongUse {
        if (!Files.isRegularFile(file)) {
            throw new WrongUse("FILE is " + file + ", where there is no file; give an EPW or CSV file.");
        }
        try {
            WeatherSource source = WeatherSource.read(file, ReadingProgress.NONE);
            return source.load(station(source.stations(), arguments.value(STATION)), study);
        } catch (ImportException e) {
            throw new WrongUse("No climate was imported from " + file + ":" + System.lineSeparator() + e.getMessage());
        }
    }

    private static int station(List<String> stations, Optional<String> named) throws WrongUse {
        int place = named.map(stations::indexOf).orElse(stations.size() == 1 ? 0 : -1);
        if (place < 0) {
            throw new WrongUse((named.isEmpty() ? "The file has " + stations.size() + " stations; choose one with " + STATION
                    : STATION + " is “" + named.get() + "”; it must be one of the file") + ": " + String.join("; ", stations) + ".");
        }
        return place;
    }
}
