package org.amberyard.workbench.fields;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.meta.ElementNames;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.common.util.TreeIterator;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.osgi.util.NLS;

/** The elements of a study that a reference may point to, by name. */
final class Candidates {

    private static final int MOST_NAMED = 6;

    private final EReference reference;
    private final List<EObject> elements = new ArrayList<>();

    Candidates(EReference reference, Study study) {
        this.reference = reference;
        TreeIterator<EObject> all = study.eAllContents();
        while (all.hasNext()) {
            EObject element = all.next();
            if (reference.getEReferenceType().isInstance(element)) {
                elements.add(element);
            }
        }
    }

    List<EObject> elements() {
        return elements;
    }

    List<String> names() {
        return elements.stream().map(ElementNames::of).toList();
    }

    EObject named(String name) throws FieldRefusal {
        if (name.isEmpty()) {
            if (reference.isRequired()) {
                throw new FieldRefusal(NLS.bind(Messages.Required_refused, Words.field(reference).label()));
            }
            return null;
        }
        for (EObject element : elements) {
            if (ElementNames.of(element).equalsIgnoreCase(name)) {
                return element;
            }
        }
        throw new FieldRefusal(NLS.bind(Messages.Reference_refused,
                new Object[] {Words.field(reference).label(), name, someNames()}));
    }

    /** Elements by their names, each once. */
    List<EObject> several(List<String> names) throws FieldRefusal {
        Set<EObject> named = new LinkedHashSet<>();
        for (String name : names) {
            named.add(named(name));
        }
        return List.copyOf(named);
    }

    private String someNames() {
        if (elements.isEmpty()) {
            return Messages.Reference_none;
        }
        String some = names().stream().limit(MOST_NAMED).collect(Collectors.joining(", "));
        return elements.size() > MOST_NAMED ? some + ", …" : some;
    }
}
