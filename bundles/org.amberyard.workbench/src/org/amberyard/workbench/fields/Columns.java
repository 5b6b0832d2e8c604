package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.amberyard.model.common.CommonPackage;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Which fields of a kind of element make columns: all that hold a value or refer to other elements, in the order of the model. */
public final class Columns {

    private Columns() {
    }

    /** Columns of a kind, with the remark last. */
    public static List<EStructuralFeature> of(EClass type, EStructuralFeature... without) {
        List<EStructuralFeature> columns = type.getEAllStructuralFeatures().stream().filter(Columns::isColumn)
                .collect(Collectors.toCollection(ArrayList::new));
        columns.removeAll(List.of(without));
        EStructuralFeature note = CommonPackage.Literals.SOURCED__NOTE;
        if (columns.remove(note)) {
            columns.add(note);
        }
        return columns;
    }

    /** Columns of a kind, with one that is looked for often at a place further to the front. */
    public static List<EStructuralFeature> with(EClass type, int place, EStructuralFeature column) {
        List<EStructuralFeature> columns = of(type, column);
        columns.add(place, column);
        return columns;
    }

    /** Columns of a kind, with those that set it apart from its relatives first. */
    public static List<EStructuralFeature> ownFirst(EClass type) {
        List<EStructuralFeature> columns = of(type);
        List<EStructuralFeature> own = columns.stream().filter(type.getEStructuralFeatures()::contains).toList();
        columns.removeAll(own);
        columns.addAll(0, own);
        return columns;
    }

    private static boolean isColumn(EStructuralFeature feature) {
        boolean refers = feature instanceof EReference reference && !reference.isContainment();
        boolean value = feature instanceof EAttribute && !feature.isMany();
        return (refers || value) && feature.isChangeable();
    }
}
