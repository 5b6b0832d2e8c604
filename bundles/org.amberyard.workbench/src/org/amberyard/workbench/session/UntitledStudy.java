package org.amberyard.workbench.session;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.UUID;
import java.util.stream.Stream;
import org.amberyard.model.io.RecoveryFile;
import org.amberyard.model.io.StudyFile;
import org.eclipse.core.runtime.ILog;
import org.eclipse.core.runtime.Platform;
import org.osgi.framework.FrameworkUtil;

/**
 * Where the unsaved changes of studies without a file are kept: each has a place of its own in the program's state. Nothing
 * but a recovery file is ever written beside it.
 */
public final class UntitledStudy {
    private static final String PREFIX = "untitled-";

    private UntitledStudy() {
    }

    /** A place that no other study has. */
    static Path freshPlace() {
        return folder().resolve(PREFIX + UUID.randomUUID() + "." + StudyFile.EXTENSION);
    }

    /** True for the place of a study without a file. */
    public static boolean isPlace(Path file) {
        return folder().equals(file.getParent()) && file.getFileName().toString().startsWith(PREFIX);
    }

    /** Places at which an earlier run has left changes. */
    public static List<Path> kept() {
        if (!Files.isDirectory(folder())) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder())) {
            return files.map(UntitledStudy::placeOf).filter(UntitledStudy::isPlace)
                    .filter(place -> Files.isRegularFile(RecoveryFile.of(place))).distinct().sorted().toList();
        } catch (IOException e) {
            ILog.of(UntitledStudy.class).warn(e.getMessage(), e);
            return List.of();
        }
    }

    /** The place that a recovery file would belong to: the hidden file's name without its dot and last ending. */
    private static Path placeOf(Path recoveryFile) {
        String name = recoveryFile.getFileName().toString();
        int ending = name.lastIndexOf('.');
        return recoveryFile.resolveSibling(name.startsWith(".") && ending > 0 ? name.substring(1, ending) : name);
    }

    private static Path folder() {
        return Platform.getStateLocation(FrameworkUtil.getBundle(UntitledStudy.class)).toPath();
    }
}
