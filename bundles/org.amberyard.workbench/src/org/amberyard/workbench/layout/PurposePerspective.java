package org.amberyard.workbench.layout;

import org.eclipse.core.runtime.IConfigurationElement;
import org.eclipse.core.runtime.IExecutableExtension;
import org.eclipse.ui.IFolderLayout;
import org.eclipse.ui.IPageLayout;
import org.eclipse.ui.IPerspectiveFactory;

/**
 * The answer on top, the pictures behind it below, and between them the study that both follow. Which pictures, the purpose
 * behind the class name in the extension says.
 */
public final class PurposePerspective implements IPerspectiveFactory, IExecutableExtension {
    private static final String HEADLINE = "org.amberyard.workbench.headline";
    private static final String OUTLINE = "org.amberyard.workbench.outline";
    private static final float HEADLINE_SHARE = 0.17f;
    private static final float EDITOR_SHARE = 0.5f;
    private static final float LEFT_SHARE = 0.52f;
    private static final float OUTLINE_SHARE = 0.16f;

    private Purpose purpose;

    @Override
    public void setInitializationData(IConfigurationElement config, String propertyName, Object data) {
        purpose = Purpose.valueOf(String.valueOf(data));
    }

    @Override
    public void createInitialLayout(IPageLayout layout) {
        String editors = layout.getEditorArea();
        layout.setEditorAreaVisible(true);
        layout.addStandaloneView(HEADLINE, false, IPageLayout.TOP, HEADLINE_SHARE, editors);
        layout.getViewLayout(HEADLINE).setCloseable(false);
        IFolderLayout left = layout.createFolder("left", IPageLayout.BOTTOM, EDITOR_SHARE, editors);
        purpose.left().forEach(left::addView);
        IFolderLayout right = layout.createFolder("right", IPageLayout.RIGHT, LEFT_SHARE, "left");
        purpose.right().forEach(right::addView);
        purpose.elsewhere().forEach(right::addPlaceholder);
        layout.createFolder("outline", IPageLayout.LEFT, OUTLINE_SHARE, editors).addView(OUTLINE);
    }
}
