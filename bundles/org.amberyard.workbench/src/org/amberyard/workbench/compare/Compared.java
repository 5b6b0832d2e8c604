package org.amberyard.workbench.compare;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.model.study.Study;
import org.amberyard.report.PlansBeside;
import org.amberyard.study.InputDifferences;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.osgi.util.NLS;

/**
 * Figures or inputs of several plans or studies.
 *
 * @param sectionLabel what the first label of a row is
 * @param figureLabel what its second label is
 * @param columns names of what is compared
 * @param rows rows
 */
record Compared(String sectionLabel, String figureLabel, List<String> columns, List<Row> rows) {

    /** Nothing to compare. */
    static final Compared NOTHING = new Compared("", "", List.of(), List.of());

    /**
     * A figure or an input.
     *
     * @param section what it belongs to
     * @param figure what it is
     * @param unit its unit; blank for texts, which hold theirs
     * @param values values in the order of the columns; null where there is none
     */
    record Row(String section, String figure, String unit, List<Object> values) {
        Row {
            values = Collections.unmodifiableList(new ArrayList<>(values));
        }

        boolean differs() {
            return values.stream().distinct().count() > 1;
        }
    }

    Compared {
        columns = List.copyOf(columns);
        rows = List.copyOf(rows);
    }

    /** Figures of the plans of a study and, where there is one, of another, by the same rows. */
    static Compared figures(Evaluated here, Evaluated there) {
        List<String> columns = new ArrayList<>(here.plans());
        int own = columns.size();
        if (there != null) {
            there.plans().forEach(p -> columns.add(NLS.bind(Messages.Compare_planOf, p, there.name())));
        }
        Map<List<String>, Object[]> values = new LinkedHashMap<>();
        put(values, here.figures(), 0, columns.size());
        if (there != null) {
            put(values, there.figures(), own, columns.size());
        }
        return new Compared(Messages.Compare_section, Messages.Compare_figure, columns,
                values.entrySet().stream().map(e -> new Row(Words.say(e.getKey().get(0)), Words.say(e.getKey().get(1)), Words.say(e.getKey().get(2)),
                        Arrays.asList(e.getValue()))).toList());
    }

    private static void put(Map<List<String>, Object[]> values, List<PlansBeside.Row> rows, int from, int width) {
        for (PlansBeside.Row row : rows) {
            Object[] line = values.computeIfAbsent(List.of(row.section(), row.figure(), row.unit()), k -> new Object[width]);
            for (int i = 0; i < row.values().size(); i++) {
                line[from + i] = row.values().get(i);
            }
        }
    }

    /** Inputs that differ between elements. */
    static Compared inputs(List<String> names, List<? extends EObject> elements, Study units) {
        List<Row> rows = InputDifferences.of(elements, units).stream().map(d -> new Row(Words.say(d.element()),
                d.field().isEmpty() ? Messages.Compare_isThere : Words.say(d.field()), "", new ArrayList<>(d.values()))).toList();
        return new Compared(Messages.Compare_element, Messages.Compare_input, names, rows);
    }
}
