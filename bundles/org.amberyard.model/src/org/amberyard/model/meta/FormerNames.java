package org.amberyard.model.meta;

import java.util.Optional;
import org.eclipse.emf.ecore.EClass;
import org.eclipse.emf.ecore.EStructuralFeature;

/** Names that fields had in earlier versions of the model; files and tables that still bear them are read as before. */
public final class FormerNames {

    private FormerNames() {
    }

    /** The field of a kind that once had a name. */
    public static Optional<EStructuralFeature> field(EClass kind, String name) {
        return kind.getEAllStructuralFeatures().stream().filter(f -> FieldInfo.text(f, "former name").filter(name::equals).isPresent())
                .findFirst();
    }

    /** Label that a field once had; empty where it always had the one that it has. */
    public static Optional<String> label(EStructuralFeature field) {
        return FieldInfo.text(field, "former label");
    }
}
