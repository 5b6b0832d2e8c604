package org.amberyard.workbench.settings;

import org.amberyard.workbench.editor.PageKind;
import org.amberyard.workbench.views.StudyEditors;
import org.eclipse.ui.IEditorPart;
import org.eclipse.ui.IWorkbenchPage;

/** The way to the settings of the study in the window. */
record StudyPage(IWorkbenchPage page) {

    void show() {
        IEditorPart editor = page.getActiveEditor();
        if (editor != null) {
            page.activate(editor);
            StudyEditors.show(page, PageKind.STUDY);
        }
    }
}
