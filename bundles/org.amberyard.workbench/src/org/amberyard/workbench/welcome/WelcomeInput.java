package org.amberyard.workbench.welcome;

import org.eclipse.jface.resource.ImageDescriptor;
import org.eclipse.ui.IEditorInput;
import org.eclipse.ui.IPersistableElement;

/** The page of welcome; all of them are the same, and none is remembered. */
record WelcomeInput() implements IEditorInput {

    @Override
    public boolean exists() {
        return false;
    }

    @Override
    public ImageDescriptor getImageDescriptor() {
        return null;
    }

    @Override
    public String getName() {
        return Messages.Welcome_name;
    }

    @Override
    public IPersistableElement getPersistable() {
        return null;
    }

    @Override
    public String getToolTipText() {
        return Messages.Welcome_name;
    }

    @Override
    public <T> T getAdapter(Class<T> adapter) {
        return null;
    }
}
