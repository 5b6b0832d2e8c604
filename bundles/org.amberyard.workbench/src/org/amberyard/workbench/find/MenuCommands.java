package org.amberyard.workbench.find;

import java.util.List;
import java.util.Set;
import org.amberyard.workbench.find.MenuEntries.Entry;
import org.amberyard.workbench.lists.Section.Line;
import org.eclipse.core.commands.Command;
import org.eclipse.core.commands.ParameterizedCommand;
import org.eclipse.core.commands.common.CommandException;
import org.eclipse.core.expressions.IEvaluationContext;
import org.eclipse.core.runtime.ILog;
import org.eclipse.osgi.util.NLS;
import org.eclipse.swt.widgets.Control;
import org.eclipse.ui.ISources;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.handlers.IHandlerService;

/** What stands in the menus and can be done now, by the words of the menu and with its key; views are found as views. */
final class MenuCommands {
    /** Views are a section of their own, and the list is open. */
    private static final Set<String> NOT_HERE = Set.of("org.amberyard.workbench.find", "org.eclipse.ui.views.showView");

    private final IWorkbenchWindow window;
    private final IHandlerService handlers;
    private final Control focus;

    /** @param window in it and for what has the focus now is done what is chosen */
    MenuCommands(IWorkbenchWindow window) {
        this.window = window;
        this.handlers = window.getService(IHandlerService.class);
        this.focus = window.getShell().getDisplay().getFocusControl();
    }

    List<Line> lines() {
        return new MenuEntries(window).all().stream().filter(this::canBeDone).map(this::line).toList();
    }

    private boolean canBeDone(Entry entry) {
        Command command = entry.command().getCommand();
        command.setEnabled(handlers.getCurrentState());
        return !NOT_HERE.contains(command.getId()) && command.isHandled() && command.isEnabled();
    }

    private Line line(Entry entry) {
        String words = entry.within().isEmpty() ? entry.label() : NLS.bind(Messages.Find_within, entry.within(), entry.label());
        return new Line(entry.keys().isEmpty() ? words : NLS.bind(Messages.Find_named, words, entry.keys().get(0)), () -> run(entry.command()));
    }

    /** Once the list has gone, what had the focus has it again, and is what the command is for. */
    private void run(ParameterizedCommand command) {
        window.getShell().getDisplay().asyncExec(() -> {
            if (window.getShell().isDisposed()) {
                return;
            }
            window.getShell().forceActive();
            if (focus != null && !focus.isDisposed()) {
                focus.setFocus();
            }
            try {
                IEvaluationContext here = handlers.createContextSnapshot(false);
                // That of the list is still said to be the active one.
                here.addVariable(ISources.ACTIVE_SHELL_NAME, window.getShell());
                handlers.executeCommandInContext(command, null, here);
            } catch (CommandException e) {
                // It could be done when it was listed, and cannot any more.
                ILog.of(MenuCommands.class).error(e.getMessage(), e);
            }
        });
    }
}
