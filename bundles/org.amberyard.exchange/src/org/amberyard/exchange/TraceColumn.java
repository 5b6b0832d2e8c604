package org.amberyard.exchange;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.amberyard.core.units.Unit;

/**
 * A column of a logged drive: what it holds, and what one of its unit is in the stored one.
 *
 * @param kind what it holds
 * @param perUnit stored units in one of the column's
 */
record TraceColumn(Kind kind, double perUnit) {

    /** What a column may hold. Limits are in the stored unit. */
    enum Kind {
        /** Seconds since any moment. */
        TIME(List.of("time", "t"), Map.of("s", 1.0), -1e12, 1e12, "seconds"),
        /** Speed. */
        SPEED(List.of("speed", "v"), Map.of("mps", 1.0, "ms", 1.0, "kmh", 1 / 3.6, "kph", 1 / 3.6,
                "mph", Unit.KM_PER_MILE / 3.6), 0, 100, "0 to 100 m/s"),
        /** Elevation. */
        ELEVATION(List.of("elevation", "ele", "altitude"), Map.of("m", 1.0, "ft", Unit.M_PER_FOOT), -500, 9000,
                "-500 to 9,000 m"),
        /** Degrees north. */
        LATITUDE(List.of("latitude", "lat"), Map.of("", 1.0, "deg", 1.0), -90, 90, "-90 to 90 degrees"),
        /** Degrees east. */
        LONGITUDE(List.of("longitude", "lon"), Map.of("", 1.0, "deg", 1.0), -180, 180, "-180 to 180 degrees");

        private final List<String> names;
        private final Map<String, Double> units;
        private final double min;
        private final double max;
        private final String allowed;

        Kind(List<String> names, Map<String, Double> units, double min, double max, String allowed) {
            this.names = names;
            this.units = units;
            this.min = min;
            this.max = max;
            this.allowed = allowed;
        }

        /** Values that the column may have. */
        String allowed() {
            return allowed;
        }
    }

    /** Headers that are understood, for messages. */
    static final String EXAMPLES = "time_s, speed_mps, speed_kmh or speed_mph, elevation_m or elevation_ft, latitude, longitude";

    /** The column of a header such as {@code time_s}, {@code Speed (km/h)} or {@code latitude}. */
    static Optional<TraceColumn> of(String header) {
        List<String> words = Arrays.stream(header.toLowerCase(Locale.ROOT).split("[^a-z]+")).filter(w -> !w.isEmpty()).toList();
        String unit = words.stream().skip(1).collect(Collectors.joining());
        return words.isEmpty() ? Optional.empty() : Arrays.stream(Kind.values())
                .filter(k -> k.names.contains(words.get(0)) && k.units.containsKey(unit))
                .map(k -> new TraceColumn(k, k.units.get(unit))).findFirst();
    }

    /** The stored value of a number in the column's unit; empty when it is beyond what the column may have. */
    Optional<Double> stored(double number) {
        double value = number * perUnit;
        return value >= kind.min && value <= kind.max ? Optional.of(value) : Optional.empty();
    }
}
