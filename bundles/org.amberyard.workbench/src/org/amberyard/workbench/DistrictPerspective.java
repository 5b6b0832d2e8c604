package org.amberyard.workbench;

import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/** The perspective that a new window starts with: the editor area, where a study opens. */
public final class DistrictPerspective implements IPerspectiveFactory {

    static final String ID = "org.amberyard.workbench.district";

    @Override
    public void createInitialLayout(IPageLayout layout) {
        layout.setEditorAreaVisible(true);
    }
}
