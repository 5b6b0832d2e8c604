package org.amberyard.report.papers;

import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import org.amberyard.model.funding.Programme;
import org.amberyard.model.meta.IsoDay;
import org.amberyard.model.study.Study;

/**
 * When awards of programmes are made and by when what they ask for must be done, which no calculation needs.
 *
 * @param dates dates by the name of the programme
 */
record ProgrammeDates(Map<String, Dates> dates) {
    /**
     * Dates of a programme.
     *
     * @param award day of the award; empty where it is not known
     * @param scrapDays days after a new bus is in service within which the old one must be scrapped; zero for no such rule
     * @param closeOutDays days after the last purchase that it pays for within which it must be closed out; zero for no such rule
     */
    record Dates(Optional<LocalDate> award, int scrapDays, int closeOutDays) {
        static final Dates NONE = new Dates(Optional.empty(), 0, 0);
    }

    static ProgrammeDates of(Study study) {
        Map<String, Dates> dates = new LinkedHashMap<>();
        for (Programme programme : study.getProgrammes()) {
            dates.put(programme.getName(), new Dates(IsoDay.of(programme.getAwardDate()), programme.getScrapWithinDays(), programme.getCloseOutDays()));
        }
        return new ProgrammeDates(Map.copyOf(dates));
    }

    Dates of(String programme) {
        return dates.getOrDefault(programme, Dates.NONE);
    }
}
