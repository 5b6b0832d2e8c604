package org.amberyard.workbench.fields;

import java.util.Optional;
import java.util.function.Function;
import org.amberyard.workbench.grid.CellMark;
import org.amberyard.workbench.grid.GridModel;
import org.amberyard.workbench.grid.RowWords;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.swt.graphics.Point;

/** A grid model whose cells are fields of elements. */
interface ElementModel extends GridModel {

    /** Reads the study again: elements have come or gone, or the units have changed. */
    void update();

    /** Shows the rows only in which words stand; what is added meanwhile is shown, and what is edited stays. */
    default void filter(RowWords words) {
        // a table of a few elements shows them all
    }

    /** Lets more be said of rows than the findings say, at their first cell; for tables of rows. */
    default void markAlso(Function<EObject, Optional<CellMark>> more) {
        // elements beside each other have no first cell
    }

    /** Number of rows without a filter. */
    default int unfiltered() {
        return rows();
    }

    /** The element of a cell, or null for labels and the empty row. */
    EObject element(int row, int column);

    /** The field of a cell, or null for labels. */
    EStructuralFeature feature(int row, int column);

    /** Column and row of a field of an element, or of the element when the field is null; null when it is not here. */
    Point find(EObject element, EStructuralFeature feature);

    /** True when there are cells for a field. */
    boolean has(EStructuralFeature feature);

    /** What a cell is about: its field's meaning. */
    String meaning(int row, int column);
}
