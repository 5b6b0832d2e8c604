package org.amberyard.workbench.handlers;

import java.nio.file.Path;
import java.util.OptionalInt;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.weather.WeatherImport;
import org.amberyard.exchange.weather.WeatherSource;
import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.jface.dialogs.MessageDialog;
import org.eclipse.swt.widgets.Shell;

/** Reads weather, says what was read and what changes, and makes it the climate of the yard when that is agreed to. */
public final class ImportWeatherHandler extends ImportHandler<WeatherSource> {

    @Override
    Words words() {
        return new Words(Messages.Weather_title, Messages.Weather_fileKind, "*.epw;*.csv", Messages.Weather_failed);
    }

    @Override
    FileReading<WeatherSource> reading(Path file, StudyEditor editor) {
        return new WeatherReading(file);
    }

    @Override
    void offer(WeatherSource source, Shell shell, StudyEditor editor) {
        OptionalInt station = NameChoice.ask(shell, Messages.Weather_title, Messages.Weather_choose, source.stations());
        if (station.isPresent()) {
            offer(source, station.getAsInt(), shell, editor);
        }
    }

    private void offer(WeatherSource source, int station, Shell shell, StudyEditor editor) {
        try {
            WeatherImport imported = source.load(station, editor.session().study());
            UpdateAddition addition = new UpdateAddition(editor.session(), imported.update());
            if (MessageDialog.openConfirm(shell, Messages.Weather_offer, addition.words(imported.sentences()))) {
                addition.add(Messages.Weather_imported);
                editor.reveal(editor.session().study().getSite().getClimate().get(0), null);
            }
        } catch (ImportException e) {
            refuse(e, shell);
        }
    }
}
