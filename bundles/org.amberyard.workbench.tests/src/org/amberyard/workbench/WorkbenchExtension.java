package org.amberyard.workbench;

import java.lang.reflect.Method;
import org.eclipse.swt.widgets.Display;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.ExtensionContext;
import org.junit.jupiter.api.extension.ExtensionContext.Namespace;
import org.junit.jupiter.api.extension.InvocationInterceptor;
import org.junit.jupiter.api.extension.ParameterContext;
import org.junit.jupiter.api.extension.ParameterResolver;
import org.junit.jupiter.api.extension.ReflectiveInvocationContext;

/**
 * Gives UI tests a running workbench, one for the whole test run, and hands them its {@link Display}.
 *
 * <p>Tests stay on the runner's thread and reach widgets through {@code display.syncExec} and
 * {@code display.syncCall}. A test during which the program logs an error fails; one that expects the error takes it from the
 * {@link LoggedErrors}, which it asks for as a parameter.
 */
public final class WorkbenchExtension
        implements BeforeAllCallback, AfterAllCallback, InvocationInterceptor, ParameterResolver {

    private static final Namespace NAMESPACE = Namespace.create(WorkbenchExtension.class);

    @Override
    public void beforeAll(ExtensionContext context) {
        workbench(context);
    }

    @Override
    public void afterAll(ExtensionContext context) {
        workbench(context).failIfErrors();
    }

    @Override
    public void interceptTestMethod(Invocation<Void> test, ReflectiveInvocationContext<Method> method, ExtensionContext context)
            throws Throwable {
        run(test, workbench(context));
    }

    @Override
    public void interceptTestTemplateMethod(Invocation<Void> test, ReflectiveInvocationContext<Method> method,
            ExtensionContext context) throws Throwable {
        run(test, workbench(context));
    }

    private static void run(Invocation<Void> test, RunningWorkbench workbench) throws Throwable {
        try {
            test.proceed();
        } catch (Throwable e) {
            workbench.errors().addTo(e);
            throw e;
        }
        workbench.failIfErrors();
    }

    @Override
    public boolean supportsParameter(ParameterContext parameter, ExtensionContext context) {
        Class<?> type = parameter.getParameter().getType();
        return type == Display.class || type == LoggedErrors.class;
    }

    @Override
    public Object resolveParameter(ParameterContext parameter, ExtensionContext context) {
        RunningWorkbench workbench = workbench(context);
        return parameter.getParameter().getType() == Display.class ? workbench.display() : workbench.errors();
    }

    /** Kept at the root of the run, so that it is closed once, after the last test class. */
    private static RunningWorkbench workbench(ExtensionContext context) {
        return context.getRoot().getStore(NAMESPACE).getOrComputeIfAbsent(
                RunningWorkbench.class, type -> RunningWorkbench.start(), RunningWorkbench.class);
    }
}
