package org.amberyard.workbench;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.amberyard.workbench.layout.Purpose;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.IWorkbenchWindow;
import org.eclipse.ui.PlatformUI;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;

@ExtendWith(WorkbenchExtension.class)
class WorkbenchStartTest {

    @Test
    void opensOneWindow(Display display) {
        int windows = display.syncCall(() -> PlatformUI.getWorkbench().getWorkbenchWindowCount());

        assertEquals(1, windows);
    }

    @Test
    void startsLaidOutForMoney(Display display) {
        String perspective = display.syncCall(() -> window().getActivePage().getPerspective().getId());

        assertEquals(Purpose.MONEY.id(), perspective);
    }

    private static IWorkbenchWindow window() {
        return PlatformUI.getWorkbench().getWorkbenchWindows()[0];
    }
}
