package org.amberyard.exchange;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.amberyard.model.common.CommonPackage;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.meta.FieldInfo;
import org.amberyard.model.study.Study;
import org.amberyard.model.study.StudyPackage;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/**
 * One kind of element as a table: its rows are the elements that a path of containments leads to from the study.
 *
 * @param name name of the table, and of its file without ending
 * @param type kind of the elements
 * @param path containments from the study to the elements; empty for the study itself
 */
record StudyTable(String name, EClass type, List<EReference> path) {

    /** Ending of the files of tables. */
    static final String ENDING = ".csv";

    static StudyTable of(String name, EClass type, EReference... path) {
        return new StudyTable(name, type, List.of(path));
    }

    /** Name of its file. */
    String file() {
        return name + ENDING;
    }

    /** Fields of the table: attributes and references to elements elsewhere; the remark comes last. */
    List<EStructuralFeature> fields() {
        List<EStructuralFeature> fields = new ArrayList<>(type.getEAllStructuralFeatures().stream()
                .filter(StudyTable::isField).toList());
        fields.sort(Comparator.comparing(f -> f == CommonPackage.Literals.SOURCED__NOTE));
        return fields;
    }

    private static boolean isField(EStructuralFeature feature) {
        return feature != StudyPackage.Literals.STUDY__FORMAT_VERSION
                && (feature instanceof EAttribute || feature instanceof EReference reference && !reference.isContainment());
    }

    /** True when the study holds the row's owner itself, so that no column needs to name the owner. */
    boolean hasOneOwner() {
        return path.stream().limit(Math.max(0, path.size() - 1L)).noneMatch(EReference::isMany);
    }

    /** Header of the column that names the owner of a row. */
    String ownerHeader() {
        return FieldInfo.classLabel(path.get(path.size() - 2).getEReferenceType());
    }

    /** Elements of the table in a study, in order. */
    List<EObject> rows(Study study) {
        return path.isEmpty() ? List.of(study)
                : owners(study).stream().flatMap(o -> contents(o, holder())).filter(type::isInstance).toList();
    }

    /** Elements that own rows, in order. A step may lead to relatives that hold nothing of the kind. */
    List<EObject> owners(Study study) {
        List<EObject> owners = List.of(study);
        for (int i = 0; i < path.size() - 1; i++) {
            EReference step = path.get(i);
            EClass holder = path.get(i + 1).getEContainingClass();
            owners = owners.stream().flatMap(o -> contents(o, step)).filter(holder::isInstance).toList();
        }
        return owners;
    }

    private EReference holder() {
        return path.get(path.size() - 1);
    }

    private static Stream<EObject> contents(EObject owner, EReference step) {
        Object value = owner.eGet(step);
        return value instanceof List<?> list ? list.stream().map(EObject.class::cast)
                : Stream.ofNullable((EObject) value);
    }

    /** A new row of an owner, attached to it; in a single-valued containment it takes the place of what is there. */
    @SuppressWarnings("unchecked")
    EObject addRow(EObject owner) {
        EObject row = EcoreUtil.create(type);
        if (holder().isMany()) {
            ((List<EObject>) owner.eGet(holder())).add(row);
        } else {
            owner.eSet(holder(), row);
        }
        return row;
    }

    /** The owner of a name, when there is just one. */
    Optional<EObject> owner(Study study, String ownerName) {
        List<EObject> named = owners(study).stream().filter(o -> ElementNames.of(o).equals(ownerName)).toList();
        return named.size() == 1 ? Optional.of(named.get(0)) : Optional.empty();
    }

    /** Key of a row in notes: its name, behind its owner's where several owners hold rows. */
    String key(EObject row) {
        return hasOneOwner() ? ElementNames.of(row) : ElementNames.of(row.eContainer()) + " / " + ElementNames.of(row);
    }
}
