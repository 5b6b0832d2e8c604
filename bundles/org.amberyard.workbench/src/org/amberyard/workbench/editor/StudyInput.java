package org.amberyard.workbench.editor;

import org.amberyard.workbench.session.StudySession;
import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/**
 * An open study as the workbench sees it. The workbench does not remember it: which study to open next time is for the
 * start of the program to decide, since a recovery file may have a say.
 */
public record StudyInput(StudySession session) implements IEditorInput {

    @Override
    public boolean exists() {
        return session.file().isPresent();
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return session.title();
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return session.file().map(f -> f.toAbsolutePath().toString()).orElse(session.title());
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return adapter.isInstance(session) ? adapter.cast(session) : null;
    }
}
