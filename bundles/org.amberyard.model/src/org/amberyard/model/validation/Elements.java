package org.amberyard.model.validation;

import java.util.ArrayList;
import java.util.List;
import org.amberyard.model.study.Study;
import org.eclipse.emf.ecore.EObject;

/** All elements of a study. */
final class Elements {
    private Elements() {
    }

    /** The study and everything in it, in order. */
    static List<EObject> of(Study study) {
        List<EObject> all = new ArrayList<>();
        all.add(study);
        study.eAllContents().forEachRemaining(all::add);
        return all;
    }
}
