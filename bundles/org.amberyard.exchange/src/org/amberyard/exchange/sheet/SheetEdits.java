package org.amberyard.exchange.sheet;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import org.amberyard.model.common.Quality;
import org.amberyard.model.common.Sourced;
import org.amberyard.model.meta.SourceNotes;
import org.amberyard.model.study.Study;
import org.eclipse.emf.common.util.EList;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** Edits of a study, recorded on a copy of it, so that they can be done to the study itself without working them out again. */
final class SheetEdits {
    private final List<EObject> before;
    private final List<Edit> edits = new ArrayList<>();

    /** @param copy copy of the study, not yet edited */
    SheetEdits(Study copy) {
        this.before = all(copy);
    }

    private static List<EObject> all(Study study) {
        List<EObject> all = new ArrayList<>(List.of(study));
        study.eAllContents().forEachRemaining(all::add);
        return all;
    }

    /** An edit of elements of the copy, done to those of the study. */
    private interface Edit {
        void doTo(Places places);
    }

    /** A field has got a value. */
    void put(EObject element, EStructuralFeature field, Object value) {
        edits.add(places -> places.get(element).eSet(field, value instanceof List<?> several
                ? several.stream().map(v -> there(v, places)).toList() : there(value, places)));
    }

    /** A value in the study: elements are those that stand where the copy has them. */
    private static Object there(Object value, Places places) {
        return value instanceof EObject element ? places.get(element) : value;
    }

    /** An element has come into its container, and gets there whatever is in it at the end. */
    void added(EObject element) {
        EObject container = element.eContainer();
        EReference containment = element.eContainmentFeature();
        int at = siblings(container, containment).lastIndexOf(element);
        edits.add(places -> siblings(places.get(container), containment).add(at, places.copy(element)));
    }

    /** An element has been taken out of its container. */
    void removed(EObject container, EReference containment, EObject element) {
        edits.add(places -> siblings(places.get(container), containment).remove(places.get(element)));
    }

    /** A source has been noted. */
    void noted(Sourced element, String field, Quality quality, String citation) {
        edits.add(places -> SourceNotes.put((Sourced) places.get(element), field, quality, citation));
    }

    @SuppressWarnings("unchecked")
    private static EList<EObject> siblings(EObject container, EReference containment) {
        return (EList<EObject>) container.eGet(containment);
    }

    /**
     * Does them to a study.
     *
     * @throws IllegalStateException when it is not built as the one that was copied
     */
    void doTo(Study study) {
        Places places = new Places(before, all(study));
        edits.forEach(edit -> edit.doTo(places));
        places.copyReferences();
    }

    /** Where elements of the copy stand in the study; copies those that it lacks. */
    private static final class Places extends EcoreUtil.Copier {
        private static final long serialVersionUID = 1L;

        private final transient Map<EObject, EObject> known = new IdentityHashMap<>();

        Places(List<EObject> copies, List<EObject> originals) {
            if (!kinds(copies).equals(kinds(originals))) {
                throw new IllegalStateException("The study is no longer the one that the table was tried on");
            }
            for (int i = 0; i < copies.size(); i++) {
                known.put(copies.get(i), originals.get(i));
            }
        }

        private static List<EClass> kinds(List<EObject> elements) {
            return elements.stream().map(EObject::eClass).toList();
        }

        @Override
        public EObject get(Object element) {
            EObject original = known.get(element);
            return original == null ? super.get(element) : original;
        }
    }
}
