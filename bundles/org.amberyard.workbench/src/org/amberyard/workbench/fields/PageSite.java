package org.amberyard.workbench.fields;

import java.util.function.BiConsumer;
import java.util.function.BooleanSupplier;
import java.util.function.Consumer;
import org.amberyard.workbench.session.StudySession;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;

/**
 * What a table needs to know of the place that it stands in.
 *
 * @param session the study
 * @param hint shows what the field in focus means; blank for nothing
 * @param entryChanged is run when an entry into a cell opens, changes or closes
 * @param refusal shows why an entry has been refused; null when that is over
 * @param vary makes a field of an element an uncertain input
 * @param bringOn shows the place where something else is on show; false when it cannot, as something typed there is refused
 */
public record PageSite(StudySession session, Consumer<String> hint, Runnable entryChanged,
        Consumer<String> refusal, BiConsumer<EObject, EStructuralFeature> vary, BooleanSupplier bringOn) {
}
