package org.amberyard.workbench.views;

import java.util.List;
import org.eclipse.emf.ecore.EObject;

/** What an element of the outline holds. */
@FunctionalInterface
interface OutlineBranch<E> {

    List<? extends EObject> held(E element);
}
