package org.amberyard.report.papers;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.amberyard.core.plan.FleetEvent;
import org.amberyard.report.document.CellFormat;
import org.amberyard.report.document.DataTable;
import org.amberyard.report.document.TableBuilder;

/** The replacement schedule of a plan in few lines: buses of each type that come, when, and in which places. */
final class ReplacementYears {
    private ReplacementYears() {
    }

    /** Places that get a bus of a type, by year from the start of the study. */
    private record Type(int type, Map<Integer, List<String>> places) {

        int buses() {
            return places.values().stream().mapToInt(List::size).sum();
        }

        String words(PaperInput in) {
            return places.entrySet().stream().map(e -> in.calendar(e.getKey()) + ": " + String.join(", ", e.getValue())).collect(Collectors
                    .joining("; "));
        }
    }

    static DataTable of(PaperInput in, String title) {
        return new TableBuilder<Type>("Replacements", title).text("Type that comes", 2, t -> in.study().types().get(t.type()).name())
                .number("Buses", "", CellFormat.WHOLE, Type::buses).text("Years, with the places that get one", 8, t -> t.words(in)).of(types(in));
    }

    private static List<Type> types(PaperInput in) {
        Map<Integer, Map<Integer, List<String>>> types = new TreeMap<>();
        in.plan().fleet().events().stream().filter(FleetEvent.Bought.class::isInstance).map(FleetEvent.Bought.class::cast)
                .forEach(b -> types.computeIfAbsent(b.vehicle().type(), t -> new TreeMap<>()).computeIfAbsent(b.year(), y -> new ArrayList<>())
                        .add(in.study().buses().get(b.place()).name()));
        return types.entrySet().stream().map(e -> new Type(e.getKey(), e.getValue())).toList();
    }
}
