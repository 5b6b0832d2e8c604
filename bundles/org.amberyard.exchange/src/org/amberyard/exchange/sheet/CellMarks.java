package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.amberyard.exchange.ImportProblem;
import org.amberyard.model.study.Study;

/** Where in a sheet the problems of its import lie: in a cell, in a row as a whole, or nowhere in it. */
public final class CellMarks {
    /** The place of what is wrong with a row as a whole. */
    public static final int WHOLE_ROW = -1;

    private final Map<Integer, Map<Integer, List<String>>> messages = new HashMap<>();
    private final Map<String, Integer> places = new HashMap<>();

    /** The marks of the problems that an import into a study has. */
    public CellMarks(SheetImport made, List<ImportProblem> problems, Study study) {
        made.mapping().columns().keySet().stream().sorted().forEach(place -> places.putIfAbsent(made.headerAt(place, study), place));
        for (ImportProblem problem : problems) {
            messages.computeIfAbsent(problem.row(), r -> new HashMap<>()).computeIfAbsent(places.getOrDefault(problem.column(), WHOLE_ROW),
                    p -> new ArrayList<>()).add(problem.message());
        }
    }

    /** What is wrong with a cell; nothing where it is sound. */
    public List<String> at(int row, int place) {
        return messages.getOrDefault(row, Map.of()).getOrDefault(place, List.of());
    }

    /** The column of the sheet in which a problem lies; empty for one of a row as a whole. */
    public OptionalInt place(ImportProblem problem) {
        Integer place = places.get(problem.column());
        return place == null ? OptionalInt.empty() : OptionalInt.of(place);
    }
}
