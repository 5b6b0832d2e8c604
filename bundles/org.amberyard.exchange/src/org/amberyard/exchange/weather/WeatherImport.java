package org.amberyard.exchange.weather;

import java.util.List;
import org.amberyard.exchange.StudyUpdate;

/**
 * Climate from a file, ready to be put into a study.
 *
 * @param update what changes
 * @param sentences what was read and what had to be assumed
 */
public record WeatherImport(StudyUpdate update, List<String> sentences) {

    public WeatherImport {
        sentences = List.copyOf(sentences);
    }
}
