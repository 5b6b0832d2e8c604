package org.amberyard.model.io;

import java.util.Iterator;
import java.util.Optional;
import org.amberyard.model.meta.ElementNames;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What a file may get wrong although it is well-formed and every field is known. */
final class Integrity {
    private Integrity() {
    }

    /** The first problem as a sentence. */
    static Optional<String> problem(StudyResource resource) {
        for (EObject proxy : EcoreUtil.ProxyCrossReferencer.find(resource).keySet()) {
            return Optional.of("it refers to “" + ((InternalEObject) proxy).eProxyURI() + "”, which it does not hold.");
        }
        for (Iterator<EObject> all = resource.getAllContents(); all.hasNext();) {
            EObject element = all.next();
            String id = resource.getID(element);
            if (id != null && resource.getIDToEObjectMap().get(id) != element) {
                return Optional.of("the id “" + id + "” is used twice, by " + ElementNames.withKind(element) + " and by "
                        + ElementNames.withKind(resource.getIDToEObjectMap().get(id)) + ".");
            }
        }
        return Optional.empty();
    }
}
