package org.amberyard.workbench.handlers;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.core.commands.ExecutionException;
import org.eclipse.ui.handlers.HandlerUtil;

/** Opens a copy of the example district that comes with the program. */
public final class ExampleHandler extends AbstractHandler {

    @Override
    public void setEnabled(Object context) {
        setBaseEnabled(FirstStudy.example().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) throws ExecutionException {
        StudyOpener opener = new StudyOpener(HandlerUtil.getActiveWorkbenchWindowChecked(event).getActivePage());
        FirstStudy.example().ifPresent(opener::openAsNew);
        return null;
    }
}
