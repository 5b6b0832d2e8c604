package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** The replacement schedule of a plan in few lines: which buses come in which year, by type, for which old ones. */
final class ReplacementYears {
    private ReplacementYears() {
    }

    /** What comes in a year: places of each type. */
    private record Year(int year, Map<Integer, List<String>> places) {

        String words(PaperInput in) {
            return places.entrySet().stream().map(e -> e.getValue().size() + " × " + in.study().types().get(e.getKey()).name() + " ("
                    + String.join(", ", e.getValue()) + ")").collect(Collectors.joining("; "));
        }
    }

    static DataTable of(PaperInput in, String title) {
        return new TableBuilder<Year>("Replacements", title).year("Year", y -> OptionalInt.of(in.calendar(y.year())))
                .text("Buses that come, with the places that they take", 8, y -> y.words(in)).of(years(in));
    }

    private static List<Year> years(PaperInput in) {
        Map<Integer, Map<Integer, List<String>>> years = new TreeMap<>();
        in.plan().fleet().events().stream().filter(FleetEvent.Bought.class::isInstance).map(FleetEvent.Bought.class::cast)
                .forEach(b -> years.computeIfAbsent(b.year(), y -> new TreeMap<>()).computeIfAbsent(b.vehicle().type(), t -> new ArrayList<>())
                        .add(in.study().buses().get(b.place()).name()));
        return years.entrySet().stream().map(e -> new Year(e.getKey(), e.getValue())).toList();
    }
}
