package org.amberyard.exchange;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** The header of a logged drive: which column holds what. */
final class TraceHeader {
    private final List<String> headers;
    private final List<TraceColumn> columns = new ArrayList<>();

    private TraceHeader(List<String> headers) {
        this.headers = headers;
    }

    /** @throws ImportException when a column is not understood or one is missing */
    static TraceHeader of(CsvSheet sheet) throws ImportException {
        TraceHeader header = new TraceHeader(sheet.header());
        ProblemList problems = new ProblemList(sheet.file());
        sheet.header().forEach(h -> header.add(h, problems));
        header.checkComplete(problems);
        problems.refuseIfAny();
        return header;
    }

    private void add(String header, ProblemList problems) {
        Optional<TraceColumn> column = TraceColumn.of(header);
        if (column.isEmpty()) {
            problems.add(1, header, "This is no column of a logged drive; remove it, or name it as one of "
                    + TraceColumn.EXAMPLES + ".");
        } else if (has(column.get().kind())) {
            problems.add(1, header, "Another column holds the same; remove one.");
        }
        column.ifPresent(columns::add);
    }

    private void checkComplete(ProblemList problems) {
        if (!has(TraceColumn.Kind.TIME)) {
            problems.add(1, "", "A column time_s is missing.");
        }
        if (!has(TraceColumn.Kind.SPEED) && !(has(TraceColumn.Kind.LATITUDE) && has(TraceColumn.Kind.LONGITUDE))) {
            problems.add(1, "", "A column of speeds (speed_mps, speed_kmh or speed_mph) is missing, or the columns latitude "
                    + "and longitude.");
        }
    }

    private boolean has(TraceColumn.Kind kind) {
        return columns.stream().anyMatch(c -> c.kind() == kind);
    }

    /** Columns from left to right. */
    List<TraceColumn> columns() {
        return columns;
    }

    /** Header of a column as it stands in the file. */
    String text(int column) {
        return headers.get(column);
    }

    /** Header of the column of a kind; blank when there is none. */
    String text(TraceColumn.Kind kind) {
        for (int i = 0; i < columns.size(); i++) {
            if (columns.get(i).kind() == kind) {
                return headers.get(i);
            }
        }
        return "";
    }
}
