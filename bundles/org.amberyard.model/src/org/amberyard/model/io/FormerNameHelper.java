package org.amberyard.model.io;

import org.amberyard.model.meta.FormerNames;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.emf.ecore.xmi.XMLResource;
import org.eclipse.emf.ecore.xmi.impl.XMIHelperImpl;

/** Finds fields by the names that they have, else by those that they had when the file was written. */
final class FormerNameHelper extends XMIHelperImpl {

    FormerNameHelper(XMLResource resource) {
        super(resource);
    }

    @Override
    public EStructuralFeature getFeature(EClass kind, String namespace, String name, boolean isElement) {
        EStructuralFeature known = super.getFeature(kind, namespace, name, isElement);
        return known != null ? known : FormerNames.field(kind, name).orElse(null);
    }
}
