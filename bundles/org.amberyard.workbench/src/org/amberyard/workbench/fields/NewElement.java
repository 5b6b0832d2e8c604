package org.amberyard.workbench.fields;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.amberyard.model.study.Study;
import org.amberyard.workbench.language.Words;
import org.eclipse.emf.ecore.EAttribute;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EReference;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.util.EcoreUtil;
import org.eclipse.osgi.util.NLS;

/** An element for a new row: the model's defaults, a name of its own, and references that a neighbour would have. */
final class NewElement {

    private final EClass type;
    private final List<EObject> siblings;
    private final Study study;

    NewElement(EClass type, List<EObject> siblings, Study study) {
        this.type = type;
        this.siblings = siblings;
        this.study = study;
    }

    EObject create() {
        EObject element = EcoreUtil.create(type);
        for (EStructuralFeature feature : type.getEAllStructuralFeatures()) {
            if (!feature.isRequired() || feature.isMany()) {
                continue;
            }
            if (feature instanceof EReference reference && !reference.isContainment()) {
                element.eSet(reference, likeNeighbours(reference));
            } else if (feature instanceof EAttribute && feature.getEType().getInstanceClass() == String.class
                    && PlaceNames.of(feature).isEmpty()) {
                element.eSet(feature, freeName(feature));
            }
        }
        return element;
    }

    private String freeName(EStructuralFeature feature) {
        Set<Object> taken = values(feature);
        int number = siblings.size() + 1;
        while (taken.contains(name(number))) {
            number++;
        }
        return name(number);
    }

    private String name(int number) {
        return NLS.bind(Messages.NewElement_name, Words.kind(type), number);
    }

    /** Where every row refers to another element, the first that is still free; else what the last row refers to. */
    private EObject likeNeighbours(EReference reference) {
        List<EObject> candidates = new Candidates(reference, study).elements();
        Set<Object> taken = values(reference);
        boolean eachItsOwn = siblings.size() > 1 && taken.size() == siblings.size();
        if (siblings.isEmpty() || eachItsOwn) {
            return candidates.stream().filter(c -> !taken.contains(c)).findFirst().orElse(null);
        }
        return (EObject) siblings.get(siblings.size() - 1).eGet(reference);
    }

    private Set<Object> values(EStructuralFeature feature) {
        return siblings.stream().filter(s -> s.eClass().getEAllStructuralFeatures().contains(feature))
                .map(s -> s.eGet(feature)).filter(v -> v != null).collect(Collectors.toCollection(HashSet::new));
    }
}
