package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.weather.WeatherSource;

/** Reads weather in the background. */
public final class WeatherReading extends FileReading<WeatherSource> {

    /** Will read a file. */
    public WeatherReading(Path file) {
        super(file);
    }

    @Override
    protected WeatherSource read(Path path) throws ImportException {
        return WeatherSource.read(path, progress());
    }
}
