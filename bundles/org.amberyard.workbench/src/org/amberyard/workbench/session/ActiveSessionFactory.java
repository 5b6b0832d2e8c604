package org.amberyard.workbench.session;

import org.eclipse.ui.services.AbstractServiceFactory;
import org.eclipse.ui.services.IServiceLocator;

/** Makes the one {@link ActiveSession} of a workbench, which its windows and parts share. */
public final class ActiveSessionFactory extends AbstractServiceFactory {

    @Override
    public Object create(Class serviceInterface, IServiceLocator parentLocator, IServiceLocator locator) {
        Object shared = parentLocator.getService(ActiveSession.class);
        return shared == null ? new ActiveSession() : shared;
    }
}
