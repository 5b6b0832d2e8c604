package org.amberyard.workbench.find;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.ResourceBundle;
import org.eclipse.emf.ecore.EStructuralFeature;

/** What people also call fields whose labels are other words. */
final class AlsoCalled {
    private static final String FILE = "org.amberyard.workbench.find.also";

    private final ResourceBundle names;

    /** In the language of the window. */
    AlsoCalled() {
        names = ResourceBundle.getBundle(FILE, Locale.getDefault(), AlsoCalled.class.getClassLoader(),
                ResourceBundle.Control.getNoFallbackControl(ResourceBundle.Control.FORMAT_PROPERTIES));
    }

    /** Other names of a field; none for most. */
    List<String> of(EStructuralFeature field) {
        String key = field.getEContainingClass().getName() + "." + field.getName();
        return names.containsKey(key) ? Arrays.asList(names.getString(key).split("; ")) : List.of();
    }
}
