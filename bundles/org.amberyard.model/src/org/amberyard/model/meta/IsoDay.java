package org.amberyard.model.meta;

import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Optional;

/** Days as fields hold them: year, month and day by ISO 8601, such as 2026-07-01. */
public final class IsoDay {
    private IsoDay() {
    }

    /** The day of a text; empty for a blank one, and for one that is no day of the calendar. */
    public static Optional<LocalDate> of(String text) {
        try {
            return text == null || text.isBlank() ? Optional.empty() : Optional.of(LocalDate.parse(text.strip()));
        } catch (DateTimeParseException e) {
            return Optional.empty();
        }
    }
}
