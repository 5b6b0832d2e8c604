package org.amberyard.exchange;

import java.time.LocalDateTime;

/**
 * A reading of a meter.
 *
 * @param start start of its interval on the meter's clock
 * @param number what the file says, in its unit
 * @param row row in the file
 */
record MeterReading(LocalDateTime start, double number, int row) {
}
