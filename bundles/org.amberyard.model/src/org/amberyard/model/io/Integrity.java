package org.amberyard.model.io;

import java.util.Iterator;
import org.amberyard.model.meta.ElementNames;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.InternalEObject;
import org.eclipse.emf.ecore.util.EcoreUtil;

/** What a file may get wrong although it is well-formed and every field is known. */
final class Integrity {
    private Integrity() {
    }

    /** The first problem as a sentence, or null. */
    static String problem(StudyResource resource) {
        for (EObject proxy : EcoreUtil.ProxyCrossReferencer.find(resource).keySet()) {
            return "it refers to “" + ((InternalEObject) proxy).eProxyURI() + "”, which it does not hold.";
        }
        for (Iterator<EObject> all = resource.getAllContents(); all.hasNext();) {
            EObject element = all.next();
            String id = resource.getID(element);
            if (id != null && resource.getIDToEObjectMap().get(id) != element) {
                return "the id “" + id + "” is used twice, by " + ElementNames.withKind(element) + " and by "
                        + ElementNames.withKind(resource.getIDToEObjectMap().get(id)) + ".";
            }
        }
        return null;
    }
}
