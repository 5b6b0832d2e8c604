package org.amberyard.exchange;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.amberyard.core.trace.Track;
import org.amberyard.core.trace.TrackPoint;
import org.amberyard.exchange.TraceColumn.Kind;

/**
 * Reads a logged drive, or a drive schedule, from a CSV file whose headers name each column and its unit: time in s, speed
 * in m/s, km/h or mph, elevation in m or ft, latitude and longitude in degrees. A speed or a position is needed in every
 * row, an elevation is not. Cells are separated by commas, or by semicolons; then a decimal comma is understood too.
 */
public final class TraceCsv {
    private static final Pattern NUMBER = Pattern.compile("[+-]?(\\d+\\.?\\d*|\\.\\d+)([eE][+-]?\\d{1,3})?");

    private final CsvSheet sheet;
    private final TraceHeader header;
    private final boolean decimalComma;
    private final ProblemList problems;

    private TraceCsv(CsvSheet sheet, boolean decimalComma) throws ImportException {
        this.sheet = sheet;
        this.header = TraceHeader.of(sheet);
        this.decimalComma = decimalComma;
        this.problems = new ProblemList(sheet.file());
    }

    /**
     * The track in a file.
     *
     * @throws ImportException when anything in the file is not understood
     */
    public static Track read(Path file) throws ImportException {
        List<ImportProblem> unreadable = new ArrayList<>();
        CsvSheet sheet = CsvSheet.read(file, ',', unreadable);
        boolean semicolons = sheet.header().stream().anyMatch(h -> h.contains(";"));
        if (semicolons) {
            unreadable.clear();
            sheet = CsvSheet.read(file, ';', unreadable);
        }
        if (!unreadable.isEmpty()) {
            throw new ImportException(unreadable);
        }
        return new TraceCsv(sheet, semicolons).track();
    }

    private Track track() throws ImportException {
        List<TrackPoint> points = new ArrayList<>();
        for (int i = 0; i < sheet.rows().size(); i++) {
            Map<Kind, Double> values = values(sheet.rows().get(i), i + 2);
            if (problems.isEmpty()) {
                checkComplete(values, i + 2);
            }
            if (problems.isEmpty()) {
                points.add(point(values));
                checkOrder(points, i + 2);
            }
        }
        problems.refuseIfAny();
        return Tracks.of(points, sheet.file());
    }

    private Map<Kind, Double> values(List<String> cells, int row) {
        Map<Kind, Double> values = new EnumMap<>(Kind.class);
        for (int i = 0; i < cells.size(); i++) {
            if (!cells.get(i).isEmpty()) {
                TraceColumn column = header.columns().get(i);
                Optional<Double> value = number(cells.get(i)).flatMap(column::stored);
                value.ifPresent(v -> values.put(column.kind(), v));
                if (value.isEmpty()) {
                    problems.add(row, header.text(i),
                            "“" + cells.get(i) + "” must be a number, " + column.kind().allowed() + ".");
                }
            }
        }
        return values;
    }

    private Optional<Double> number(String cell) {
        String plain = decimalComma ? cell.replace(',', '.') : cell;
        return NUMBER.matcher(plain).matches() ? Optional.of(Double.valueOf(plain)) : Optional.empty();
    }

    private void checkComplete(Map<Kind, Double> values, int row) {
        boolean position = values.containsKey(Kind.LATITUDE) && values.containsKey(Kind.LONGITUDE);
        if (!values.containsKey(Kind.TIME)) {
            problems.add(row, header.text(Kind.TIME), "The time is missing.");
        }
        if (values.containsKey(Kind.LATITUDE) != values.containsKey(Kind.LONGITUDE)) {
            problems.add(row, header.text(Kind.LATITUDE), "Latitude and longitude are needed together.");
        }
        if (!position && !values.containsKey(Kind.SPEED)) {
            problems.add(row, header.text(Kind.SPEED), "The speed is missing.");
        }
    }

    private void checkOrder(List<TrackPoint> points, int row) {
        int last = points.size() - 1;
        if (last > 0 && points.get(last).timeS() < points.get(last - 1).timeS()) {
            problems.add(row, header.text(Kind.TIME), "The time is earlier than that of the row before.");
        }
    }

    private static TrackPoint point(Map<Kind, Double> values) {
        return new TrackPoint(values.get(Kind.TIME), values.getOrDefault(Kind.LATITUDE, Double.NaN),
                values.getOrDefault(Kind.LONGITUDE, Double.NaN), values.getOrDefault(Kind.SPEED, Double.NaN),
                values.getOrDefault(Kind.ELEVATION, Double.NaN));
    }
}
