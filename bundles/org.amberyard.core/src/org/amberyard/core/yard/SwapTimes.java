package org.amberyard.core.yard;

import java.util.List;
import java.util.stream.IntStream;
import org.amberyard.core.charging.SwapHours;
import org.amberyard.core.duty.DayBlock;

/**
 * When a person is at the yard to move plugs, every day of service and on free days alike.
 *
 * @param fromMin start, minutes after midnight
 * @param toMin end, minutes after midnight; the next day's when not after the start
 */
public record SwapTimes(double fromMin, double toMin) {

    /** The same through a stretch of days. */
    SwapHours of(int days) {
        double lengthMin = (toMin - fromMin + DayBlock.DAY_MIN) % DayBlock.DAY_MIN;
        double spanMin = lengthMin == 0 ? DayBlock.DAY_MIN : lengthMin;
        List<SwapHours.Span> spans = IntStream.range(0, days)
                .mapToObj(day -> new SwapHours.Span(fromMin + day * DayBlock.DAY_MIN, fromMin + day * DayBlock.DAY_MIN + spanMin))
                .toList();
        return new SwapHours(days * DayBlock.DAY_MIN, spans);
    }
}
