package org.amberyard.workbench.views;

import java.util.Optional;
import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.editor.StudyEditor;
import org.amberyard.workbench.grid.CellEntry;
import org.eclipse.emf.ecore.EObject;
import org.eclipse.emf.ecore.EStructuralFeature;
import org.eclipse.ui.IWorkbenchPage;

/** Finds the editor that views talk to. */
public final class StudyEditors {

    private StudyEditors() {
    }

    static Optional<StudyEditor> active(IWorkbenchPage page) {
        return page.getActiveEditor() instanceof StudyEditor editor ? Optional.of(editor) : Optional.empty();
    }

    /** Enters what is being typed in the editor, if there is one; false when it is refused. */
    static boolean entered(IWorkbenchPage page) {
        return active(page).flatMap(StudyEditor::openEntry).map(CellEntry::close).orElse(true);
    }

    /** Goes to a page of the study in the editor. */
    public static void show(IWorkbenchPage page, PageKind kind) {
        active(page).ifPresent(editor -> {
            page.activate(editor);
            editor.show(kind);
            editor.setFocus();
        });
    }

    /** Goes to a field in the editor, or to the element when the field is null, and gives it the focus. */
    public static void open(IWorkbenchPage page, EObject element, EStructuralFeature feature) {
        active(page).ifPresent(editor -> {
            page.activate(editor);
            editor.reveal(element, feature).ifPresent(table -> table.grid().setFocus());
        });
    }
}
