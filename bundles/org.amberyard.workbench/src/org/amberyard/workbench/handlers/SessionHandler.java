package org.amberyard.workbench.handlers;

import org.amberyard.workbench.session.ActiveSession;
import org.eclipse.core.commands.AbstractHandler;

/** A command that needs a study in use. */
abstract class SessionHandler extends AbstractHandler {

    @Override
    public final void setEnabled(Object context) {
        setBaseEnabled(ActiveSession.here().get().isPresent());
    }
}
