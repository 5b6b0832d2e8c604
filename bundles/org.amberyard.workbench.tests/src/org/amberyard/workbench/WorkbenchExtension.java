package org.amberyard.workbench;

import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;

/**
 * Gives UI tests a running workbench, one for the whole test run, and hands them its {@link Display}.
 *
 * <p>Tests stay on the runner's thread and reach widgets through {@code display.syncExec} and
 * {@code display.syncCall}.
 */
public final class WorkbenchExtension implements BeforeAllCallback, ParameterResolver {

    private static final Namespace NAMESPACE = Namespace.create(WorkbenchExtension.class);

    @Override
    public void beforeAll(ExtensionContext context) {
        workbench(context);
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        return parameter.getParameter().getType() == Display.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        return workbench(context).display();
    }

    /** Kept at the root of the run, so that it is closed once, after the last test class. */
    private static RunningWorkbench workbench(ExtensionContext context) {
        return context.getRoot().getStore(NAMESPACE).getOrComputeIfAbsent(
                RunningWorkbench.class, type -> RunningWorkbench.start(), RunningWorkbench.class);
    }
}
