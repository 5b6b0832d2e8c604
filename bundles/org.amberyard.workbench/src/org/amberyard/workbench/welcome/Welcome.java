package org.amberyard.workbench.welcome;

import org.amberyard.workbench.editor.StudyEditor;
import org.eclipse.core.runtime.ILog;
import org.eclipse.ui.IEditorReference;
import org.eclipse.ui.IPartListener2;
import org.eclipse.ui.IWorkbenchPage;
import org.eclipse.ui.IWorkbenchPartReference;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PartInitException;

/** Keeps the page of welcome in a window as long as no study is open. */
public final class Welcome implements IPartListener2 {
    private final IWorkbenchPage page;

    private Welcome(IWorkbenchPage page) {
        this.page = page;
    }

    /** Follows what is opened and closed in a page of a window. */
    public static void follow(IWorkbenchPage page) {
        page.addPartListener(new Welcome(page));
    }

    /** Shows the page. */
    public static void open(IWorkbenchPage page) {
        try {
            page.openEditor(new WelcomeInput(), WelcomePage.ID);
        } catch (PartInitException e) {
            // Without the page, the menu still has all ways to a study.
            ILog.of(Welcome.class).error(e.getMessage(), e);
        }
    }

    @Override
    public void partOpened(IWorkbenchPartReference opened) {
        if (opened.getId().equals(StudyEditor.ID)) {
            later(this::close);
        }
    }

    @Override
    public void partClosed(IWorkbenchPartReference closed) {
        if (closed.getId().equals(StudyEditor.ID)) {
            later(this::openWithoutStudies);
        }
    }

    private void later(Runnable what) {
        // A page that has been closed meanwhile has no window any more.
        IWorkbenchWindow window = page.getWorkbenchWindow();
        window.getWorkbench().getDisplay().asyncExec(() -> {
            boolean gone = page.getWorkbenchWindow() == null || window.getShell() == null || window.getWorkbench().isClosing();
            if (!gone) {
                what.run();
            }
        });
    }

    private void close() {
        for (IEditorReference editor : page.getEditorReferences()) {
            if (editor.getId().equals(WelcomePage.ID)) {
                page.closeEditors(new IEditorReference[] {editor}, false);
            }
        }
    }

    private void openWithoutStudies() {
        if (page.getEditorReferences().length == 0) {
            open(page);
        }
    }
}
