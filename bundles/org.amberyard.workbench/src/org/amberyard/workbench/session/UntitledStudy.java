package org.amberyard.workbench.session;

import java.nio.file.Path;
import org.amberyard.model.io.StudyFile;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.FrameworkUtil;

/** Where the unsaved changes of a study without a file are kept. */
public final class UntitledStudy {

    private UntitledStudy() {
    }

    /** A place in the program's own state; nothing but a recovery file is ever written beside it. */
    public static Path file() {
        return Platform.getStateLocation(FrameworkUtil.getBundle(UntitledStudy.class)).toPath()
                .resolve("untitled." + StudyFile.EXTENSION);
    }
}
