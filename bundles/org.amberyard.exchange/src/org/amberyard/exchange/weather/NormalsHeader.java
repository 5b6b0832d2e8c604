package org.amberyard.exchange.weather;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.IntStream;
import org.amberyard.exchange.ImportException;
import org.amberyard.exchange.ProblemList;
import org.eclipse.emf.ecore.EAttribute;

/**
 * Which columns of a table of monthly normals hold what.
 *
 * @param month column of the month
 * @param station column of the station; empty when the table has none
 * @param columns columns of temperatures and sun; the first where several tell the same
 * @param others headers that are passed over
 */
record NormalsHeader(int month, OptionalInt station, List<NormalsColumn> columns, List<String> others) {

    static NormalsHeader of(List<String> headers, String file) throws ImportException {
        ProblemList problems = new ProblemList(file);
        OptionalInt month = first(headers, "month");
        OptionalInt station = first(headers, "station");
        if (month.isEmpty()) {
            problems.add(1, "", "A column month is missing.");
        }
        List<NormalsColumn> columns = new ArrayList<>();
        List<String> others = new ArrayList<>();
        for (int i = 0; i < headers.size(); i++) {
            if (i != month.orElse(-1) && i != station.orElse(-1)) {
                take(headers.get(i), i, columns, others, problems);
            }
        }
        if (columns.isEmpty()) {
            problems.add(1, "", "No column tells the climate; name the columns as mean_low_F, mean_high_F, coldest_low_F, coldest_high_F, "
                    + "hottest_high_F (or with _C) and sun_share.");
        }
        problems.refuseIfAny();
        return new NormalsHeader(month.getAsInt(), station, List.copyOf(columns), List.copyOf(others));
    }

    private static OptionalInt first(List<String> headers, String word) {
        return IntStream.range(0, headers.size()).filter(i -> NormalsColumn.words(headers.get(i)).contains(word)).findFirst();
    }

    private static void take(String header, int place, List<NormalsColumn> columns, List<String> others, ProblemList problems) {
        Optional<EAttribute> attribute = NormalsColumn.attribute(header);
        if (attribute.isEmpty()) {
            others.add(header);
            return;
        }
        Optional<NormalsColumn.Scale> scale = NormalsColumn.scale(header, attribute.get());
        if (scale.isEmpty()) {
            problems.add(1, header, "The header does not say °F or °C; let it end in _F or _C.");
            return;
        }
        Optional<NormalsColumn> same = columns.stream().filter(c -> c.attribute() == attribute.get()).findFirst();
        if (same.isEmpty()) {
            columns.add(new NormalsColumn(place, header, attribute.get(), scale.get()));
        } else if (same.get().scale() == scale.get()) {
            problems.add(1, header, "The column “" + same.get().header() + "” tells the same; remove one.");
        } else {
            others.add(header);
        }
    }
}
